#!/usr/bin/env bash
# Writes the README's tables of inputs and functions anew from their declarations.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
# One after the other: both write into the same file.
for table in ReadmeTest FunctionsInReadmeTest; do
    mvn -q -B -Dtest=$table -Dreadme.write=true test
done
