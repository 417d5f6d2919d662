#!/usr/bin/env bash
# Records what the program answers now, for OracleTest, and empties the list of differences from what was recorded before.
# Run it after changes of figures were reviewed and committed: what it records is what later code is held against.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
[ -z "$(git status --porcelain -- src/main)" ] || { echo "oracle: commit what changed under src/main first" >&2; exit 1; }
folder=src/test/resources/shaftwright/oracle
mvn -q -B test-compile
mvn -q -B exec:java -Dexec.mainClass=shaftwright.oracle.OracleRecorder -Dexec.classpathScope=test \
    -Dexec.args="$(git rev-parse --short HEAD) $folder"
ls -l $folder
