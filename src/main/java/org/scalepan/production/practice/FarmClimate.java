package org.scalepan.production.practice;

import java.util.List;
import java.util.Set;
import org.scalepan.factors.Library;
import org.scalepan.factors.Regions;

/** Which climate of reference farms a region asks for. */
final class FarmClimate {
    private static final String TEMPERATE = "temperate";
    private static final String TROPICAL = "tropical";

    private final Regions regions;

    private FarmClimate(Regions regions) {
        this.regions = regions;
    }

    static FarmClimate of(Library library) {
        return new FarmClimate(library.regions());
    }

    /**
     * The climates, that of the region first. The world as a whole asks for temperate farms: where a product has both, the heated one
     * is the one that flatters less.
     */
    List<String> nearestFirst(String region) {
        return regions.outwards(region).stream().anyMatch(Set.of("africa", "latin-america")::contains)
                ? List.of(TROPICAL, TEMPERATE)
                : List.of(TEMPERATE, TROPICAL);
    }
}
