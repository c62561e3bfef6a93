"""Rows of a folder of CSV files for .ci/spark: as one table without ids, as JSON lines with ids, and compared as numbers."""

import csv
import json
import pathlib
import re
import sys


def lines(folder):
    """The header, then the rows of all files in order."""
    for number, file in enumerate(sorted(pathlib.Path(folder).glob("*.csv"))):
        with file.open(encoding="utf-8", newline="") as text:
            for place, line in enumerate(text):
                if place > 0 or number == 0:
                    yield line.rstrip("\n")


def table(folder):
    for line in lines(folder):
        print(line.split(",", 1)[1])


def value(cell):
    return float(cell) if re.fullmatch(r"-?\d+(\.\d+)?", cell) else cell


def as_json(folder):
    rows = csv.reader(lines(folder))
    header = next(rows)
    for cells in rows:
        record = {"id": cells[0]}
        for name, cell in zip(header[1:], cells[1:]):
            if not cell:
                continue
            steps = name.split(".")
            if len(steps) == 3:
                entries = record.setdefault(steps[0], [])
                while len(entries) < int(steps[1]):
                    entries.append({})
                entries[int(steps[1]) - 1][steps[2]] = value(cell)
            elif len(steps) == 2:
                record.setdefault(steps[0], {})[steps[1]] = value(cell)
            else:
                record[name] = value(cell)
        print(json.dumps(record, ensure_ascii=False))


def same(answers):
    ours = list(csv.reader(sys.stdin))
    with open(answers, encoding="utf-8", newline="") as text:
        theirs = list(csv.reader(text))
    assert len(ours) == len(theirs), (len(ours), len(theirs))
    for one, other in zip(ours, theirs):
        assert [value(cell) for cell in one] == [value(cell) for cell in other], (one, other)


{"table": table, "json": as_json, "same": same}[sys.argv[1]](sys.argv[2])
