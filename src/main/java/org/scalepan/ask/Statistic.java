package org.scalepan.ask;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scalepan.uncertainty.Summary;

/** One number out of an estimate of a product: of its distribution, or of the evidence behind it. */
public enum Statistic {
    MEDIAN,
    MEAN,
    LOW,
    HIGH,
    STUDIES,
    RESULTS;

    /** The name under which it is asked for: {@code median}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Statistic> of(String id) {
        return Stream.of(values()).filter(one -> one.id().equals(id)).findFirst();
    }

    /** True for a whole number without a unit. */
    public boolean isCount() {
        return this == STUDIES || this == RESULTS;
    }

    /** In the unit of the estimate, or a count; a count is known of every estimate, the others only where there is evidence. */
    public OptionalDouble of(Estimate estimate) {
        return switch (this) {
            case STUDIES -> OptionalDouble.of(estimate.studies());
            case RESULTS -> OptionalDouble.of(estimate.results());
            case MEDIAN ->
                estimate.summary().stream().mapToDouble(Summary::median).findFirst();
            case MEAN -> estimate.summary().stream().mapToDouble(Summary::mean).findFirst();
            case LOW -> estimate.summary().stream().mapToDouble(Summary::low).findFirst();
            case HIGH -> estimate.summary().stream().mapToDouble(Summary::high).findFirst();
        };
    }
}
