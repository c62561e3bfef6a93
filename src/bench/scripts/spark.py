"""Rows a second of the service and of the job on Spark, and the job's memory. Called by src/bench/spark."""

import os
import pathlib
import re
import resource
import shutil
import subprocess
import sys
import time

JAR, ROWS, LONG = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
MADE = pathlib.Path("target/spark/bench")
RUN = "src/spark/run"


def generated(rows):
    folder = MADE / f"rows-{rows}"
    shutil.rmtree(folder, ignore_errors=True)
    files = max(2, rows // 500_000)
    subprocess.run([RUN, "local[1]", "GeneratedRows", str(rows), str(folder), str(files)], check=True)
    return folder


def job(rows, folder, processors):
    """Seconds of wall clock, seconds of processors, megabytes resident at the peak."""
    answers = MADE / "answers"
    shutil.rmtree(answers, ignore_errors=True)
    start = time.monotonic()
    process = subprocess.Popen(
        [RUN, f"local[{processors}]", "FootprintJob", "--input", str(folder), "--output", str(answers)],
        env={**os.environ, "HEAP": "1g"},
        stdout=subprocess.PIPE,
        text=True,
    )
    said = process.stdout.read()
    _, status, used = os.wait4(process.pid, 0)
    seconds = time.monotonic() - start
    assert status == 0 and f'"rows": {rows},' in said, said
    return seconds, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024


def service(folder):
    """Seconds from the first byte sent to the last received."""
    table = MADE / "table.csv"
    with table.open("wb") as out:
        for number, file in enumerate(sorted(folder.glob("*.csv"))):
            with file.open("rb") as lines:
                for place, line in enumerate(lines):
                    if place > 0 or number == 0:
                        out.write(line.split(b",", 1)[1])
    process = subprocess.Popen(["java", "-Xmx1g", "-jar", JAR, "--port", "0"], stdout=subprocess.PIPE, text=True)
    try:
        url = re.search(r"http://\S+", process.stdout.readline()).group()
        post = ["curl", "-sSf", "-H", "Content-Type: text/csv", "--data-binary", f"@{table}", "-o", "/dev/null"]
        times = []
        for _ in range(3):
            start = time.monotonic()
            subprocess.run(post + [f"{url}/v1/footprints"], check=True)
            times.append(time.monotonic() - start)
        return sorted(times)[1]
    finally:
        process.terminate()


few, many = generated(ROWS // 10), generated(ROWS)
print(f"service: {ROWS / service(many):,.0f} rows/s")
for processors in (1, 2):
    short, long = job(ROWS // 10, few, processors), job(ROWS, many, processors)
    more = ROWS - ROWS // 10
    print(
        f"job, local[{processors}]: {more / (long[0] - short[0]):,.0f} rows/s,"
        f" {(long[1] - short[1]) / more * 1e6:.0f} us of one processor a row; {ROWS:,} rows in {long[0]:.0f} s in all,"
        f" {short[2]:.0f} MB at {ROWS // 10:,} rows, {long[2]:.0f} MB at {ROWS:,}"
    )
if LONG:
    seconds, used, memory = job(LONG, generated(LONG), 2)
    print(f"{LONG:,} rows, local[2]: {seconds:.0f} s, {LONG / seconds:,.0f} rows/s with the start, {memory:.0f} MB")
