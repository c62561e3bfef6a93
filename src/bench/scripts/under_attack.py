"""Heap and resident memory of a service in -Xmx96m while it is attacked round after round: both must stay constant.

Usage: under_attack.py scalepan-all.jar [rounds]
"""
import collections
import re
import socket
import subprocess
import sys
import threading
import time

JAR, ROUNDS = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 10
JSON = "Content-Type: application/json\r\n"
ROW = '{"kind":"insects","product":"mealworm","harvest":{"kg_per_year":1}}\n'
OPEN = '{"system":' + ROW.strip()

# Each attack is a request, and whether its response is read.
def post(path, headers, body):
    return f"POST {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n{headers}Content-Length: {len(body)}\r\n\r\n{body}"

def get(path, headers=""):
    return f"GET {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n{headers}\r\n"

ATTACKS = {
    "a megabyte of small numbers": post("/v1/footprint", JSON, OPEN + ',"x":[' + "1," * 500_000 + "1]}"),
    "a megabyte of lists": post("/v1/footprint", JSON, OPEN + ',"x":[' + "[]," * 330_000 + "[]]}"),
    "100 000 objects deep": post("/v1/footprint", JSON, '{"a":' * 100_000),
    "a number of 100 000 digits": post("/v1/footprint", JSON, OPEN + ',"x":' + "9" * 100_000 + "}"),
    "names that are all different": post("/v1/footprint", JSON, OPEN + "".join(f',"n{i}":{i}' for i in range(20_000)) + "}"),
    "two megabytes": post("/v1/footprint", JSON, " " * 2_000_000),
    "heavy questions, each with a seed of its own": get(
        "/v1/comparison?products=mealworm,house-cricket,chicken,pork,tofu&against=beef&draws=200000&seed=%d"),
    "requests that fill the response cache": get("/v1/comparison?products=mealworm&against=beef&draws=1000&seed=%d"),
    "a request target of 12 000 characters": get("/v1/products?" + "x" * 12_000),
    "headers of 12 000 characters": get("/", "X-Long: " + "x" * 12_000 + "\r\n"),
    "a megabyte of rows that are none": post("/v1/footprints", "Content-Type: text/csv\r\n", "\n".join(["a,b"] * 250_000)),
    "rows that are never read": post("/v1/footprints?indicators=ghg", "Content-Type: application/x-ndjson\r\n", ROW * 3_000),
    "half a body": post("/v1/footprint", JSON, " " * 1_000_000)[:500_000],
    "what is no HTTP": "\x16\x03\x01" + "\0" * 1_000,
}
UNREAD = {"rows that are never read", "half a body"}


def attack(port, name, number, seen, lock):
    try:
        with socket.create_connection(("127.0.0.1", port), timeout=60) as connection:
            request = ATTACKS[name]
            connection.sendall((request % number if "%d" in request else request).encode("latin-1"))
            status = "left" if name in UNREAD else "closed"
            head = b"" if name in UNREAD else connection.recv(65_536)
            if head.startswith(b"HTTP/1.1 "):
                status = head[9:12].decode()
                while connection.recv(65_536):
                    pass
    except OSError:
        status = "closed"
    with lock:
        seen[status] += 1


def memory(process, port):
    subprocess.run(["jcmd", str(process.pid), "GC.run"], check=True, stdout=subprocess.DEVNULL)
    with socket.create_connection(("127.0.0.1", port), timeout=60) as connection:
        connection.sendall(get("/metrics").encode())
        text = b"".join(iter(lambda: connection.recv(65_536), b"")).decode()
    heap = float(re.search(r"scalepan_heap_used_bytes ([0-9.E]+)", text)[1]) / 1_048_576
    status = open(f"/proc/{process.pid}/status").read()
    resident = int(re.search(r"VmRSS:\s+(\d+)", status)[1]) // 1024
    threads = int(re.search(r"Threads:\s+(\d+)", status)[1])
    return f"heap {heap:.0f} MB after collection, resident {resident} MB, {threads} threads"


process = subprocess.Popen(
    ["java", "-Xmx96m", "-jar", JAR, "--port", "0"], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
port = int(re.search(r":(\d+) ", process.stdout.readline())[1])
errors = []
threading.Thread(target=lambda: errors.extend(process.stderr), daemon=True).start()
try:
    number, seen, lock = 0, collections.Counter(), threading.Lock()
    print(f"before: {memory(process, port)}")
    for turn in range(1, ROUNDS + 1):
        threads = []
        for name in ATTACKS:
            for _ in range(6):
                number += 1
                threads.append(threading.Thread(target=attack, args=(port, name, number, seen, lock)))
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        time.sleep(1)
        print(f"round {turn}: {memory(process, port)}", flush=True)
    print(f"answers: {dict(sorted(seen.items()))}; {len(ATTACKS)} attacks, 6 of each at once")
    faults = [line for line in errors if "ERROR" in line or "OutOfMemory" in line]
    print(f"lines of error in the log: {len(faults)}", *faults[:5])
finally:
    process.kill()
