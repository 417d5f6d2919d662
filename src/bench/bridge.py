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
FORMULAS = (
    ("arithmetic, what the function computes", "=SQRT(A{0}^2+B{0}^2+C{0}^2)"),
    ("its closed form, checks included", "=IF(OR(ISTEXT(A{0});ISTEXT(B{0});ISTEXT(C{0}));#VALUE!;IF(AND(A{0}>=-1000000000;"
     "A{0}<=1000000000;B{0}>=-1000000000;B{0}<=1000000000;C{0}>=-1000000000;C{0}<=1000000000);SQRT(A{0}^2+B{0}^2+C{0}^2);#NUM!))"),
    ("a function that does nothing", '=BRIDGE.EMPTY(A{0};B{0};C{0};"in")'),
    ("the same, given the document as well", '=BRIDGE.EMPTYINDOCUMENT(A{0};B{0};C{0};"in")'),
    ("SHAFT.DISTANCE, unit given", '=SHAFT.DISTANCE(A{0};B{0};C{0};"in")'),
    ("SHAFT.DISTANCE, the document's unit", "=SHAFT.DISTANCE(A{0};B{0};C{0})"),
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


def measure(document, name, formula, runs):
    sheets = document.Sheets
    sheets.insertNewByName("work", 1)
    sheet = sheets.getByName("work")
    sheet.getCellRangeByPosition(0, 0, 2, CELLS - 1).setDataArray(
        tuple((300.0 + row % 400, row % 90 - 45.0, row % 30 / 10) for row in range(CELLS))
    )
    # Written cell by cell, formulas would be computed and listened to one by one.
    sheet.getCellByPosition(3, 0).Formula = formula.format(1)
    sheet.getCellRangeByPosition(3, 0, 3, CELLS - 1).fillAuto(TO_BOTTOM, 1)
    times = []
    for run in range(runs + 2):
        begun = time.time()
        document.calculateAll()
        times.append(time.time() - begun)
    shown = sheet.getCellByPosition(3, CELLS - 1)
    if shown.getError():
        raise SystemExit(name + " shows an error: " + shown.String)
    sheets.removeByName("work")
    kept = times[2:]
    print("%-42s %6.3f s  (%.3f to %.3f)" % (name, statistics.median(kept), min(kept), max(kept)), flush=True)


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
        for name, formula in FORMULAS:
            measure(document, name, formula, runs)
    finally:
        # An open document would keep the program from ending.
        document.close(True)
        desktop.terminate()
        program.wait(PATIENCE_SECONDS)


main(sys.argv[1:])
