package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * A quantile function through published percentiles. Between two of them the logarithm of the value is a straight line in the
 * standard normal score, so each piece is a stretch of a lognormal; beyond the first and the last the line of the end piece
 * goes on. The published percentiles come back exactly, and nothing is added between them that was not published.
 *
 * <p>Own method; piecewise lognormal because a straight line is the least that can be assumed between two points, never
 * overshoots, and has a mean in closed form.
 *
 * @param probabilities at least two, between 0 and 1, rising
 * @param values one for each probability, above zero, never falling; equal neighbours are allowed (a flat piece), and where an
 *     end piece is flat the tail takes the slope of the nearest piece that is not
 */
@SuppressWarnings("ArrayRecordComponent") // Copied on the way in and out, and compared by content.
public record PercentileCurve(double[] probabilities, double[] values) implements Distribution {
    public PercentileCurve {
        Require.sameLength("probabilities", probabilities, "values", values);
        if (values.length < 2) {
            throw new IllegalArgumentException("a percentile curve needs at least two points, not " + values.length);
        }
        probabilities = probabilities.clone();
        values = values.clone();
        for (int i = 0; i < values.length; i++) {
            Require.innerProbability(probabilities[i]);
            Require.positive("percentile value", values[i]);
            if (i > 0 && probabilities[i] <= probabilities[i - 1]) {
                throw new IllegalArgumentException(
                        "probabilities must rise, but " + probabilities[i] + " follows " + probabilities[i - 1]);
            }
            if (i > 0 && values[i] < values[i - 1]) {
                throw new IllegalArgumentException(
                        "percentile values must not fall, but " + values[i] + " follows " + values[i - 1]);
            }
        }
    }

    @Override
    public double[] probabilities() {
        return probabilities.clone();
    }

    @Override
    public double[] values() {
        return values.clone();
    }

    @Override
    public double atScore(double score) {
        return new Pieces(probabilities, values).atScore(score);
    }

    @Override
    public double mean() {
        return new Pieces(probabilities, values).mean();
    }

    @Override
    public void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        new Pieces(probabilities, values).fill(scores, out);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PercentileCurve curve
                && Arrays.equals(probabilities, curve.probabilities)
                && Arrays.equals(values, curve.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(probabilities) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return "PercentileCurve[probabilities=" + Arrays.toString(probabilities) + ", values=" + Arrays.toString(values)
                + "]";
    }

    /** The pieces on the scale of scores. Piece i ends at knot i; the last piece has no end. */
    private static final class Pieces {
        private final double[] knots;
        private final double[] values;
        private final double[] slopes;

        Pieces(double[] probabilities, double[] values) {
            int n = values.length;
            this.values = values;
            knots = new double[n];
            slopes = new double[n + 1];
            for (int i = 0; i < n; i++) {
                knots[i] = StandardNormal.score(probabilities[i]);
                if (i > 0) {
                    slopes[i] = StrictMath.log(values[i] / values[i - 1]) / (knots[i] - knots[i - 1]);
                }
            }
            slopes[0] = firstNotFlat(1, 1);
            slopes[n] = firstNotFlat(n - 1, -1);
        }

        private double firstNotFlat(int from, int direction) {
            for (int i = from; i > 0 && i < values.length; i += direction) {
                if (slopes[i] > 0) {
                    return slopes[i];
                }
            }
            return 0;
        }

        double atScore(double score) {
            int n = knots.length;
            int piece = 0;
            while (piece < n && knots[piece] <= score) {
                piece++;
            }
            double value = onPiece(piece, score);
            // Rounding must not lift the end of a piece above the percentile that begins the next.
            return piece > 0 && piece < n ? Math.min(value, values[piece]) : value;
        }

        /** The same values as {@link #atScore}, their exponentials taken together. */
        void fill(double[] scores, double[] out) {
            int[] pieces = new int[out.length];
            for (int i = 0; i < out.length; i++) {
                int piece = 0;
                for (double knot : knots) {
                    piece += knot <= scores[i] ? 1 : 0;
                }
                pieces[i] = piece;
                // Flat to the end, also at a score without end.
                out[i] = slopes[piece] == 0 ? 0 : slopes[piece] * (scores[i] - knots[Math.max(0, piece - 1)]);
            }
            Exponentials.replace(out);
            double[] most = Arrays.copyOf(values, values.length + 1);
            most[0] = Double.POSITIVE_INFINITY;
            most[values.length] = Double.POSITIVE_INFINITY;
            for (int i = 0; i < out.length; i++) {
                out[i] = Math.min(most[pieces[i]], values[Math.max(0, pieces[i] - 1)] * out[i]);
            }
        }

        private double onPiece(int piece, double score) {
            int anchor = Math.max(0, piece - 1);
            // Anchored on a published value, so that the score of a percentile gives exactly that percentile.
            return slopes[piece] == 0
                    ? values[anchor]
                    : values[anchor] * StrictMath.exp(slopes[piece] * (score - knots[anchor]));
        }

        /** The sum over the pieces of the integral of a·exp(s(z − z0)) against the normal density. */
        double mean() {
            int n = knots.length;
            double sum = 0;
            for (int piece = 0; piece <= n; piece++) {
                double from = piece == 0 ? Double.NEGATIVE_INFINITY : knots[piece - 1];
                double to = piece == n ? Double.POSITIVE_INFINITY : knots[piece];
                double s = slopes[piece];
                int anchor = Math.max(0, piece - 1);
                sum += values[anchor] * StrictMath.exp(s * s / 2 - s * knots[anchor]) * between(from - s, to - s);
            }
            return sum;
        }

        private static double between(double from, double to) {
            // In the upper tail the difference is taken between the small probabilities beyond.
            return from > 0
                    ? StandardNormal.probabilityBelow(-from) - StandardNormal.probabilityBelow(-to)
                    : StandardNormal.probabilityBelow(to) - StandardNormal.probabilityBelow(from);
        }
    }
}
