package org.scalepan.ask.nutrition;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.scalepan.factors.Cited;
import org.scalepan.factors.Grade;
import org.scalepan.words.Message;

/** What is published of a food, or why nothing is; nothing is ever borrowed from another food. */
public sealed interface Content {

    /** A content after conversion, or the reason why there is none. */
    Content then(Function<HeldContent, Content> next);

    /**
     * A content.
     *
     * @param value the library's default row
     * @param range lowest and highest published, where there is more than the one value
     * @param rows ids of the rows that value and range rest on, those of a denominator included
     * @param sources ids of their sources
     * @param studies sources of the content itself, without those of a denominator
     * @param lowest the lowest check grade of the rows that the value rests on
     */
    record HeldContent(
            double value,
            ContentRange range,
            List<String> rows,
            Set<String> sources,
            int studies,
            Grade lowest,
            Set<Caveat> caveats)
            implements Content {
        public HeldContent {
            if (!Double.isFinite(value) || value < 0) {
                throw new IllegalArgumentException("a content must be finite and not negative, not " + value);
            }
            rows = rows.stream().distinct().toList();
            sources = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(sources));
            caveats = Set.copyOf(caveats);
        }

        /** A constant from one row of the library, such as the energy of a gram of fat. */
        static HeldContent of(double value, String row, Cited cited) {
            return new HeldContent(
                    value, ContentRange.NONE, List.of(row), Set.of(cited.source()), 1, cited.check(), Set.of());
        }

        @Override
        public Content then(Function<HeldContent, Content> next) {
            return next.apply(this);
        }

        /** Multiplied by an exact factor, such as a change of unit. */
        HeldContent times(double factor) {
            return new HeldContent(value * factor, range.times(factor), rows, sources, studies, lowest, caveats);
        }

        /** Multiplied by another figure, which is held at its own value: the range stays that of this content. */
        HeldContent times(HeldContent other) {
            return with(other, value * other.value, range.times(other.value));
        }

        /** Divided by another figure, which is held at its own value. */
        HeldContent per(HeldContent other) {
            return with(other, value / other.value, range.times(1 / other.value));
        }

        /** Added to another figure. Sums are reported without a range: extremes of two contents seldom coincide. */
        HeldContent plus(HeldContent other) {
            return with(other, value + other.value, ContentRange.NONE);
        }

        private HeldContent with(HeldContent other, double newValue, ContentRange newRange) {
            List<String> allRows = java.util.stream.Stream.concat(rows.stream(), other.rows.stream())
                    .toList();
            Set<String> allSources = new LinkedHashSet<>(sources);
            allSources.addAll(other.sources);
            Set<Caveat> all = EnumSet.noneOf(Caveat.class);
            all.addAll(caveats);
            all.addAll(other.caveats);
            Grade worse = lowest.isAtLeast(other.lowest) ? other.lowest : lowest;
            return new HeldContent(newValue, newRange, allRows, allSources, studies, worse, all);
        }

        HeldContent noting(Caveat caveat) {
            Set<Caveat> all = EnumSet.of(caveat);
            all.addAll(caveats);
            return new HeldContent(value, range, rows, sources, studies, lowest, all);
        }

        HeldContent withoutRange() {
            return new HeldContent(value, ContentRange.NONE, rows, sources, studies, lowest, caveats);
        }
    }

    /** Lowest and highest published; both or neither. */
    record ContentRange(OptionalDouble low, OptionalDouble high) {
        static final ContentRange NONE = new ContentRange(OptionalDouble.empty(), OptionalDouble.empty());

        static ContentRange of(double low, double high) {
            return low < high ? new ContentRange(OptionalDouble.of(low), OptionalDouble.of(high)) : NONE;
        }

        ContentRange times(double factor) {
            return low.isPresent() && high.isPresent()
                    ? of(low.getAsDouble() * factor, high.getAsDouble() * factor)
                    : NONE;
        }
    }

    /**
     * Nothing.
     *
     * @param why why, as the end of a sentence
     */
    record MissingContent(Message why) implements Content {
        /** Why, in English. */
        public String reason() {
            return why.english();
        }

        @Override
        public Content then(Function<HeldContent, Content> next) {
            return this;
        }
    }
}
