"""Mixed requests, one after another, to a service of a given heap; prints its resident memory at the start, at ten or more points on the
way and at the end. Every answer must be 200 and whole: rows sent in bulk must come back as as many rows. Every seed is another, so that
most answers are computed.

Usage: mixed.py scalepan-all.jar HEAP N requests|minutes
"""
import http.client
import json
import re
import subprocess
import sys
import time

jar, heap, number, unit = sys.argv[1], sys.argv[2], float(sys.argv[3]), sys.argv[4]
assert unit in ("requests", "minutes"), unit
FARM = {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 180}, "feed": [{"ingredient": "wheat-bran", "kg": 400, "burden": "mass"}]}
JSON, CSV = {"Content-Type": "application/json"}, {"Content-Type": "text/csv"}
ROWS = 200
TABLE = "kind,name,region,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.1.burden\n" + "insects,shed,portugal,mealworm,180,wheat-bran,400,mass\n" * ROWS
# A method, an address (%d: the seed), headers, a body, and how many lines the answer has, where that is known.
QUESTIONS = [
    ("GET", "/v1/comparison?products=mealworm,house-cricket&against=beef&draws=1000&seed=%d", {}, None, None),
    ("GET", "/v1/comparison?products=mealworm&against=chicken&format=csv&seed=%d", {}, None, None),
    ("GET", "/v1/value/ghg/mealworm?seed=%d", {}, None, None),
    ("GET", "/v1/brief?products=mealworm&against=beef&format=html&seed=%d", {}, None, None),
    ("GET", "/v1/brief?products=mealworm&against=beef&format=svg&seed=%d", {}, None, None),
    ("GET", "/v1/claim?text=insects+emit+100+times+less+than+beef", {}, None, None),
    ("GET", "/v1/products", {}, None, None),
    ("GET", "/", {}, None, None),
    ("POST", "/v1/footprint", JSON, json.dumps({"system": FARM}), None),
    ("POST", "/v1/footprints?indicators=ghg", CSV, TABLE, ROWS + 1),
]

process = subprocess.Popen(["java", f"-Xmx{heap}", "-XX:+UseSerialGC", "-jar", jar, "--port", "0"], stdout=subprocess.PIPE, text=True)
try:
    address = next(word for word in process.stdout.readline().split() if word.startswith("http://"))
    connection = http.client.HTTPConnection(address.removeprefix("http://"), timeout=60)

    def resident(name):
        return int(re.search(name + r":\s+(\d+)", open(f"/proc/{process.pid}/status").read())[1]) // 1024

    print(f"heap {heap}: {resident('VmRSS')} MB resident after the start")
    start = time.monotonic()
    asked, told = 0, 0
    while (done := asked / number if unit == "requests" else (time.monotonic() - start) / (60 * number)) < 1:
        method, path, headers, body, lines = QUESTIONS[asked % len(QUESTIONS)]
        asked += 1
        connection.request(method, path % asked if "%d" in path else path, body, headers)
        answer = connection.getresponse()
        content = answer.read()
        assert answer.status == 200, (path, answer.status, content[:300])
        assert lines is None or content.count(b"\n") == lines, (path, content.count(b"\n"), content[-300:])
        assert lines is None or content.count(b",ok,") == lines - 1, (path, content[-300:])
        if done * 10 >= told + 1:
            told += 1
            print(f"{asked} requests, {time.monotonic() - start:.0f} s: {resident('VmRSS')} MB resident", flush=True)
    print(f"{asked} requests, {time.monotonic() - start:.0f} s: {resident('VmRSS')} MB resident at the end, {resident('VmHWM')} MB at most; all answered whole")
finally:
    process.kill()
