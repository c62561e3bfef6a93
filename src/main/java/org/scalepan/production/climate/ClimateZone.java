package org.scalepan.production.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * The climate by which the IPCC's tables of manure are read, as the mean temperature and rain of a place choose it.
 *
 * <p>Source: IPCC 2019 Refinement, volume 4, chapter 3, figure 3A.5.1 with its corrigendum (limits in {@code climate_zone_limits.csv}); the
 * columns of the 2006 tables are whole degrees of mean temperature. Frost days, height above the sea and potential evapotranspiration
 * are not held: a warm place is taken as free of frost and below the mountains, and a place outside the tropics as moist.
 *
 * @param id a climate of the tables
 * @param moistureKnown false where moist is an assumption
 * @param message what chose it
 * @param rows the rows of the library behind it
 */
public record ClimateZone(String id, boolean moistureKnown, Message message, List<String> rows) {
    private static final int COLDEST_COLUMN = 10;
    private static final int WARMEST_COLUMN = 28;

    public ClimateZone {
        rows = List.copyOf(rows);
    }

    /**
     * The zone of a place.
     *
     * @param edition 2006 or 2019, of which the tables are
     */
    public static ClimateZone of(Library library, ClimateNormals normals, String edition) {
        return library.view(KnownZones.class, unused -> new KnownZones(new ConcurrentHashMap<>()))
                .zones()
                .computeIfAbsent(
                        new PlaceInEdition(normals, edition),
                        place -> edition.equals("2006")
                                ? column(library, normals)
                                : new Classification(library, normals).zone());
    }

    private record PlaceInEdition(ClimateNormals normals, String edition) {}

    /** Rows of a bulk run ask for the same few countries again and again. */
    private record KnownZones(Map<PlaceInEdition, ClimateZone> zones) {}

    private static ClimateZone column(Library library, ClimateNormals normals) {
        long degrees = Math.round(normals.mean());
        String id = degrees <= COLDEST_COLUMN
                ? "temp-" + COLDEST_COLUMN + "-or-less"
                : degrees >= WARMEST_COLUMN ? "temp-" + WARMEST_COLUMN + "-or-more" : "temp-" + degrees;
        return new ClimateZone(id, true, measured(library, normals), List.of(normals.row()));
    }

    private static Message measured(Library library, ClimateNormals normals) {
        return Message.of(
                "climate.measured",
                "mean",
                new Figure(String.format(Locale.ROOT, "%.1f", normals.mean())),
                "place",
                DisplayName.of("region." + normals.region(), library.regions().words(normals.region())),
                "weights",
                normals.weights());
    }

    /** One walk down the classification tree, with the limits that it passed. */
    private static final class Classification {
        private final Library library;
        private final ClimateNormals normals;
        private final List<String> rows = new ArrayList<>();

        Classification(Library library, ClimateNormals normals) {
            this.library = library;
            this.normals = normals;
            rows.add(normals.row());
        }

        ClimateZone zone() {
            Message measured = measured(library, normals);
            if (beyond("tropical", normals.mean())) {
                String zone = beyond("tropical-wet", normals.rain())
                        ? "tropical-wet"
                        : beyond("tropical-moist", normals.rain()) ? "tropical-moist" : "tropical-dry";
                return new ClimateZone(
                        zone,
                        true,
                        Message.of(
                                "climate.tropical",
                                "measured",
                                measured,
                                "rain",
                                new Figure(String.format(Locale.ROOT, "%.0f", normals.rain()))),
                        rows);
            }
            String zone = beyond("warm-temperate", normals.mean())
                    ? "warm-temperate-moist"
                    : beyond("cool-temperate", normals.mean()) ? "cool-temperate-moist" : "boreal-moist";
            return new ClimateZone(zone, false, Message.of("climate.temperate", "measured", measured), rows);
        }

        private boolean beyond(String zone, double value) {
            Row limit = library.table("climate_zone_limits").rows().stream()
                    .filter(row -> row.text("zone").equals(zone))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no limit of the zone " + zone + " in the library"));
            rows.add(limit.text("id"));
            return value > limit.number("value").orElseThrow();
        }
    }
}
