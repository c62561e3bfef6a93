package org.scalepan.production.records;

/** How many entries the lists of a farm's records may have. */
public final class RecordLimits {
    /** Of feed, energy, transport and materials. */
    public static final int ENTRIES = 100;

    public static final int CO_PRODUCTS = 20;
    public static final int MANURE_SYSTEMS = 20;
    public static final int PROCESSING_STEPS = 10;

    private RecordLimits() {}
}
