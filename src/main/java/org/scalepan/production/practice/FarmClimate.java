package org.scalepan.production.practice;

import java.util.List;
import org.scalepan.factors.Library;
import org.scalepan.factors.Region;
import org.scalepan.factors.Regions;
import org.scalepan.production.climate.ClimateNormals;

/**
 * Which climate of reference farms a region asks for: tropical where the mean of a year is above 18 °C, the limit of the tropical zones of
 * the IPCC (2019 Refinement, volume 4, chapter 3); of a larger region what most of its countries are.
 */
final class FarmClimate {
    private static final String TEMPERATE = "temperate";
    private static final String TROPICAL = "tropical";
    private static final double TROPICAL_ABOVE = 18;

    private final Library library;

    private FarmClimate(Library library) {
        this.library = library;
    }

    static FarmClimate of(Library library) {
        return new FarmClimate(library);
    }

    /**
     * The climates, that of the region first. The world as a whole asks for temperate farms: where a product has both, the heated one
     * is the one that flatters less.
     */
    List<String> nearestFirst(String region) {
        return isTropical(region) ? List.of(TROPICAL, TEMPERATE) : List.of(TEMPERATE, TROPICAL);
    }

    private boolean isTropical(String region) {
        if (region.equals(Regions.WORLD)) {
            return false;
        }
        List<Boolean> countries = library.regions().all().stream()
                .map(Region::id)
                .filter(id -> library.regions().outwards(id).contains(region))
                .flatMap(id -> ClimateNormals.of(library, id).stream())
                .map(normals -> normals.mean() > TROPICAL_ABOVE)
                .toList();
        long warm = countries.stream().filter(tropical -> tropical).count();
        return 2 * warm > countries.size();
    }
}
