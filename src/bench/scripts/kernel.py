"""The question of all products in vectorised NumPy: the reference point of ComparisonBench.

It pools as the service does: a normal-normal hierarchy of natural logarithms with a flat prior on the mean and a half-normal one on the
spread between studies (tau), whose posterior is a sum over a grid; draws of tau and of the conversions, shared by all that uses them. The
posterior is made once and kept, as in the service, whose evidence does not depend on the seed. Both states of land-use change are computed,
and a pool that is the same in both once, as in the service. It computes the same figures: median, interval, mean and standard errors of
footprint, ratio and share, and the share of draws in which the product has less.

fresh and kept_draws: figures read from the mean of the normal distributions that each draw gives, as in the service.
drawn: figures from draws of what the next study would state, with a score for the error and one for the own value of each study, so that
what two sides share cancels; a number of draws then gives a hundredth of its digits.
shortcut: the same from one score for each pool, which loses what two sides share; the least that NumPy can do.

All conversions are lognormal here, and the normal distribution function is good to seven figures, which both favours NumPy.

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
SCORES = [(0.05, -1.6448536269514722), (0.5, 0.0), (0.95, 1.6448536269514722)]
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


def pools(state, known):
    def pool(one):
        return known.setdefault(json.dumps(one), Pool(one))

    return pool(state["reference"]), [pool(one) for one in state["products"] if one["studies"]]


KNOWN = {}
STATES = [pools(state, KNOWN) for state in shape["states"]]


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


class Read:
    """Figures read from the distributions that the draws give."""

    @staticmethod
    def pooled(pool, scores, rng):
        tau, squared, total, shares, mean = given(pool, scores, rng)
        return mean, np.sqrt(1 / total + squared + pool.further), (pool, tau, shares)

    @staticmethod
    def footprint(one):
        return read(one[0], one[1])

    @staticmethod
    def ratio(reference, own):
        mean = reference[0] - own[0]
        variance = reference[1] ** 2 + own[1] ** 2
        (theirs, their_tau, their_shares), (ours, our_tau, our_shares) = reference[2], own[2]
        for i, study in enumerate(theirs.studies):
            for j, other in enumerate(ours.studies):
                if study["id"] == other["id"]:
                    errors = theirs.variances[i] ** 0.5 * ours.variances[j] ** 0.5
                    variance = variance - 2 * their_shares[i] * our_shares[j] * (errors + their_tau * our_tau)
        sd = np.sqrt(variance)
        return read(mean, sd), np.exp(sd * sd / 2 - mean).mean(), below(mean / sd).mean()


def below(score):
    """The standard normal distribution function: Abramowitz and Stegun 26.2.17."""
    size = np.abs(score)
    t = 1 / (1 + 0.2316419 * size)
    tail = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
    tail *= 0.3989422804014327 * np.exp(-0.5 * size * size)
    return np.where(score < 0, tail, 1 - tail)


def read(mean, sd):
    """Quantiles of the mixture by Newton's method, standard error of the median, mean."""
    centre, spread = mean.mean(), np.sqrt((sd * sd).mean() + mean.var())
    quantiles = []
    for probability, z in SCORES:
        x = centre + z * spread
        for _ in range(50):
            score = (x - mean) / sd
            step = (below(score).mean() - probability) / (0.3989422804014327 * np.exp(-0.5 * score * score) / sd).mean()
            x -= step
            if abs(step) < 1e-6:
                break
        quantiles.append(x)
    score = (quantiles[1] - mean) / sd
    error = below(score).std() / (0.3989422804014327 * np.exp(-0.5 * score * score) / sd).mean() / np.sqrt(n)
    expected = np.exp(mean + sd * sd / 2)
    return np.exp(quantiles), error, expected.mean(), expected.std()


class Drawn:
    """Figures from draws."""

    @staticmethod
    def pooled(pool, scores, rng):
        tau, _, _, shares, drawn = given(pool, scores, rng)
        for share, study, variance in zip(shares, pool.studies, pool.variances):
            error = np.sqrt(variance) * score(scores, rng, study["id"])
            drawn += share * (error + tau * score(scores, rng, "own/" + study["id"]))
        drawn += tau * score(scores, rng, "own/next/" + pool.id)
        return drawn + np.sqrt(pool.further) * score(scores, rng, "next/" + pool.id)

    @staticmethod
    def footprint(log):
        draws = np.exp(log)
        return np.exp(np.quantile(log, PROBABILITIES)), draws.mean(), draws.std(ddof=1)

    @staticmethod
    def ratio(reference, own):
        log = reference - own
        return Drawn.footprint(log), np.exp(-log).mean(), np.mean(log > 0)


class Shortcut(Drawn):
    @staticmethod
    def pooled(pool, scores, rng):
        _, squared, total, _, drawn = given(pool, scores, rng)
        return drawn + np.sqrt(1 / total + squared + pool.further) * score(scores, rng, "one/" + pool.id)


def question(scores, rng, way=Read):
    known = {}

    def pooled(pool):
        if id(pool) not in known:
            one = way.pooled(pool, scores, rng)
            known[id(pool)] = one, way.footprint(one)
        return known[id(pool)]

    answers = []
    for against, products in STATES:
        reference = pooled(against)
        for product in products:
            own = pooled(product)
            answers.append((reference[1], own[1], None if product is against else way.ratio(reference[0], own[0])))
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
    print(f"drawn {median_of(lambda: question({}, np.random.default_rng(), Drawn)):.0f}")
    print(f"shortcut {median_of(lambda: question({}, np.random.default_rng(), Shortcut)):.0f}")


if __name__ == "__main__":
    main()
