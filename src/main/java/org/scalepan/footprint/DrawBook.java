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
    private final long seed;
    private final int draws;
    private final Map<String, double[]> scores = new ConcurrentHashMap<>();
    private final Map<String, double[]> values = new ConcurrentHashMap<>();

    /**
     * @param seed the question's seed
     * @param draws how many draws the question asks for
     */
    public DrawBook(long seed, int draws) {
        this.seed = seed;
        this.draws = draws;
    }

    public int size() {
        return draws;
    }

    /** The standard normal scores of a factor. Shared: callers must not write to them. */
    public double[] scores(String factor) {
        return scores.computeIfAbsent(factor, id -> Draws.scores(id, seed, draws));
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
        return Draws.uniforms(choice, seed, draws);
    }
}
