#!/usr/bin/env bash
# Makes the workbooks in the folder workbooks anew, after a change of what the program writes.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
mvn -q -B -DskipTests package
mkdir -p workbooks
made() { java -jar target/shaftwright.jar new --force "$@" >/dev/null; }
made --demo --unit inch workbooks/forest-special-inch.xlsx
made --demo --unit mm workbooks/forest-special-mm.xlsx
made --unit inch workbooks/blank-inch.xlsx
made --unit mm workbooks/blank-mm.xlsx
rm -f workbooks/*.backup.xlsx
ls -l workbooks
