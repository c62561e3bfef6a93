package org.scalepan.factors;

import org.scalepan.factors.table.Row;

/**
 * What is compared: warming, land, energy, water or feed.
 *
 * @param unit the one unit in which the library states it
 * @param defaultBoundary the boundary of a question that names none
 * @param defaultPer the functional unit of a question that names none
 */
public record Indicator(
        String id, String name, String unit, Boundary defaultBoundary, String defaultPer, String description) {
    static Indicator of(Row row) {
        return new Indicator(
                row.text("id"),
                row.text("name"),
                row.text("unit"),
                Boundary.of(row, "default_boundary"),
                row.text("default_per"),
                row.text("description"));
    }

    /** True for the indicator that depends on a warming set and on land-use change. */
    public boolean isWarming() {
        return id.equals("ghg");
    }

    /** True for what only a farm's own meters count, so that no publication can stand beside it. */
    public boolean isOfRecordsAlone() {
        return id.endsWith("-on-farm");
    }

    /** True for the feed that the animals eat, as fed or as dry matter: counted at the animal, whichever boundary is asked. */
    public boolean isFeed() {
        return id.startsWith("feed");
    }
}
