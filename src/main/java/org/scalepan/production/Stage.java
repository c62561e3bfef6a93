package org.scalepan.production;

import java.util.Locale;

/** Where on a farm a burden arises. Insect farms and herds have the same stages. */
public enum Stage {
    /** Growing, processing and bringing of feed and litter. */
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
    /** Blanching, drying, freezing, milling: behind the farm gate. */
    PROCESSING,
    /** Burden taken away from the product: fertiliser that frass replaces. Left out unless asked for. */
    CREDIT;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** True for stages that belong to the boundary {@code animal}: the animals and their manure or frass only. */
    public boolean isAnimal() {
        return this == ANIMALS || this == MANURE;
    }
}
