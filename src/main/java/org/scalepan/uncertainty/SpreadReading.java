package org.scalepan.uncertainty;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Turns a printed number with its spread into a distribution.
 *
 * <p>Positive quantities are read as lognormal where a mean or two limits are given, as a curve through all points where three
 * percentiles are, as triangular or log-uniform where only a range is, and as lognormal where the range is that of the inputs of a
 * derivation: then the variance of a log-uniform, width squared over 12, and that of a number alone add up. Quantities that are zero or negative (credits) are
 * read as normal. A number with no spread gets the default geometric standard deviation of the caller, who must say so.
 *
 * <p>Sources: moments of the lognormal, Limpert, Stahel and Abbt (2001), BioScience 51, 341–352; limits as GSD =
 * (high/low)^(1/3.92), the identity of a 95 % interval of ±1.96 standard deviations on the logarithm; range readings,
 * JCGM 101:2008, 6.4, and common practice, no source.
 */
public final class SpreadReading {
    private static final double CI95_WIDTH = 3.92;

    private SpreadReading() {}

    /**
     * The distribution of a quantity without upper bound.
     *
     * @param printed the number as published
     * @param defaultGsd geometric standard deviation (not its square) for a number without spread, and on top of a range of inputs, 1 or more
     * @throws IllegalArgumentException naming what the spread lacks or what contradicts it
     */
    public static Distribution read(PublishedSpread printed, double defaultGsd) {
        Require.atLeastOne("default geometric standard deviation", defaultGsd);
        return switch (printed.kind()) {
            case SD, SE -> deviation(printed);
            case CI95 -> confidenceLimits(printed);
            case P5_P95 -> twoPercentiles(printed, 0.05);
            case P10_P90 -> twoPercentiles(printed, 0.10);
            case PERCENTILES -> percentiles(printed);
            case RANGE -> range(printed);
            case INPUT_RANGE -> inputRange(printed, defaultGsd);
            case NONE -> alone(printed, defaultGsd);
        };
    }

    /**
     * The distribution of a fraction, bounded by 0 and 1. A standard deviation or error is read as beta by the method of moments
     * (a printed median stands for the mean), a number alone as lognormal truncated at 1, everything else as by
     * {@link #read} and then capped.
     *
     * @param printed the number as published
     * @param defaultGsd geometric standard deviation (not its square) for a number without spread, 1 or more
     * @throws IllegalArgumentException naming what the spread lacks, what contradicts it, or what is outside 0 and 1
     */
    public static Distribution readFraction(PublishedSpread printed, double defaultGsd) {
        Require.atLeastOne("default geometric standard deviation", defaultGsd);
        printed.value().ifPresent(value -> requireFraction("value", value));
        return switch (printed.kind()) {
            case SD, SE -> fractionWithDeviation(printed);
            case NONE -> fractionAlone(printed, defaultGsd);
            // Symmetric confidence limits may be printed beyond the bounds; percentiles and ranges may not.
            case CI95 -> capped(read(printed, defaultGsd));
            case P5_P95, P10_P90, PERCENTILES, RANGE, INPUT_RANGE -> {
                printed.low().ifPresent(low -> requireFraction("low", low));
                printed.high().ifPresent(high -> requireFraction("high", high));
                printed.percentiles().values().forEach(point -> requireFraction("percentile value", point));
                yield capped(read(printed, defaultGsd));
            }
        };
    }

    private static Distribution deviation(PublishedSpread printed) {
        double sd = standardDeviation(printed);
        double value = printed.value().getAsDouble();
        if (sd == 0) {
            return new Constant(value);
        }
        if (value <= 0) {
            return new Normal(value, sd);
        }
        return printed.valueIsMedian() ? Lognormal.ofMedianAndSd(value, sd) : Lognormal.ofMeanAndSd(value, sd);
    }

    private static double standardDeviation(PublishedSpread printed) {
        if (printed.value().isEmpty()
                || (printed.low().isEmpty() && printed.high().isEmpty())) {
            throw lacking(printed, "value and high");
        }
        double value = printed.value().getAsDouble();
        double sd = printed.high().isPresent()
                ? printed.high().getAsDouble() - value
                : value - printed.low().getAsDouble();
        return Require.notNegative("spread " + printed.kind().id(), sd);
    }

    private static Distribution confidenceLimits(PublishedSpread printed) {
        requireLimits(printed);
        double low = printed.low().getAsDouble();
        double high = printed.high().getAsDouble();
        requireWithin(printed, low, high);
        if (low == high) {
            return new Constant(low);
        }
        if (low <= 0) {
            return new Normal(printed.value().orElse(low / 2 + high / 2), (high - low) / CI95_WIDTH);
        }
        double sigma = StrictMath.log(high / low) / CI95_WIDTH;
        return new Lognormal((StrictMath.log(low) + StrictMath.log(high)) / 2, sigma);
    }

    private static Distribution twoPercentiles(PublishedSpread printed, double lower) {
        requireLimits(printed);
        SortedMap<Double, Double> points = new TreeMap<>();
        points.put(lower, printed.low().getAsDouble());
        points.put(1 - lower, printed.high().getAsDouble());
        return throughPoints(points, printed);
    }

    private static Distribution percentiles(PublishedSpread printed) {
        if (printed.percentiles().size() < 2) {
            throw lacking(printed, "at least two percentiles");
        }
        return throughPoints(new TreeMap<>(printed.percentiles()), printed);
    }

