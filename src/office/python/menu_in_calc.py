"""Opens a workbook in LibreOffice with the extension installed, gives menu commands, saves it.

menu_in_calc.py -env:… -env:… SOURCE COMMAND [COMMAND …] [next SOURCE COMMAND …]

A command is one of the menu's (fill, check, …), behind which `?KEY=VALUE&…` are the answers to
what it asks, of several values `a\\b`; `undo`, `save:FILE`, `save-other:FILE`, which saves and closes
what opened last in a window of its own, `NAME[i]=TEXT`, which types into cell i of a defined name,
`FORMULA` with its equals sign first, which goes into a cell of a sheet of its own, `show`, which
tells what that cell shows, `wizard:FUNCTION`, which tells what the function wizard says and asks for,
`seen`, which tells the sheets' names, `hide:SHEET`, or `where`, which tells the cell that is
selected. Each answer is printed as a line `COMMAND|STATE|TEXT`.
"""

import os
import subprocess
import sys
import time
import uuid

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException

PATIENCE_SECONDS = 120
OWN_SHEET = "Own"


def started(settings):
    pipe = "menu" + uuid.uuid4().hex[:8]
    program = subprocess.Popen(
        ["soffice"]
        + settings
        + ["--headless", "--norestore", "--nologo", "--accept=pipe,name=" + pipe + ";urp;"]
    )
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext(
        "com.sun.star.bridge.UnoUrlResolver", local
    )
    end = time.time() + PATIENCE_SECONDS
    while True:
        try:
            return program, resolver.resolve(
                "uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext"
            )
        except NoConnectException:
            if time.time() > end or program.poll() not in (None, 0, 81):
                raise
            time.sleep(0.2)


def option(name, value):
    made = PropertyValue()
    made.Name, made.Value = name, value
    return made


def typed(document, command):
    place, text = command.split("=", 1)
    name, index = place.rstrip("]").split("[")
    cells = document.NamedRanges.getByName(name).getReferredCells()
    down = cells.Rows.Count > 1
    at = int(index)
    cells.getCellByPosition(0 if down else at, at if down else 0).String = text


def own_cell(document):
    """The builder's own cell, behind all sheets."""
    if not document.Sheets.hasByName(OWN_SHEET):
        document.Sheets.insertNewByName(OWN_SHEET, document.Sheets.Count)
    return document.Sheets.getByName(OWN_SHEET).getCellByPosition(0, 0)


def run(context, document, command):
    if command.startswith("="):
        own_cell(document).Formula = command
        return "SUCCESS", ""
    if command.startswith("wizard:"):
        functions = context.ServiceManager.createInstanceWithContext(
            "com.sun.star.sheet.FunctionDescriptions", context
        )
        told = {each.Name: each.Value for each in functions.getByName(command[7:])}
        asked = [each.Name + ": " + each.Description for each in told["Arguments"]]
        return "SUCCESS", " / ".join([told["Description"]] + asked)
    if command == "show":
        # What is to be computed later comes in the order of its events.
        later = context.ServiceManager.createInstanceWithContext(
            "com.sun.star.awt.Toolkit", context
        )
        later.processEventsToIdle()
        return "SUCCESS", own_cell(document).String
    if "=" in command and "?" not in command:
        typed(document, command)
        return "SUCCESS", ""
    if command.startswith("save:"):
        document.storeToURL(
            uno.systemPathToFileUrl(os.path.abspath(command[5:])),
            (option("FilterName", "Calc MS Excel 2007 XML"),),
        )
        return "SUCCESS", ""
    if command.startswith("save-other:"):
        frames = document.CurrentController.Frame.Creator.Frames
        other = frames.getByIndex(frames.Count - 1).Controller.Model
        other.storeToURL(
            uno.systemPathToFileUrl(os.path.abspath(command[11:])),
            (option("FilterName", "Calc MS Excel 2007 XML"),),
        )
        other.close(True)
        return "SUCCESS", ""
    if command.startswith("hide:"):
        document.Sheets.getByName(command[5:]).IsVisible = False
        return "SUCCESS", ""
    if command == "seen":
        names = document.Sheets.ElementNames
        return "SUCCESS", ", ".join(
            each for each in names if document.Sheets.getByName(each).IsVisible
        )
    if command == "where":
        return "SUCCESS", document.CurrentSelection.AbsoluteName
    if command == "windows":
        return "SUCCESS", str(len(document.CurrentController.Frame.Creator.Frames))
    if command == "undo":
        document.UndoManager.undo()
        return "SUCCESS", ", ".join(document.UndoManager.getAllUndoActionTitles())
    dispatcher = context.ServiceManager.createInstanceWithContext(
        "com.sun.star.frame.DispatchHelper", context
    )
    frame = document.CurrentController.Frame
    name, _, answers = command.partition("?")
    options = tuple(answer(each) for each in answers.split("&") if each)
    begun = time.time()
    result = dispatcher.executeDispatch(frame, "vnd.shaftwright:" + name, "", 0, options)
    taken = time.time() - begun
    states = {0: "FAILURE", 1: "SUCCESS"}
    print("%s took %.2f s" % (command, taken), file=sys.stderr)
    return states.get(result.State, "DONTKNOW"), str(result.Result)


def answer(text):
    """A number, a truth, a text or several, as the command wants it."""
    key, value = text.split("=", 1)
    several = value.split("\\")
    if key == "Files":
        return option(key, uno.Any("[]string", tuple(map(uno.systemPathToFileUrl, several))))
    if key in ("Show", "Hide"):
        return option(key, uno.Any("[]string", tuple(several)))
    if key == "From":
        return option(key, uno.systemPathToFileUrl(value))
    if key == "Row":
        return option(key, int(value))
    return option(key, value == "true" if key == "Agree" else value)


def jobs(arguments):
    job = []
    for each in arguments + ["next"]:
        if each == "next":
            yield job[0], job[1:]
            job = []
        else:
            job.append(each)


def main(arguments):
    settings = [each for each in arguments if each.startswith("-env:")]
    program, context = started(settings)
    desktop = context.ServiceManager.createInstanceWithContext(
        "com.sun.star.frame.Desktop", context
    )
    try:
        for source, commands in jobs(arguments[len(settings) :]):
            frame = desktop.loadComponentFromURL(
                uno.systemPathToFileUrl(os.path.abspath(source)),
                "_blank",
                0,
                (option("Hidden", True),),
            ).CurrentController.Frame
            for command in commands:
                # A command may put another document into the window.
                state, text = run(context, frame.Controller.Model, command)
                print(command + "|" + state + "|" + text.replace("\n", " / "))
    finally:
        try:
            # An open document would keep its lock file and refuse to let the program end.
            for frame in list(desktop.Frames):
                if frame.Controller and frame.Controller.Model:
                    frame.Controller.Model.close(True)
            desktop.terminate()
        finally:
            program.wait(PATIENCE_SECONDS)


main(sys.argv[1:])
