#!/usr/bin/env bash
# Lists the contract as it is, for DeclaredVersionsTest: names, numbers of cells and hashes of formulas.
# Run it when a release has gone out to builders, before Contract.VERSION is raised.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
[ -z "$(git status --porcelain -- src/main)" ] || { echo "released: commit what changed under src/main first" >&2; exit 1; }
mvn -q -B test-compile
mvn -q -B exec:java -Dexec.mainClass=shaftwright.workbook.ReleasedContract -Dexec.classpathScope=test \
    -Dexec.args=src/test/resources/shaftwright/workbook
