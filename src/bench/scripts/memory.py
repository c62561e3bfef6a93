"""Peak memory of a service in -Xmx96m while it computes 10 000 and then many more rows sent as CSV.

Usage: memory.py scalepan-all.jar file-of-10000.csv file-of-many.csv
"""
import re
import subprocess
import sys
import time

process = subprocess.Popen(
    ["java", "-Xmx96m", "-jar", sys.argv[1], "--port", "0"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
address = next(word for word in process.stdout.readline().split() if word.startswith("http://"))
try:
    for file in sys.argv[2:]:
        start = time.perf_counter()
        rows = subprocess.run(
            f"curl -sf -H 'Content-Type: text/csv' -T {file} -X POST {address}/v1/footprints | wc -l",
            shell=True, check=True, capture_output=True, text=True).stdout.strip()
        peak = int(re.search(r"VmHWM:\s+(\d+)", open(f"/proc/{process.pid}/status").read())[1]) // 1024
        print(f"{rows} lines answered in {time.perf_counter() - start:.0f} s, peak memory {peak} MB")
finally:
    process.kill()
