"""The question of all products in vectorised NumPy: the reference point of ComparisonBench.

It pools as the service does: a normal-normal hierarchy of natural logarithms with a flat prior on the mean and a half-normal one on the
spread between studies (tau), whose posterior is a sum over a grid; draws of tau, of the conversions, and of what the next study would state.
The posterior is made once and kept, as in the service, whose evidence does not depend on the seed. Both states of land-use change are
computed, as the service does. It computes the same figures: five quantiles, mean and standard deviation of footprint, ratio and share, and
the share of draws in which the product has less.

fresh and kept_draws: a score for the error and one for the own value of each study, so that what two sides share cancels, as in the service.
shortcut: one score for each pool, which loses that; the least that NumPy can do.

All conversions are lognormal here, which favours NumPy: the service also has beta, triangular and percentile curves; and its quantiles are
read from distributions, which have the digits of a hundred times as many draws.

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
STEPS = 320


class Pool:
    """Studies of one product, and the posterior of tau as a table of probabilities and quantiles."""

    def __init__(self, pool):
        self.id = pool["id"]
        self.studies = pool["studies"]
        self.effects = np.array([study["effect"] for study in self.studies])
        self.variances = np.array([study["error"] ** 2 for study in self.studies])
        self.further = self.variances.mean()
        scale = shape["scale"]
        # Even steps of t, where tau = a sinh t, as far as the density is worth counting.
        a = min(scale, np.sqrt(self.variances.min()))
        top = np.arcsinh((np.sqrt(scale * np.ptp(self.effects)) + 8 * scale) / a)
        tau = a * np.sinh(np.linspace(0, top, STEPS + 1))
        weights = 1 / (self.variances + tau[:, None] ** 2)
        sums = weights.sum(axis=1)
        means = (weights * self.effects).sum(axis=1) / sums
        log = -0.5 * (tau / scale) ** 2
        if len(self.studies) > 1:
            log += 0.5 * np.log(weights).sum(axis=1) - 0.5 * np.log(sums)
            log -= 0.5 * (weights * (self.effects - means[:, None]) ** 2).sum(axis=1)
        density = np.exp(log - log.max()) * np.sqrt(a * a + tau * tau)
        below = np.concatenate([[0], np.cumsum(density[1:] + density[:-1])])
        self.below, self.taus = below / below[-1], tau


def pools(state):
    return Pool(state["reference"]), [Pool(pool) for pool in state["products"] if pool["studies"]]


STATES = [pools(state) for state in shape["states"]]


def score(scores, rng, name):
    if name not in scores:
        scores[name] = rng.standard_normal(n)
    return scores[name]


def given(pool, scores, rng):
    """Draws of tau, of the studies' shares in the mean, and of the mean but for errors and own values."""
    name = "between/" + pool.id
    if name not in scores:
        scores[name] = rng.random(n)
    tau = np.interp(scores[name], pool.below, pool.taus)
    squared = tau * tau
    shares = [1 / (variance + squared) for variance in pool.variances]
    total = sum(shares)
    mean = np.zeros(n)
    for share, study in zip(shares, pool.studies):
        share /= total
        found = study["effect"]
        for factor, sd, weight in study["conversions"]:
            found = found + weight * sd * score(scores, rng, factor)
        mean += share * found
    return tau, squared, total, shares, mean


def statement(pool, scores, rng):
    """Natural logarithm of what the next study would state."""
    tau, _, _, shares, drawn = given(pool, scores, rng)
    for share, study, variance in zip(shares, pool.studies, pool.variances):
        error = np.sqrt(variance) * score(scores, rng, study["id"])
        drawn += share * (error + tau * score(scores, rng, "own/" + study["id"]))
    drawn += tau * score(scores, rng, "own/next/" + pool.id)
    return drawn + np.sqrt(pool.further) * score(scores, rng, "next/" + pool.id)


def shortcut(pool, scores, rng):
    """The same from one score: given tau and the conversions the logarithm is normal."""
    _, squared, total, _, drawn = given(pool, scores, rng)
    return drawn + np.sqrt(1 / total + squared + pool.further) * score(scores, rng, "one/" + pool.id)


def figures(log):
    draws = np.exp(log)
    return np.exp(np.quantile(log, PROBABILITIES)), draws.mean(), draws.std(ddof=1)


def question(scores, rng, drawn=statement):
    answers = []
    for against, products in STATES:
        reference = drawn(against, scores, rng)
        answers.append(figures(reference))
        for product in products:
            own = drawn(product, scores, rng)
            ratio = reference - own
            inverse = np.exp(-ratio)
            answers.append((figures(own), figures(ratio), inverse.mean(), inverse.std(ddof=1), np.mean(ratio > 0)))
    return answers


def median_of(run):
    run()
    times = []
    for _ in range(rounds):
        start = time.process_time()
        run()
        times.append(time.process_time() - start)
    return statistics.median(times) * 1e6


def main():
    kept = {}
    rng = np.random.default_rng(1)
    print(f"fresh {median_of(lambda: question({}, np.random.default_rng())):.0f}")
    print(f"kept_draws {median_of(lambda: question(kept, rng)):.0f}")
    print(f"shortcut {median_of(lambda: question({}, np.random.default_rng(), shortcut)):.0f}")


if __name__ == "__main__":
    main()
