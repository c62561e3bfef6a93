package org.scalepan.uncertainty;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.apache.commons.rng.core.source64.XoRoShiRo128PlusPlus;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * The random numbers of one factor. The stream is keyed by the factor and the seed, so a factor used on both sides of a
 * comparison is drawn once and cancels, and the same question gives the same draws on every machine.
 *
 * <p>Sources: common random numbers, Law (2015), Simulation Modeling and Analysis, ch. 11; generator xoroshiro128++, Blackman and
 * Vigna (2021), ACM TOMS 47, 36; ziggurat of McFarland (2016), J. Stat. Comput. Simul. 86, 1281–1294; key by SHA-256,
 * FIPS 180-4.
 */
public final class Draws {
    /** The most draws of one stream; a limit on memory, not on method. */
    public static final int MOST = 1_000_000;

    private static final double LARGEST_BELOW_ONE = 1 - 0x1p-53;
    private static final double SMALLEST = 0x1p-60;

    private Draws() {}

    /**
     * Standard normal scores. Score i does not depend on how many are drawn.
     *
     * @param factorId names the stream, not blank
     * @param seed any number
     * @param n 1 to {@link #MOST}
     * @throws IllegalArgumentException when the id is blank or n out of range
     */
    public static double[] scores(String factorId, long seed, int n) {
        requireCount(n);
        ByteBuffer key = key(factorId, seed);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(generator(key, 0));
        double[] scores = new double[n];
        for (int i = 0; i < n; i++) {
            scores[i] = normal.sample();
        }
        return scores;
    }

    /**
     * Uniform draws, zero included and one excluded, for choosing among studies. Independent of the scores with the same id
     * and seed; draw i does not depend on how many are drawn.
     *
     * @param id names the stream, not blank
     * @param seed any number
     * @param n 1 to {@link #MOST}
     * @throws IllegalArgumentException when the id is blank or n out of range
     */
    public static double[] uniforms(String id, long seed, int n) {
        requireCount(n);
        XoRoShiRo128PlusPlus generator = generator(key(id, seed), 2);
        double[] uniforms = new double[n];
        for (int i = 0; i < n; i++) {
            uniforms[i] = generator.nextDouble();
        }
        return uniforms;
    }

    /**
     * Stratified uniform draws: one in each of n equal parts of 0 to 1, at random within its part, the parts in random order. Independent of
     * the streams of other ids. The share of draws below any value is then right to 1/n in every single stream, so that means and quantiles
     * of what mostly depends on one stream, or adds up several, settle much sooner than with independent draws.
     *
     * <p>Source: McKay, Beckman and Conover (1979), Technometrics 21, 239–245 (Latin hypercube sampling).
     *
     * @param id names the stream, not blank
     * @param seed any number
     * @param n 1 to {@link #MOST}
     * @throws IllegalArgumentException when the id is blank or n out of range
     */
    public static double[] stratified(String id, long seed, int n) {
        requireCount(n);
        XoRoShiRo128PlusPlus generator = generator(key(id, seed), 2);
        double[] uniforms = new double[n];
        for (int i = 0; i < n; i++) {
            // The shuffle of Fisher and Yates, from the inside out.
            int place = generator.nextInt(i + 1);
            uniforms[i] = uniforms[place];
            uniforms[place] = i;
        }
        for (int i = 0; i < n; i++) {
            uniforms[i] = Math.min((uniforms[i] + generator.nextDouble()) / n, LARGEST_BELOW_ONE);
        }
        return uniforms;
    }

    /** Standard normal scores of {@link #stratified} draws, which are independent of them: their own stream of the same id. */
    public static double[] stratifiedScores(String factorId, long seed, int n) {
        double[] scores = stratified("score/" + factorId, seed, n);
        for (int i = 0; i < n; i++) {
            scores[i] = Math.max(scores[i], SMALLEST);
        }
        StandardNormal.scores(scores);
        return scores;
    }

    /** The digest is four longs: the first two start the scores of an id, the last two its uniforms. */
    private static XoRoShiRo128PlusPlus generator(ByteBuffer key, int firstLong) {
        return new XoRoShiRo128PlusPlus(key.getLong(Long.BYTES * firstLong), key.getLong(Long.BYTES * (firstLong + 1)));
    }

    private static ByteBuffer key(String id, long seed) {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a stream of draws needs an id that is not blank");
        }
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return ByteBuffer.wrap(digest.digest((seed + "|" + id).getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform must offer SHA-256", e);
        }
    }

    private static void requireCount(int n) {
        if (n < 1 || n > MOST) {
            throw new IllegalArgumentException("draws must be 1 to " + MOST + ", not " + n);
        }
    }
}
