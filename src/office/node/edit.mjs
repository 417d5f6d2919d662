// Types into a workbook by exceljs or SheetJS, which compute nothing, and saves it:
// node edit.mjs MODULES exceljs|xlsx SOURCE TARGET NAME OFFSET TEXT [NAME OFFSET TEXT ...]
import { createRequire } from "node:module";

const [modules, library, source, target, ...edits] = process.argv.slice(2);
const require = createRequire(modules + "/");

/** Calls back with sheet, row and column, from 1 on, and the text of each edit. */
function each(areaOf, type) {
  for (let i = 0; i < edits.length; i += 3) {
    const [name, offset, text] = [edits[i], Number(edits[i + 1]), edits[i + 2]];
    const [, sheet, column, row, lastColumn] = areaOf(name).match(
      /^'?(.+?)'?!\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?\d+)?$/,
    );
    const first = number(column);
    const width = number(lastColumn ?? column) - first + 1;
    type(sheet, Number(row) + Math.floor(offset / width), first + (offset % width), text);
  }
}

function number(letters) {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

if (library === "exceljs") {
  const ExcelJS = require("exceljs");
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile(source);
  each(
    (name) => book.definedNames.getRanges(name).ranges[0],
    (sheet, row, column, text) => (book.getWorksheet(sheet).getCell(row, column).value = text),
  );
  await book.xlsx.writeFile(target);
} else {
  const XLSX = require("xlsx");
  const book = XLSX.readFile(source);
  each(
    (name) => book.Workbook.Names.find((known) => known.Name === name).Ref,
    (sheet, row, column, text) =>
      (book.Sheets[sheet][XLSX.utils.encode_cell({ r: row - 1, c: column - 1 })] = {
        t: "s",
        v: text,
      }),
  );
  XLSX.writeFile(book, target, { compression: true });
}
