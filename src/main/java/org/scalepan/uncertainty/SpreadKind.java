package org.scalepan.uncertainty;

import java.util.Optional;

/** How a published number states its spread. */
public enum SpreadKind {
    /** Mean and standard deviation. */
    SD("sd"),
    /** Mean and standard error of the mean. */
    SE("se"),
    /** 95 % confidence limits. */
    CI95("ci95"),
    /** 5th and 95th percentiles. */
    P5_P95("p5-p95"),
    /** 10th and 90th percentiles. */
    P10_P90("p10-p90"),
    /** Two or more percentiles, each with its probability. */
    PERCENTILES("percentiles"),
    /** Smallest and largest value, with or without a central one. */
    RANGE("range"),
    /** Smallest and largest value that the inputs of a derivation give; what else is uncertain comes on top. */
    INPUT_RANGE("input-range"),
    /** A number alone. */
    NONE("none");

    private final String id;

    SpreadKind(String id) {
        this.id = id;
    }

    /** The word used for this kind in data and answers. */
    public String id() {
        return id;
    }

    /** The kind with the given word; empty when there is none. */
    public static Optional<SpreadKind> of(String id) {
        for (SpreadKind kind : values()) {
            if (kind.id.equals(id)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
