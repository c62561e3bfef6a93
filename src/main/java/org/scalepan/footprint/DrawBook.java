package org.scalepan.footprint;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Draws;

/**
 * The random draws of one question. A factor is drawn once, under its own id, and every place that uses it sees the same
 * draws: so a factor that stands on both sides of a comparison cancels out.
 */
public final class DrawBook {
    /** Where the standard normal scores of a factor come from. */
    private interface Scores {
        double[] of(String factor);
    }

    private final int draws;
    private final Scores source;
    private final Scores uniforms;
    private final Map<String, double[]> scores = new ConcurrentHashMap<>();
    private final Map<String, double[]> values = new ConcurrentHashMap<>();

    /**
     * @param seed the question's seed
     * @param draws how many draws the question asks for
     */
    public DrawBook(long seed, int draws) {
        this(draws, factor -> KeptScores.of(factor, seed, draws), choice -> Draws.uniforms(choice, seed, draws));
    }

    private DrawBook(int draws, Scores source, Scores uniforms) {
        this.draws = draws;
        this.source = source;
        this.uniforms = uniforms;
    }

    /**
     * The same book at some places only, for what is not wanted at all of them. Draw i of it is draw {@code places[i]} of this one.
     *
     * @param places valid indices of draws
     */
    public DrawBook only(int[] places) {
        return new DrawBook(
                places.length, factor -> at(places, scores(factor)), choice -> at(places, uniforms(choice)));
    }

    private static double[] at(int[] places, double[] all) {
        double[] some = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            some[i] = all[places[i]];
        }
        return some;
    }

    public int size() {
        return draws;
    }

    /** The standard normal scores of a factor. Shared: callers must not write to them. */
    public double[] scores(String factor) {
        return scores.computeIfAbsent(factor, source::of);
    }

    /**
     * The draws of a factor's value. Drawn once for each id; the id must always come with the same distribution. Shared: callers
     * must not write to them.
     */
    public double[] values(String factor, Distribution reading) {
        return values.computeIfAbsent(factor, id -> {
            double[] drawn = new double[draws];
            reading.fill(scores(id), drawn);
            return drawn;
        });
    }

    /** Uniform draws for a choice, such as which study a draw of a mixture comes from. */
    public double[] uniforms(String choice) {
        return uniforms.of(choice);
    }
}
