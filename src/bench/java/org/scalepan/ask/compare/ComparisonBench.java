package org.scalepan.ask.compare;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.scalepan.ask.AllProducts;
import org.scalepan.ask.Sampling;

/** The cost of a comparison: with a new seed, with a new comparison basis over cached draws, and repeated. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ComparisonBench {
    /** 0 for all, 21 today. */
    @Param({"4", "8", "0"})
    public int products;

    @Param({"1000", "10000", "100000"})
    public int draws;

    private long seed = 1;
    private double coverage = 0.5;

    /** Nothing is cached: scores are drawn, footprints computed, ratios summarised. */
    @Benchmark
    public Comparison fresh() {
        return Comparison.of(AllProducts.LIBRARY, AllProducts.question(products, draws, ++seed));
    }

    /** The same seed and another coverage: scores are cached, footprints and ratios are computed. */
    @Benchmark
    public Comparison cachedDraws() {
        coverage = coverage >= 0.98 ? 0.5 : coverage + 1e-7;
        Comparison.ComparisonQuestion one = AllProducts.question(products, draws, 1);
        return Comparison.of(
                AllProducts.LIBRARY,
                new Comparison.ComparisonQuestion(one.products(), one.against(), one.basis(), new Sampling(coverage, draws, 1)));
    }

    /** The same products and comparison basis: footprints are cached, ratios are computed. */
    @Benchmark
    public Comparison cachedFootprints() {
        return Comparison.of(AllProducts.LIBRARY, AllProducts.question(products, draws, 1));
    }
}
