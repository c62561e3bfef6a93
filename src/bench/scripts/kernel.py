"""The question of all products in vectorised NumPy: the reference point of ComparisonBench.

It draws what the service draws (a normal score per factor, once for all its uses; a choice of study), each finding only where it is
chosen, and computes the same figures: five quantiles, mean and standard deviation of footprint, ratio and share, and the probability of less.
All factors are lognormal here, which favours NumPy: the service also has beta, triangular and percentile curves.

Usage: kernel.py shape.json [rounds]
"""
import json
import statistics
import sys
import time

import numpy as np

shape = json.load(open(sys.argv[1]))
rounds = int(sys.argv[2]) if len(sys.argv) > 2 else 30
n = shape["draws"]
PROBABILITIES = [0.05, 0.4902, 0.5, 0.5098, 0.95]


def footprint(studies, scores, rng):
    choice = rng.random(n) * len(studies)
    which = choice.astype(np.int64)
    part = choice - which
    out = np.empty(n)
    for s, findings in enumerate(studies):
        for f, factors in enumerate(findings):
            low, high = f / len(findings), (f + 1) / len(findings)
            places = np.nonzero((which == s) & (part >= low) & (part < high))[0]
            log = np.zeros(len(places))
            middle = 1.0
            for name, median, sd in factors:
                if name not in scores:
                    scores[name] = rng.standard_normal(n)
                log += sd * scores[name][places]
                middle *= median
            out[places] = middle * np.exp(log)
    return out


def figures(draws):
    return np.quantile(draws, PROBABILITIES), draws.mean(), draws.std(ddof=1)


def question(scores, rng):
    reference = footprint(shape["reference"], scores, rng)
    answers = [figures(reference)]
    for product in shape["products"]:
        own = footprint(product, scores, rng)
        answers.append((figures(own), figures(reference / own), figures(own / reference), np.mean(own < reference)))
    return answers


def median_of(run):
    run()
    times = []
    for _ in range(rounds):
        start = time.process_time()
        run()
        times.append(time.process_time() - start)
    return statistics.median(times) * 1e6


kept = {}
rng = np.random.default_rng(1)
print(f"fresh {median_of(lambda: question({}, np.random.default_rng())):.0f}")
print(f"kept_draws {median_of(lambda: question(kept, rng)):.0f}")
