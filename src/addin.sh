#!/usr/bin/env bash
# Writes what Calc's Java bridge needs to know of the functions anew from the catalogue; run it after a function was declared or changed.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
mvn -q -o compile
java -cp target/classes shaftwright.calc.AddInText src/generated/java/shaftwright/calc
mvn -q -o spotless:apply
