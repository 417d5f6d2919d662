#!/usr/bin/env bash
# Computes the named LAMBDA formulas in IronCalc, a spreadsheet engine that knows LAMBDA, and compares them with the functions.
# Needs Node.js and npm; not part of the build, which does without them.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
mvn -q -o -P office test-compile dependency:build-classpath -Dmdep.outputFile=target/classpath.txt
java -cp "target/test-classes:target/classes:$(cat target/classpath.txt)" shaftwright.functions.LambdaCases target/lambda-cases.json
mkdir -p target/node
cp src/office/node/lambda.mjs target/node
cd target/node
npm install --silent --no-save @ironcalc/wasm@0.8.4
node lambda.mjs ../lambda-cases.json
