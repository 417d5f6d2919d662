// Computes named LAMBDA formulas in IronCalc and compares: node lambda.mjs CASES.json
//
// Needs `npm install @ironcalc/wasm@0.8.4` in the folder that it runs in. CASES.json holds
// {"names": {name: formula as stored}, "cases": [{"formula", "expected", "scale"}]}, expected null for an error.
import { initSync, Model } from "@ironcalc/wasm";
import fs from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
initSync({ module: fs.readFileSync(require.resolve("@ironcalc/wasm/wasm_bg.wasm")) });
const { names, cases } = JSON.parse(fs.readFileSync(process.argv[2], "utf8"));
const model = new Model("lambda", "en", "UTC", "en");

// As people type it: no prefixes, brackets around what may be left out.
const typed = (stored) =>
  stored.replace(/_xlop\.(\w+)/g, "[$1]").replace(/_xlpm\.|_xlfn\./g, "");

for (const [name, formula] of Object.entries(names)) {
  model.newDefinedName(name, undefined, "=" + typed(formula));
}
let wrong = 0;
let numbers = 0;
for (const { formula, expected, scale } of cases) {
  model.setUserInput(0, 1, 1, "=" + formula);
  // The shown text has few digits; a scaled difference keeps them.
  const shown = model.getFormattedCellValue(0, 1, 1);
  if (expected === null) {
    if (!shown.startsWith("#")) {
      wrong++;
      console.log(formula, shown, "is no error");
    }
    continue;
  }
  model.setUserInput(0, 2, 1, `=IF(ABS(A1-(${expected}))<=${1e-9 * scale},"same","other")`);
  numbers++;
  if (model.getFormattedCellValue(0, 2, 1) !== "same") {
    wrong++;
    console.log(formula, shown, "is not", expected);
  }
}
console.log(`${numbers} numbers, ${cases.length - numbers} errors, ${wrong} wrong`);
process.exit(wrong ? 1 : 0);
