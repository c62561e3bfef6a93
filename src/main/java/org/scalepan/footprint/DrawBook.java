package org.scalepan.footprint;

import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Draws;

/**
 * The random draws of one question. A factor is drawn once, under its own id, and every place that uses it sees the same
 * draws: so a factor that stands on both sides of a comparison cancels out.
 *
 * <p>Because all chance of an answer comes out of its book, a book with one stream exchanged shows what that stream does to the
 * answer.
 */
public final class DrawBook {
    private final Source source;
    private final int draws;
    private final Optional<Exchange> exchange;
    private final Map<Stream, double[]> streams = new ConcurrentHashMap<>();
    private final Map<String, double[]> values = new ConcurrentHashMap<>();

    /**
     * One source of chance behind an answer.
     *
     * @param id what is drawn: mostly a row of the library
     * @param choice true for a choice among several, drawn evenly between 0 and 1; false for a standard normal score
     */
    public record Stream(String id, boolean choice) implements Comparable<Stream> {
        @Override
        public int compareTo(Stream other) {
            int byId = id.compareTo(other.id);
            return byId != 0 ? byId : Boolean.compare(choice, other.choice);
        }
    }

    /** Where the numbers of a book come from. */
    public interface Source {
        /** So many numbers of a stream: scores, or for a choice numbers from 0 to below 1. */
        double[] draw(Stream stream, int count);

        /** Random numbers by seed. */
        static Source seeded(long seed) {
            return (stream, count) -> stream.choice()
                    ? Draws.uniforms(stream.id(), seed, count)
                    : KeptScores.of(stream.id(), seed, count);
        }

        /** The same seed once more: numbers that have nothing to do with those of {@link #seeded}. */
        static Source seededAnew(long seed) {
            return (stream, count) -> {
                String id = "anew/" + stream.id();
                return stream.choice() ? Draws.uniforms(id, seed, count) : Draws.scores(id, seed, count);
            };
        }
    }

    /** A stream that is read from another book. */
    private record Exchange(Stream stream, DrawBook from, DrawBook others) {}

    /**
     * @param seed the question's seed
     * @param draws how many draws the question asks for
     */
    public DrawBook(long seed, int draws) {
        this(Source.seeded(seed), draws);
    }

    public DrawBook(Source source, int draws) {
        this(source, draws, Optional.empty());
    }

    private DrawBook(Source source, int draws, Optional<Exchange> exchange) {
        this.source = source;
        this.draws = draws;
        this.exchange = exchange;
    }

    /** This book with one stream out of another of the same length; everything else stays and is not drawn again. */
    public DrawBook exchanging(Stream stream, DrawBook from) {
        if (from.draws != draws) {
            throw new IllegalArgumentException("books of different length: " + draws + " and " + from.draws);
        }
        return new DrawBook(source, draws, Optional.of(new Exchange(stream, from, this)));
    }

    /**
     * The same book at some places only, for what is not wanted at all of them. Draw i of it is draw {@code places[i]} of this one.
     *
     * @param places valid indices of draws
     */
    public DrawBook only(int[] places) {
        return new DrawBook((stream, count) -> at(places, read(stream)), places.length);
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
    public SortedSet<Stream> streams() {
        return new TreeSet<>(streams.keySet());
    }

    /** The standard normal scores of a factor. Shared: callers must not write to them. */
    public double[] scores(String factor) {
        return read(new Stream(factor, false));
    }

    /**
     * The draws of a factor's value. Drawn once for each id; the id must always come with the same distribution. Shared: callers
     * must not write to them.
     */
    public double[] values(String factor, Distribution reading) {
        if (exchange.isPresent() && !exchange.get().stream().equals(new Stream(factor, false))) {
            return exchange.get().others().values(factor, reading);
        }
        return values.computeIfAbsent(factor, id -> {
            double[] drawn = new double[draws];
            reading.fill(scores(id), drawn);
            return drawn;
        });
    }

    /** Uniform draws for a choice, such as which study a draw of a mixture comes from. Shared: callers must not write to them. */
    public double[] uniforms(String choice) {
        return read(new Stream(choice, true));
    }

    private double[] read(Stream stream) {
        if (exchange.isPresent()) {
            Exchange other = exchange.get();
            return (other.stream().equals(stream) ? other.from() : other.others()).read(stream);
        }
        return streams.computeIfAbsent(stream, one -> source.draw(one, draws));
    }
}
