"""Time to first answer, compared with a bare JVM hello world and with a minimal server of the same libraries without data,
each with its own class archive, alternating: milliseconds of wall time and of processor time. On a busy machine only the second
is meaningful.

Usage: start.py scalepan-all.jar [rounds]; JAVA names another java, and from JDK 25 on an ahead-of-time cache takes the archive's place.
"""
import os
import pathlib
import re
import statistics
import subprocess
import sys
import tempfile
import time
import urllib.request

JAVA = os.environ.get("JAVA", "java")
QUICK = ["-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"]
QUESTION = "/v1/comparison?products=mealworm&against=beef"

jar, rounds = str(pathlib.Path(sys.argv[1]).resolve()), int(sys.argv[2]) if len(sys.argv) > 2 else 7
folder = pathlib.Path(tempfile.mkdtemp())
(folder / "Hello.java").write_text('class Hello { public static void main(String[] a) { System.out.println("hello"); } }')
subprocess.run(["javac", "--release", "17", "-d", folder, folder / "Hello.java"], check=True)
subprocess.run(["jar", "cfe", folder / "hello.jar", "Hello", "-C", folder, "Hello.class"], check=True)
(folder / "Empty.java").write_text("""
class Empty {
    public static void main(String[] a) {
        var server = io.javalin.Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.routes.get("/", context -> context.result("x"));
        }).start("127.0.0.1", 0);
        System.out.println("listens on http://127.0.0.1:" + server.port());
    }
}""")
subprocess.run(["javac", "--release", "17", "-cp", jar, "-d", folder, folder / "Empty.java"], check=True)
subprocess.run(["jar", "cf", folder / "empty.jar", "-C", folder, "Empty.class"], check=True)
release = int(re.search(r'version "(\d+)', subprocess.run([JAVA, "-version"], capture_output=True, text=True).stderr).group(1))
write, read = ("-XX:AOTCacheOutput=", "-XX:AOTCache=") if release >= 25 else ("-XX:ArchiveClassesAtExit=", "-XX:SharedArchiveFile=")


def run(command, until, stop):
    start = time.perf_counter()
    process = subprocess.Popen([JAVA, *command], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    until(process.stdout.readline())
    taken = time.perf_counter() - start
    stop(process)
    used = os.wait4(process.pid, 0)[2]
    process.stdout.close()
    return taken * 1000, (used.ru_utime + used.ru_stime) * 1000


def hello(options):
    return run([*options, "-jar", folder / "hello.jar"], lambda line: None, lambda process: None)


def kill(process):
    process.kill()


def terminate(process):
    process.terminate()


def asking(question):
    def ask(line):
        address = next(word for word in line.split() if word.startswith("http://"))
        urllib.request.urlopen(address + question).read()

    return ask


def empty(options, stop=kill):
    return run([*options, "-cp", f"{folder}/empty.jar:{jar}", "Empty"], asking("/"), stop)


def service(options, stop=kill):
    return run([*options, "-jar", jar, "--port", "0"], asking(QUESTION), stop)


hello([write + str(folder / "hello"), *QUICK])
empty([write + str(folder / "empty"), *QUICK], terminate)
service([write + str(folder / "scalepan"), *QUICK], terminate)
ways = {
    "hello": lambda: hello([read + str(folder / "hello"), *QUICK]),
    "empty server": lambda: empty([read + str(folder / "empty"), *QUICK]),
    "service": lambda: service([read + str(folder / "scalepan"), *QUICK]),
    "service without archive": lambda: service([]),
}
times = {name: [] for name in ways}
for _ in range(rounds):
    for name, way in ways.items():
        times[name].append(way())
for name, taken in times.items():
    print("%s: clock %.0f ms, processors %.0f ms" % (name, *(statistics.median(column) for column in zip(*taken))))
for name in ["hello", "empty server"]:
    for column, what in enumerate(["clock", "processors"]):
        ratio = statistics.median(s[column] / other[column] for s, other in zip(times["service"], times[name]))
        print("service over %s by %s: %.1f" % (name, what, ratio))