    /** A mean printed beside percentiles is not used: the curve has a mean of its own. A median is one more percentile. */
    private static Distribution throughPoints(SortedMap<Double, Double> points, PublishedSpread printed) {
        if (printed.valueIsMedian() && printed.value().isPresent()) {
            points.putIfAbsent(0.5, printed.value().getAsDouble());
        }
        double[] probabilities =
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        double[] values =
                points.values().stream().mapToDouble(Double::doubleValue).toArray();
        requireNotFalling(printed, values);
        int last = values.length - 1;
        if (values[0] == values[last]) {
            return new Constant(values[0]);
        }
        if (values[0] <= 0) {
            return normalThroughEnds(points);
        }
        return values.length >= 3
                ? new PercentileCurve(probabilities, values)
                : Lognormal.ofQuantiles(probabilities[0], values[0], probabilities[last], values[last]);
    }

    /** Credits have no logarithm, so the outermost percentiles fix a normal, centred on the median where one is printed. */
    private static Normal normalThroughEnds(SortedMap<Double, Double> points) {
        double p1 = points.firstKey();
        double p2 = points.lastKey();
        double z1 = StandardNormal.score(p1);
        double z2 = StandardNormal.score(p2);
        double x1 = valueAt(points, p1);
        double sd = (valueAt(points, p2) - x1) / (z2 - z1);
        return new Normal(points.getOrDefault(0.5, x1 - sd * z1), sd);
    }

    private static double valueAt(Map<Double, Double> points, double probability) {
        return points.getOrDefault(probability, Double.NaN);
    }

    private static Distribution range(PublishedSpread printed) {
        requireLimits(printed);
        double low = printed.low().getAsDouble();
        double high = printed.high().getAsDouble();
        requireWithin(printed, low, high);
        if (low == high) {
            return new Constant(low);
        }
        if (printed.value().isPresent()) {
            return new Triangular(low, printed.value().getAsDouble(), high);
        }
        return low > 0 ? new LogUniform(low, high) : new Uniform(low, high);
    }

    /** The range says only what the inputs differ by, so that the variance of the logarithm is its own and that of a number alone. */
    private static Distribution inputRange(PublishedSpread printed, double defaultGsd) {
        requireLimits(printed);
        double low = printed.low().getAsDouble();
        double high = printed.high().getAsDouble();
        requireWithin(printed, low, high);
        Require.positive("low", low);
        double width = StrictMath.log(high / low);
        double log = StrictMath.log(defaultGsd);
        double middle = printed.value().orElse(Math.sqrt(low * high));
        return new Lognormal(StrictMath.log(middle), Math.sqrt(width * width / 12 + log * log));
    }

    private static Distribution alone(PublishedSpread printed, double defaultGsd) {
        double value = printed.value().orElseThrow(() -> lacking(printed, "value"));
        if (value == 0) {
            return new Constant(0);
        }
        if (value > 0) {
            return Lognormal.ofMedianAndGsd(value, defaultGsd);
        }
        double log = StrictMath.log(defaultGsd);
        return new Normal(value, -value * Math.sqrt(StrictMath.expm1(log * log)));
    }

    private static Distribution fractionWithDeviation(PublishedSpread printed) {
        double sd = standardDeviation(printed);
        double value = printed.value().getAsDouble();
        return sd == 0 ? new Constant(value) : BetaFraction.ofMeanAndSd(value, sd);
    }

    private static Distribution fractionAlone(PublishedSpread printed, double defaultGsd) {
        double value = printed.value().orElseThrow(() -> lacking(printed, "value"));
        // Exactly nothing and exactly all are statements of kind (the whole animal is eaten), not measurements.
        if (value == 0 || value == 1 || defaultGsd == 1) {
            return new Constant(value);
        }
        return new LognormalBelowOne(Lognormal.ofMedianAndGsd(value, defaultGsd));
    }

    private static Distribution capped(Distribution read) {
        return read.quantile(0) >= 0 && read.quantile(1) <= 1 ? read : new CappedFraction(read);
    }

    private static void requireFraction(String name, double value) {
        if (value < 0 || value > 1) {
            throw new IllegalArgumentException("a fraction must be within 0 and 1, but " + name + " is " + value);
        }
    }

    private static void requireLimits(PublishedSpread printed) {
        if (printed.low().isEmpty() || printed.high().isEmpty()) {
            throw lacking(printed, "low and high");
        }
    }

    private static void requireWithin(PublishedSpread printed, double low, double high) {
        OptionalDouble value = printed.value();
        if (value.isPresent() && (value.getAsDouble() < low || value.getAsDouble() > high)) {
            throw new IllegalArgumentException("spread " + printed.kind().id() + ": value " + value.getAsDouble()
                    + " lies outside " + low + " to " + high);
        }
    }

    private static void requireNotFalling(PublishedSpread printed, double[] values) {
        for (int i = 1; i < values.length; i++) {
            if (values[i] < values[i - 1]) {
                throw new IllegalArgumentException("spread " + printed.kind().id()
                        + ": percentile values must not fall, but " + values[i] + " follows " + values[i - 1]);
            }
        }
    }

    private static IllegalArgumentException lacking(PublishedSpread printed, String what) {
        return new IllegalArgumentException("spread " + printed.kind().id() + " needs " + what);
    }
}
