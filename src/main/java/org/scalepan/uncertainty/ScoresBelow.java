package org.scalepan.uncertainty;

/**
 * Maps a standard normal score to that of the normal truncated from above: z goes to the score whose probability is that of z times the
 * probability below the cut. A normal probability and its inverse for every draw cost far more than the draw, and the map is smooth: so it
 * is evaluated at knots, with first and second derivative, and interpolated by quintic Hermite polynomials. It is within 10⁻⁸ of the exact
 * score, mostly within 10⁻¹²; a test holds it to that.
 *
 * <p>Source: Hermite interpolation, Stoer and Bulirsch (2002), Introduction to Numerical Analysis, 2.1.5; the derivatives are elementary:
 * with φ the density, y′ = P·φ(z)/φ(y) and y″ = y′·(y·y′ − z).
 */
final class ScoresBelow {
    /** Scores farther out are so rare that each may cost what it costs. */
    private static final int FARTHEST = 8;

    private static final int PIECES_OF_A_SCORE = 16;
    private static final int PIECES = 2 * FARTHEST * PIECES_OF_A_SCORE;
    private static final int COEFFICIENTS = 6;
    /** With less probability below the cut (29 standard deviations out), the slope at a knot is a product beyond the range of doubles. */
    private static final double LEAST_BELOW = 1e-190;

    /** For fewer draws it is cheaper to compute the piece of each draw than all pieces. */
    private static final int FEW = 100;

    private final double below;
    private final double above;

    /** @param cut the score where the normal is cut off */
    ScoresBelow(double cut) {
        this.below = StandardNormal.probabilityBelow(cut);
        this.above = StandardNormal.probabilityBelow(-cut);
    }

    /** Maps each score; out[i] depends on scores[i] alone. The two arrays may be the same. */
    void fill(double[] scores, double[] out) {
        if (isNowhere()) {
            System.arraycopy(scores, 0, out, 0, out.length);
            return;
        }
        double[] piece = new double[COEFFICIENTS];
        if (out.length < FEW || below < LEAST_BELOW) {
            for (int i = 0; i < out.length; i++) {
                out[i] = at(scores[i], piece);
            }
            return;
        }
        double[] pieces = new double[PIECES * COEFFICIENTS];
        Knot left = knot(0);
        for (int i = 0; i < PIECES; i++) {
            Knot right = knot(i + 1);
            left.through(right, pieces, i * COEFFICIENTS);
            left = right;
        }
        for (int i = 0; i < out.length; i++) {
            double place = place(scores[i]);
            int number = (int) place;
            out[i] = isBetweenKnots(place) ? along(pieces, number * COEFFICIENTS, place - number) : exact(scores[i]);
        }
    }

    /** The score below which a share of what lies below the cut lies. */
    double atProbability(double probability) {
        return of(probability, 1 - probability);
    }

    /** One score mapped: the same bits as among many. */
    double at(double score) {
        return at(score, new double[COEFFICIENTS]);
    }

    private double at(double score, double[] piece) {
        if (isNowhere()) {
            return score;
        }
        double place = place(score);
        if (!isBetweenKnots(place)) {
            return exact(score);
        }
        int number = (int) place;
        knot(number).through(knot(number + 1), piece, 0);
        return along(piece, 0, place - number);
    }

    /** So far out that nothing is cut off. */
    private boolean isNowhere() {
        return below == 1;
    }

    private static double place(double score) {
        return (score + FARTHEST) * PIECES_OF_A_SCORE;
    }

    private boolean isBetweenKnots(double place) {
        return place >= 0 && place < PIECES && below >= LEAST_BELOW;
    }

    private static double along(double[] c, int from, double t) {
        return c[from]
                + t * (c[from + 1] + t * (c[from + 2] + t * (c[from + 3] + t * (c[from + 4] + t * c[from + 5]))));
    }

    /** From whichever tail is nearer, so that the probability does not cancel. */
    private double exact(double score) {
        return of(StandardNormal.probabilityBelow(score), StandardNormal.probabilityBelow(-score));
    }

    private double of(double probability, double beyond) {
        double lower = below * probability;
        return lower <= 0.5 ? StandardNormal.score(lower) : -StandardNormal.score(above + below * beyond);
    }

    /** The curve at a knot: value, and first and second derivative over the length of a piece. */
    private record Knot(double value, double slope, double bend) {
        void through(Knot right, double[] to, int from) {
            double rise = right.value - value;
            to[from] = value;
            to[from + 1] = slope;
            to[from + 2] = bend / 2;
            to[from + 3] = 10 * rise - 6 * slope - 4 * right.slope - 1.5 * bend + 0.5 * right.bend;
            to[from + 4] = -15 * rise + 8 * slope + 7 * right.slope + 1.5 * bend - right.bend;
            to[from + 5] = 6 * rise - 3 * (slope + right.slope) - 0.5 * (bend - right.bend);
        }
    }

    private Knot knot(int number) {
        double score = (double) number / PIECES_OF_A_SCORE - FARTHEST;
        double value = exact(score);
        double slope = below * StrictMath.exp((value - score) * (value + score) / 2);
        double bend = slope * (value * slope - score);
        double length = 1.0 / PIECES_OF_A_SCORE;
        return new Knot(value, slope * length, bend * length * length);
    }
}
