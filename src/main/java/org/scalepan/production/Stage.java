package org.scalepan.production;

import java.util.Locale;
import org.scalepan.factors.Boundary;

/** Where on a farm a burden arises. Insect farms and herds have the same stages. */
public enum Stage {
    /** Growing, processing and transport of feed and litter. */
    FEED,
    /** Gases from the animals themselves. */
    ANIMALS,
    /** Gases from manure or frass, where it is stored, spread or dropped. */
    MANURE,
    ENERGY,
    WATER,
    TRANSPORT,
    /** Containers, wire, cloth, packaging: mass over lifetime. */
    MATERIALS,
    /** The ground under buildings and yard. */
    SITE,
    /** Blanching, drying, freezing, milling: beyond the farm gate. */
    PROCESSING,
    /** Avoided burden: fertiliser that frass replaces. Left out unless asked for. */
    CREDIT;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The narrowest boundary that includes this stage. */
    public Boundary boundary() {
        return switch (this) {
            case ANIMALS, MANURE -> Boundary.ANIMAL;
            case PROCESSING -> Boundary.PROCESSING_GATE;
            default -> Boundary.FARM_GATE;
        };
    }
}
