"""Sends requests to two instances (ports 18081 and 18082) and their proxy (18080); kills both, one after the other.

Usage: two_instances.py PID_OF_FIRST PID_OF_SECOND
"""
import collections
import http.client
import os
import signal
import sys
import threading
import time

QUESTIONS = [
    "/v1/products",
    "/v1/comparison?products=mealworm,house-cricket&against=beef",
    "/v1/comparison?products=mealworm,house-cricket&against=beef&format=csv",
    "/v1/comparison?products=mealworm&against=chicken&draws=1000&seed=7",
    "/v1/table?products=beef,chicken&indicators=ghg,land&format=csv",
]


def ask(port, path, connection=None):
    connection = connection or http.client.HTTPConnection("127.0.0.1", port, timeout=30)
    connection.request("GET", path)
    answer = connection.getresponse()
    return answer.status, answer.headers, answer.read()


def same_bytes():
    for path in QUESTIONS:
        first, second = ask(18081, path), ask(18082, path)
        assert first[0] == second[0] == 200, (path, first[0], second[0], first[2][:300])
        assert first[2] == second[2], path
        assert first[1]["ETag"] == second[1]["ETag"], path
    print(f"same bytes and ETags from both instances: {len(QUESTIONS)} questions")


def one_killed(pid):
    seen, lock, over = collections.Counter(), threading.Lock(), threading.Event()

    def client(number):
        own, asked = collections.Counter(), 0
        connection = http.client.HTTPConnection("127.0.0.1", 18080, timeout=30)
        while not over.is_set():
            asked += 1
            # A different seed each time, so that no cache has the answer.
            path = f"/v1/comparison?products=mealworm&against=beef&draws=1000&seed={number * 1_000_000 + asked}"
            try:
                status, headers, _ = ask(18080, path, connection)
                own[status] += 1
                own["by more than one"] += "," in (headers["X-Instance"] or "")
            except (OSError, http.client.HTTPException) as e:
                own[repr(e)] += 1
                connection = http.client.HTTPConnection("127.0.0.1", 18080, timeout=30)
        with lock:
            seen.update(own)

    clients = [threading.Thread(target=client, args=(number,)) for number in range(4)]
    for one in clients:
        one.start()
    time.sleep(3)
    os.kill(pid, signal.SIGKILL)
    time.sleep(5)
    over.set()
    for one in clients:
        one.join()
    retried = seen.pop("by more than one")
    print(f"one instance killed under load: {dict(seen)}, {retried} of them asked again of the other instance")
    assert set(seen) == {200}, "an idempotent request was lost"


def pinned_from_cache(pid):
    status, headers, body = ask(18080, QUESTIONS[1])
    permalink, tag = headers["Content-Location"], headers["ETag"]
    first = ask(18080, permalink)
    second = ask(18080, permalink)
    assert first[1]["X-Cache"] == "MISS" and second[1]["X-Cache"] == "HIT", (first[1]["X-Cache"], second[1]["X-Cache"])
    os.kill(pid, signal.SIGKILL)
    time.sleep(0.5)
    third = ask(18080, permalink)
    assert third[0] == 200 and third[1]["X-Cache"] == "HIT" and third[2] == body and third[1]["ETag"] == tag
    print("pinned permalink with no instance left: 200 from the proxy's cache, the same bytes and ETag")


same_bytes()
one_killed(int(sys.argv[1]))
pinned_from_cache(int(sys.argv[2]))
