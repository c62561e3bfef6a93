package org.scalepan.production;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.SpreadReading;

/** Finds the background factors of the library and reads them as factors with their doubt. */
public final class Background {
    private final Library library;

    public Background(Library library) {
        this.library = library;
    }

    /** The default row about a subject and a quantity. */
    public Optional<BackgroundFactor> row(String table, String subject, String quantity) {
        return rows(table, subject, quantity).stream()
                .filter(BackgroundFactor::isDefault)
                .findFirst();
    }

    public List<BackgroundFactor> rows(String table, String subject, String quantity) {
        return library.background(table).stream()
                .filter(row -> row.subject().equals(subject) && row.quantity().equals(quantity))
                .toList();
    }

    /**
     * The row nearest to a place and a year: the region itself before what contains it; then the year nearest to the one given, the
     * latest if none is given. Vintages are never averaged.
     */
    public Optional<BackgroundFactor> nearest(
            String table, String subject, String quantity, Optional<String> region, OptionalInt year) {
        List<BackgroundFactor> rows = rows(table, subject, quantity);
        List<String> outwards = library.regions().outwards(region.orElse("world"));
        for (String place : outwards) {
            Optional<BackgroundFactor> here = rows.stream()
                    .filter(row -> row.region().orElse("world").equals(place))
                    .min(Comparator.<BackgroundFactor>comparingInt(row -> year.isPresent()
                                    ? Math.abs(year.getAsInt() - row.year().orElse(0))
                                    : 0)
                            .thenComparing(row -> -row.year().orElse(0))
                            .thenComparing(row -> !row.isDefault()));
            if (here.isPresent()) {
                return here;
            }
        }
        return Optional.empty();
    }

    /** A row read as a factor, drawn under the row's id. */
    public Factor factor(BackgroundFactor row) {
        return new Factor(
                row.id(),
                SpreadReading.read(row.printed(), library.spreadDefaults().result()));
    }

    /** The same for a share, which cannot exceed 1. */
    public Factor fraction(BackgroundFactor row) {
        return new Factor(
                row.id(),
                SpreadReading.readFraction(
                        row.printed(), library.spreadDefaults().composition()));
    }
}
