"""Times recalculations in LibreOffice: bridge.py -env:… -env:… RUNS"""

import os
import statistics
import subprocess
import sys
import time
import uuid

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.sheet.FillDirection import TO_BOTTOM

CELLS = 20000
PATIENCE_SECONDS = 60
SQUARES = "SQRT({0}^2+{1}^2+{2}^2)"
CELLS_BY_THEMSELVES = (
    ("arithmetic", "=" + SQUARES),
    ("the function's closed form, checks included", "=IF(OR(ISTEXT({0});ISTEXT({1});ISTEXT({2}));#VALUE!;IF(AND({0}>=-1000000000;"
     "{0}<=1000000000;{1}>=-1000000000;{1}<=1000000000;{2}>=-1000000000;{2}<=1000000000);" + SQUARES + ";#NUM!))"),
    ("a function that does nothing, no arguments", "=BRIDGE.NOTHING()"),
    ("a function that does nothing, three numbers", "=BRIDGE.NUMBERS({0};{1};{2})"),
    ("a function that does nothing, four values", '=BRIDGE.EMPTY({0};{1};{2};"in")'),
    ("the same, given the document as well", '=BRIDGE.EMPTYINDOCUMENT({0};{1};{2};"in")'),
    ("SHAFT.DISTANCE, unit given", '=SHAFT.DISTANCE({0};{1};{2};"in")'),
    ("SHAFT.DISTANCE, the document's unit", "=SHAFT.DISTANCE({0};{1};{2})"),
)
ONE_ARRAY = (
    ("arithmetic", "=" + SQUARES),
    ("a function that does nothing, four values", '=BRIDGE.EMPTY({0};{1};{2};"in")'),
    ("SHAFT.DISTANCE, unit given", '=SHAFT.DISTANCE({0};{1};{2};"in")'),
    ("SHAFT.DISTANCE, the document's unit", "=SHAFT.DISTANCE({0};{1};{2})"),
)


def started(settings):
    pipe = "bridge" + uuid.uuid4().hex[:8]
    program = subprocess.Popen(
        ["soffice"] + settings + ["--headless", "--norestore", "--nologo", "--accept=pipe,name=" + pipe + ";urp;"]
    )
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    end = time.time() + PATIENCE_SECONDS
    while True:
        try:
            return program, resolver.resolve("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext")
        except NoConnectException:
            if time.time() > end or program.poll() not in (None, 0, 81):
                raise
            time.sleep(0.2)


def by_themselves(sheet, formula):
    # Written cell by cell, formulas would be computed and listened to one by one.
    sheet.getCellByPosition(3, 0).Formula = formula.format("A1", "B1", "C1")
    sheet.getCellRangeByPosition(3, 0, 3, CELLS - 1).fillAuto(TO_BOTTOM, 1)


def one_array(sheet, formula):
    columns = [column + "1:" + column + str(CELLS) for column in "ABC"]
    sheet.getCellRangeByPosition(3, 0, 3, CELLS - 1).setArrayFormula(formula.format(*columns))


def measure(document, name, formula, write, runs):
    sheets = document.Sheets
    sheets.insertNewByName("work", 1)
    sheet = sheets.getByName("work")
    sheet.getCellRangeByPosition(0, 0, 2, CELLS - 1).setDataArray(
        tuple((300.0 + row % 400, row % 90 - 45.0, row % 30 / 10) for row in range(CELLS))
    )
    write(sheet, formula)
    times = []
    for run in range(runs + 2):
        begun = time.time()
        document.calculateAll()
        times.append(time.time() - begun)
    first, last = (sheet.getCellByPosition(3, row) for row in (0, CELLS - 1))
    if first.getError() or last.getError():
        raise SystemExit(name + " shows an error: " + first.String + ", " + last.String)
    if "SHAFT" in formula and abs(last.Value - sheet_answer(sheet, CELLS - 1)) > 1e-9:
        raise SystemExit(name + " shows " + last.String)
    sheets.removeByName("work")
    kept = times[2:]
    print("%-46s %6.3f s  (%.3f to %.3f)" % (name, statistics.median(kept), min(kept), max(kept)), flush=True)


def sheet_answer(sheet, row):
    return sum(sheet.getCellByPosition(column, row).Value ** 2 for column in range(3)) ** 0.5


def main(arguments):
    settings = [each for each in arguments if each.startswith("-env:")]
    runs = int(arguments[-1])
    program, context = started(settings)
    desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
    hidden = PropertyValue()
    hidden.Name, hidden.Value = "Hidden", True
    document = desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, (hidden,))
    try:
        document.UndoManager.lock()
        document.enableAutomaticCalculation(False)
        print("%d cells, median of %d after two to warm up" % (CELLS, runs))
        print("each cell by itself:")
        for name, formula in CELLS_BY_THEMSELVES:
            measure(document, name, formula, by_themselves, runs)
        print("all as one array formula:")
        for name, formula in ONE_ARRAY:
            measure(document, name, formula, one_array, runs)
    finally:
        # An open document would keep the program from ending.
        document.close(True)
        desktop.terminate()
        program.wait(PATIENCE_SECONDS)


main(sys.argv[1:])
