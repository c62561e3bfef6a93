"""Start to first answer beside a bare JVM hello world, both with class-data sharing archives of their own, in turns; milliseconds.

Usage: start.py scalepan-all.jar [rounds]
"""
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time
import urllib.request

jar, rounds = str(pathlib.Path(sys.argv[1]).resolve()), int(sys.argv[2]) if len(sys.argv) > 2 else 7
folder = pathlib.Path(tempfile.mkdtemp())
(folder / "Hello.java").write_text('class Hello { public static void main(String[] a) { System.out.println("hello"); } }')
subprocess.run(["javac", "-d", folder, folder / "Hello.java"], check=True)
subprocess.run(["jar", "cfe", folder / "hello.jar", "Hello", "-C", folder, "Hello.class"], check=True)
QUESTION = "/v1/comparison?products=mealworm&against=beef"


def hello(options):
    start = time.perf_counter()
    subprocess.run(["java", *options, "-jar", folder / "hello.jar"], check=True, stdout=subprocess.DEVNULL)
    return time.perf_counter() - start


def service(options, stop=lambda process: process.kill()):
    start = time.perf_counter()
    process = subprocess.Popen(
        ["java", *options, "-jar", jar, "--port", "0"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    line = process.stdout.readline()
    address = next(word for word in line.split() if word.startswith("http://"))
    urllib.request.urlopen(address + QUESTION).read()
    taken = time.perf_counter() - start
    stop(process)
    process.wait()
    return taken


def shared(name):
    return ["-XX:SharedArchiveFile=" + str(folder / name), "-XX:TieredStopAtLevel=1"]


hello(["-XX:ArchiveClassesAtExit=" + str(folder / "hello.jsa")])
service(["-XX:ArchiveClassesAtExit=" + str(folder / "scalepan.jsa")], stop=lambda process: process.terminate())
ways = {"hello": lambda: hello(shared("hello.jsa")), "service": lambda: service(shared("scalepan.jsa")), "service without archive": lambda: service([])}
times = {name: [] for name in ways}
for _ in range(rounds):
    for name, way in ways.items():
        times[name].append(way() * 1000)
for name, taken in times.items():
    print(f"{name} {statistics.median(taken):.0f} ms")
print(f"ratio {statistics.median(s / h for s, h in zip(times['service'], times['hello'])):.1f}")
