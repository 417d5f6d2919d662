"""Types into a workbook by openpyxl, which computes nothing, and saves it.

edit_in_openpyxl.py SOURCE TARGET NAME OFFSET TEXT [NAME OFFSET TEXT ...]
"""

import sys
import warnings

import openpyxl

warnings.simplefilter("ignore")
source, target = sys.argv[1:3]
edits = sys.argv[3:]
book = openpyxl.load_workbook(source)
for name, offset, text in zip(edits[::3], edits[1::3], edits[2::3]):
    sheet, area = next(iter(book.defined_names[name].destinations))
    cells = [cell for row in book[sheet][area] for cell in row]
    cells[int(offset)].value = text
book.save(target)
