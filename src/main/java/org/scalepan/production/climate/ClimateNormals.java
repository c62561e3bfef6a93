package org.scalepan.production.climate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;

/**
 * Monthly means of a country's air temperature and its rain of a year, over thirty years.
 *
 * @param row id of the row of {@code climate_normals.csv}
 * @param region region id of the country
 * @param weights what the places of the country are weighted by: population or area
 * @param months the twelve monthly means from January on, in °C
 * @param rain mm a year, snow included
 */
public record ClimateNormals(String row, String region, String weights, List<Double> months, double rain) {
    private static final List<Integer> DAYS = List.of(31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31);
    private static final double YEAR = 365;

    /** The default rows of a library, by country. */
    private record NormalsByCountry(Map<String, ClimateNormals> rows) {}

    public ClimateNormals {
        months = List.copyOf(months);
        if (months.size() != DAYS.size()) {
            throw new IllegalArgumentException("a year has twelve months, not " + months.size());
        }
    }

    /** The normals of a country; empty for a region that is none, because the mean of a continent is no climate to heat against. */
    public static Optional<ClimateNormals> of(Library library, String region) {
        NormalsByCountry known = library.view(NormalsByCountry.class, read -> {
            Map<String, ClimateNormals> rows = new HashMap<>();
            all(read, "default").forEach(normals -> rows.put(normals.region(), normals));
            return new NormalsByCountry(Map.copyOf(rows));
        });
        return Optional.ofNullable(known.rows().get(region));
    }

    /** All normals of one use: {@code default}, weighted by population, or {@code kept}, by area. */
    static Stream<ClimateNormals> all(Library library, String use) {
        return library.table("climate_normals").rows().stream()
                .filter(row -> row.text("use").equals(use))
                .map(ClimateNormals::read);
    }

    private static ClimateNormals read(Row row) {
        return new ClimateNormals(
                row.text("id"),
                row.text("region"),
                row.text("weights"),
                Stream.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
                        .map(month -> row.number(month).orElseThrow())
                        .toList(),
                row.number("rain").orElseThrow());
    }

    /** Mean of the year, in °C: months weighted by their days. */
    public double mean() {
        double sum = 0;
        for (int i = 0; i < months.size(); i++) {
            sum += DAYS.get(i) * months.get(i);
        }
        return sum / YEAR;
    }

    /** Mean of the coldest month, in °C. */
    public double coldest() {
        return months.stream().mapToDouble(month -> month).min().orElseThrow();
    }

    /**
     * Degree days of a year: the sum of what each day lacks to a base, with every day taken at the mean of its month. Warm spells of a
     * cold month and cold nights of a mild one cancel, so that near the base a little is lost.
     *
     * @param base in °C, up to which somebody heats
     * @param limit in °C, months above which count for nothing; the base itself where there is no other
     * @return K·d a year
     */
    public double degreeDays(double base, double limit) {
        double sum = 0;
        for (int i = 0; i < months.size(); i++) {
            double outside = months.get(i);
            if (outside <= limit) {
                sum += DAYS.get(i) * Math.max(0, base - outside);
            }
        }
        return sum;
    }

    /** The same where every month below the base counts. */
    public double degreeDays(double base) {
        return degreeDays(base, base);
    }
}
