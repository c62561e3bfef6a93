package org.scalepan.footprint;

import java.util.Optional;
import java.util.stream.Stream;

/** How protein is counted from nitrogen. */
public enum ProteinBasis {
    /** Nitrogen × 6.25, the convention of food analysis, which overstates insect protein. */
    CRUDE("crude"),
    /** Nitrogen × the factor published for that product. */
    CORRECTED("corrected");

    /** kg crude protein per kg nitrogen. */
    public static final double CRUDE_FACTOR = 6.25;

    private final String id;

    ProteinBasis(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    public static Optional<ProteinBasis> of(String id) {
        return Stream.of(values()).filter(basis -> basis.id.equals(id)).findFirst();
    }
}
