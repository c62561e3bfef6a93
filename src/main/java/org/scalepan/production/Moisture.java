package org.scalepan.production;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Wet or dry, by which the 2019 Refinement distinguishes the factors of nitrogen on soils (volume 4, chapter 11, tables 11.1 and 11.3).
 *
 * <p>Moist, wet and montane zones count as wet, as the tables' notes have it (from memory).
 */
public enum Moisture {
    WET,
    DRY;

    private static final List<String> WET_ENDINGS = List.of("-moist", "-wet", "-montane");

    /** The moisture of a climate zone; empty for climates that are defined by temperature alone. */
    public static Optional<Moisture> of(String climate) {
        if (climate.endsWith("-dry")) {
            return Optional.of(DRY);
        }
        return WET_ENDINGS.stream().anyMatch(climate::endsWith) ? Optional.of(WET) : Optional.empty();
    }

    /** As the library's tables have it. */
    String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
