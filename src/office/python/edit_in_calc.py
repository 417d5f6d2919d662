"""Does to a workbook in LibreOffice what builders do to it, and saves it as .xlsx.

edit_in_calc.py PROFILE EDIT SOURCE TARGET [EDIT SOURCE TARGET ...]

One start of the program for all edits. Nothing is recalculated but what the program itself
recalculates after an edit.
"""

import os
import subprocess
import sys
import time
import uuid

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.table import CellAddress, CellRangeAddress

PATIENCE_SECONDS = 120


def started(profile):
    pipe = "edit" + uuid.uuid4().hex[:8]
    program = subprocess.Popen(
        [
            "soffice",
            "-env:UserInstallation=" + profile,
            "--headless",
            "--norestore",
            "--nologo",
            "--accept=pipe,name=" + pipe + ";urp;",
        ]
    )
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext(
        "com.sun.star.bridge.UnoUrlResolver", local
    )
    end = time.time() + PATIENCE_SECONDS
    while True:
        try:
            context = resolver.resolve(
                "uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext"
            )
            return program, context.ServiceManager.createInstanceWithContext(
                "com.sun.star.frame.Desktop", context
            )
        except NoConnectException:
            if time.time() > end or program.poll() not in (None, 0, 81):
                raise
            time.sleep(0.5)


def option(name, value):
    made = PropertyValue()
    made.Name, made.Value = name, value
    return made


def area(document, name):
    return document.NamedRanges.getByName(name).getReferredCells()


def cell(document, name, offset):
    cells = area(document, name)
    down = cells.Rows.Count > 1
    return cells.getCellByPosition(0 if down else offset, offset if down else 0)


def insert_rows(document, name, inside, count):
    cells = area(document, name)
    cells.Spreadsheet.Rows.insertByIndex(cells.RangeAddress.StartRow + inside, count)


def tyre_and_track(document):
    cell(document, "tyre_size", 0).String = "31x10.50R15"
    cell(document, "tyre_measured", 0).String = "30 1/4"
    cell(document, "hub_shift", 0).String = "1"


def reading(document):
    cell(document, "distance_first_left", 4).String = "26 5/8"


def rows(document):
    insert_rows(document, "height_left", 4, 1)
    insert_rows(document, "joint_name", 2, 2)
    insert_rows(document, "bench_joint", 3, 1)
    insert_rows(document, "blank_name", 3, 1)
    insert_rows(document, "boot_name", 1, 1)
    insert_rows(document, "verdict", 0, 2)
    insert_rows(document, "table_slack_in_left", 5, 1)


def column(document):
    cells = area(document, "scenario_name")
    cells.Spreadsheet.Columns.insertByIndex(cells.RangeAddress.StartColumn + 2, 1)


def moved(document):
    """The readings of one side, typed cells and notes, go to where there is room."""
    first = area(document, "height_right").RangeAddress
    source = CellRangeAddress()
    source.Sheet = first.Sheet
    source.StartRow, source.EndRow = first.StartRow - 1, first.EndRow
    source.StartColumn, source.EndColumn = first.StartColumn, first.StartColumn + 6
    target = CellAddress()
    target.Sheet, target.Row, target.Column = first.Sheet, first.StartRow + 60, 2
    document.Sheets.getByIndex(first.Sheet).moveRange(target, source)


def sheets(document):
    names = document.Sheets.ElementNames
    document.Sheets.getByName(names[1]).Name = "Tape & ruler"
    document.Sheets.getByName(names[3]).Name = "Variants"
    document.Sheets.moveByName("Variants", 0)
    document.Sheets.getByName(names[2]).IsVisible = False


EDITS = {
    "tyre": tyre_and_track,
    "reading": reading,
    "rows": rows,
    "column": column,
    "moved": moved,
    "sheets": sheets,
}


def main(arguments):
    program, desktop = started(arguments[0])
    try:
        for start in range(1, len(arguments), 3):
            edit, source, target = arguments[start : start + 3]
            document = desktop.loadComponentFromURL(
                uno.systemPathToFileUrl(os.path.abspath(source)),
                "_blank",
                0,
                (option("Hidden", True),),
            )
            EDITS[edit](document)
            document.storeToURL(
                uno.systemPathToFileUrl(os.path.abspath(target)),
                (option("FilterName", "Calc MS Excel 2007 XML"),),
            )
            document.close(True)
    finally:
        try:
            desktop.terminate()
        finally:
            program.wait(PATIENCE_SECONDS)


main(sys.argv[1:])
