package org.scalepan.ask;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntConsumer;
import org.scalepan.ask.compare.Comparison;

/**
 * Processor time of the question of all products, as scripts/kernel.py takes it: medians in microseconds, one line for each way.
 * Processor time of the calling thread rather than wall time, so that a busy machine does not distort the ratio.
 */
public final class KernelTimes {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private KernelTimes() {}

    /** @param args how many rounds to time; the number of draws; the number of products, 0 for all */
    public static void main(String[] args) {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        int draws = args.length > 1 ? Integer.parseInt(args[1]) : 10_000;
        int products = args.length > 2 ? Integer.parseInt(args[2]) : 0;
        AtomicLong seed = new AtomicLong(1);
        time("fresh", rounds, unused -> ask(products, draws, seed.incrementAndGet(), 0.9));
        time("kept_draws", rounds, round -> ask(products, draws, 1, 0.9 + 1e-9 * seed.incrementAndGet()));
        time("kept_footprints", rounds, unused -> ask(products, draws, 1, 0.9));
    }

    private static void ask(int products, int draws, long seed, double coverage) {
        Comparison.ComparisonQuestion one = AllProducts.question(products, draws, seed);
        Comparison.of(
                AllProducts.LIBRARY,
                new Comparison.ComparisonQuestion(one.products(), one.against(), one.basis(), new Sampling(coverage, draws, seed)));
    }

    private static void time(String name, int rounds, IntConsumer question) {
        for (int round = 0; round < rounds; round++) {
            question.accept(round);
        }
        long[] times = new long[rounds];
        for (int round = 0; round < rounds; round++) {
            long start = THREADS.getCurrentThreadCpuTime();
            question.accept(round);
            times[round] = THREADS.getCurrentThreadCpuTime() - start;
        }
        Arrays.sort(times);
        System.out.printf("%s %.0f%n", name, times[rounds / 2] / 1000.0);
    }
}
