"""Works through a list of steps in a real LibreOffice, over its UNO bridge, and prints what the cells show as JSON.

Reads a job from standard input: {"pipe": name, "steps": [step, ...]}, where a step is one of
  {"do": "open", "url": file address}        links are updated, as a person who trusts the file would allow
  {"do": "new"}                              a blank document, in which typed formulas need no trust
  {"do": "text", "sheet": name, "cell": "A1", "text": ...}
  {"do": "formula", "sheet": name, "cell": "A1", "formula": ...}
  {"do": "again"}                            computes everything again
  {"do": "read"}                             prints every used cell
  {"do": "csv", "sheet": name, "url": ...}   writes one sheet as CSV
"""

import json
import os
import sys
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.table.CellContentType import EMPTY, FORMULA, TEXT, VALUE

FULL_UPDATE = 3
KINDS = {TEXT.value: "text", VALUE.value: "number", FORMULA.value: "formula"}


def option(name, value):
    return PropertyValue(Name=name, Value=value)


def desktop(pipe):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(300):
        try:
            context = resolver.resolve("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext")
            return context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
        except NoConnectException:
            time.sleep(0.2)
    sys.exit("LibreOffice does not answer")


def read(document):
    shown = {}
    for sheet in document.Sheets:
        cursor = sheet.createCursor()
        cursor.gotoEndOfUsedArea(False)
        address = cursor.RangeAddress
        cells = {}
        for row in range(address.EndRow + 1):
            for column in range(address.EndColumn + 1):
                cell = sheet.getCellByPosition(column, row)
                if cell.Type == EMPTY:
                    continue
                name = cell.AbsoluteName.rsplit(".", 1)[1].replace("$", "")
                number = cell.FormulaResultType2 == 1 if cell.Type == FORMULA else cell.Type == VALUE
                cells[name] = {
                    "kind": KINDS[cell.Type.value],
                    "text": cell.String,
                    "error": cell.Error,
                    "number": cell.Value if number and not cell.Error else None,
                }
        shown[sheet.Name] = cells
    return shown


def main():
    job = json.load(sys.stdin)
    office = desktop(job["pipe"])
    document = None
    answers = []
    try:
        for step in job["steps"]:
            do = step["do"]
            if do in ("open", "new"):
                url = step.get("url", "private:factory/scalc")
                document = office.loadComponentFromURL(
                    url, "_blank", 0, (option("Hidden", True), option("UpdateDocMode", FULL_UPDATE))
                )
                if document is None:
                    sys.exit("LibreOffice cannot open " + url)
            elif do == "text":
                document.Sheets.getByName(step["sheet"]).getCellRangeByName(step["cell"]).setString(step["text"])
            elif do == "formula":
                sheet = document.Sheets.getByName(step["sheet"]) if "sheet" in step else document.Sheets.getByIndex(0)
                sheet.getCellRangeByName(step["cell"]).setFormula(step["formula"])
            elif do == "again":
                document.calculateAll()
            elif do == "read":
                answers.append(read(document))
            elif do == "csv":
                for index, name in enumerate(document.Sheets.ElementNames):
                    if name == step["sheet"]:
                        options = "44,34,76,1,,0,false,true,false,false,false," + str(index + 1)
                document.storeToURL(
                    step["url"],
                    (option("FilterName", "Text - txt - csv (StarCalc)"), option("FilterOptions", options)),
                )
        json.dump(answers, sys.stdout)
        sys.stdout.flush()
    finally:
        if document is not None:
            document.close(True)


main()
# Taking the bridge down in an orderly way crashes Python now and then; who started the office also ends it.
os._exit(0)
