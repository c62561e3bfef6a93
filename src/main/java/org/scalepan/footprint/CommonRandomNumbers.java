package org.scalepan.footprint;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Draws;

/**
 * The random draws of one question. A factor is drawn once, under its own id, and every place that uses it sees the same
 * draws: so a factor on both sides of a comparison cancels out.
 *
 * <p>All random numbers of an answer come from here, so exchanging one stream shows the effect of that stream on the answer.
 */
public final class CommonRandomNumbers {
    /** Of what is derived, so many numbers are kept: 16 MB. */
    private static final long MOST_DERIVED = 2_000_000;

    private final ScoreSource source;
    private final int draws;
    private final Optional<Exchange> exchange;
    private final Map<Substream, double[]> streams = new ConcurrentHashMap<>();
    private final Set<Substream> used = ConcurrentHashMap.newKeySet();
    private final Map<DrawnFactor, double[]> values = new ConcurrentHashMap<>();
    private final Map<Object, double[]> derived = new ConcurrentHashMap<>();

    /**
     * One stream of random numbers behind an answer.
     *
     * @param id what is drawn: mostly a row of the library
     * @param choice true for a choice among several, drawn evenly between 0 and 1; false for a standard normal score
     */
    public record Substream(String id, boolean choice) implements Comparable<Substream> {
        @Override
        public int compareTo(Substream other) {
            int byId = id.compareTo(other.id);
            return byId != 0 ? byId : Boolean.compare(choice, other.choice);
        }
    }

    /** The source of the random numbers. */
    public interface ScoreSource {
        /** So many numbers of a stream: scores, or for a choice numbers from 0 to below 1. */
        double[] draw(Substream stream, int count);

        /** So many values of a factor: its reading at its scores. */
        default double[] values(String factor, Distribution reading, int count) {
            double[] drawn = new double[count];
            reading.fill(draw(new Substream(factor, false), count), drawn);
            return drawn;
        }

        /** Random numbers by seed. */
        static ScoreSource seeded(long seed) {
            return new Seeded(seed);
        }

        /** A second sample of the same seed: numbers independent of those of {@link #seeded}. */
        static ScoreSource secondSeeded(long seed) {
            return (stream, count) -> {
                String id = "anew/" + stream.id();
                return stream.choice() ? Draws.stratified(id, seed, count) : Draws.stratifiedScores(id, seed, count);
            };
        }
    }

    /** Draws by seed, cached. */
    private record Seeded(long seed) implements ScoreSource {
        @Override
        public double[] draw(Substream stream, int count) {
            return DrawCache.of(stream, seed, count);
        }

        @Override
        public double[] values(String factor, Distribution reading, int count) {
            return DrawCache.values(factor, reading, seed, count);
        }
    }

    /** A selection of the draws of another instance. */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    private record SelectedDraws(CommonRandomNumbers whole, int[] places) implements ScoreSource {
        @Override
        public double[] draw(Substream stream, int count) {
            return at(places, whole.read(stream));
        }

        @Override
        public double[] values(String factor, Distribution reading, int count) {
            return at(places, whole.values(factor, reading));
        }
    }

    private record DrawnFactor(String id, Distribution reading) {}

    /** Streams that are read from another instance. */
    private record Exchange(Set<Substream> streams, CommonRandomNumbers from, CommonRandomNumbers others) {}

    /**
     * @param seed the question's seed
     * @param draws how many draws the question asks for
     */
    public CommonRandomNumbers(long seed, int draws) {
        this(ScoreSource.seeded(seed), draws);
    }

    public CommonRandomNumbers(ScoreSource source, int draws) {
        this(source, draws, Optional.empty());
    }

    private CommonRandomNumbers(ScoreSource source, int draws, Optional<Exchange> exchange) {
        this.source = source;
        this.draws = draws;
        this.exchange = exchange;
    }

    /**
     * These random numbers with some streams taken from another instance of the same length; everything else stays and is not drawn again.
     */
    public CommonRandomNumbers exchanging(Set<Substream> exchanged, CommonRandomNumbers from) {
        if (from.draws != draws) {
            throw new IllegalArgumentException("numbers of draws differ: " + draws + " and " + from.draws);
        }
        return new CommonRandomNumbers(source, draws, Optional.of(new Exchange(Set.copyOf(exchanged), from, this)));
    }

    /**
     * The same random numbers at some indices only, for what is not needed at all of them. Draw i of the result is draw {@code places[i]}
     * of this one.
     *
     * @param places valid indices of draws, rising
     */
    public CommonRandomNumbers only(int[] places) {
        return places.length == draws ? this : new CommonRandomNumbers(new SelectedDraws(this, places), places.length);
    }

    /** The same random numbers, of which nothing is kept yet: for what may be drawn much later, or never. */
    public CommonRandomNumbers uncached() {
        return new CommonRandomNumbers(source, draws, exchange);
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

    /** The streams that were read so far, by id. */
    public SortedSet<Substream> streams() {
        return new TreeSet<>(used);
    }

    /** The standard normal scores of a factor. Shared: callers must not write to them. */
    public double[] scores(String factor) {
        return read(new Substream(factor, false));
    }

    /** The draws of a factor's value. Drawn once for each reading. Shared: callers must not write to them. */
    public double[] values(String factor, Distribution reading) {
        Substream stream = new Substream(factor, false);
        boolean exchanged = exchange.isPresent() && exchange.get().streams().contains(stream);
        if (exchange.isPresent() && !exchanged) {
            return exchange.get().others().values(factor, reading);
        }
        return values.computeIfAbsent(new DrawnFactor(factor, reading), key -> {
            if (!exchanged) {
                used.add(stream);
                return source.values(factor, reading, draws);
            }
            double[] drawn = new double[draws];
            reading.fill(read(stream), drawn);
            return drawn;
        });
    }

    /** As {@link #values}, uncached, for what is seldom used twice, such as a finding; the caller may write to the array. */
    public double[] ownValues(String factor, Distribution reading) {
        if (!(source instanceof SelectedDraws)) {
            return values(factor, reading).clone();
        }
        double[] drawn = new double[draws];
        reading.fill(scores(factor), drawn);
        return drawn;
    }

    /**
     * What is worked out from these numbers and nothing else, kept for whoever asks again. Shared: callers must not write to it.
     *
     * @param what equal where the same is worked out
     * @param work so many numbers as there are draws
     */
    public <K> double[] derived(K what, Function<K, double[]> work) {
        double[] known = derived.get(what);
        if (known != null) {
            return known;
        }
        double[] worked = work.apply(what);
        if ((long) draws * (derived.size() + 1) <= MOST_DERIVED) {
            derived.put(what, worked);
        }
        return worked;
    }

    /** Uniform draws for a choice, such as which study a draw of a mixture comes from. Shared: callers must not write to them. */
    public double[] uniforms(String choice) {
        return read(new Substream(choice, true));
    }

    private double[] read(Substream stream) {
        if (exchange.isPresent()) {
            Exchange other = exchange.get();
            return (other.streams().contains(stream) ? other.from() : other.others()).read(stream);
        }
        return streams.computeIfAbsent(stream, one -> {
            used.add(one);
            return source.draw(one, draws);
        });
    }
}
