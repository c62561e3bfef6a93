package org.scalepan.production.heating;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.input.Obstacle;
import org.scalepan.production.Factor;
import org.scalepan.production.RowSpan;
import org.scalepan.production.climate.ClimateNormals;
import org.scalepan.uncertainty.Constant;
import org.scalepan.uncertainty.LogUniform;
import org.scalepan.uncertainty.Uniform;

/**
 * Between which bounds the heat of a rearing room lies that nobody has metered: {@link HeatDemand} with everything that keeps it low, and
 * with everything that drives it up. The room is taken as one storey on a square plan, standing alone, kept warm all year.
 *
 * @param low MJ of the carrier a year
 * @param high MJ of the carrier a year
 * @param inside °C that the room is kept at
 * @param drawnAs id under which its place between the bounds is drawn: rooms of one insulation class share it
 * @param rows the rows of the library behind it
 */
public record RoomHeat(double low, double high, RowSpan inside, String drawnAs, List<String> rows) {
    /** The insulation classes of the library, worst first. */
    public static final List<String> CLASSES = List.of("uninsulated", "lightly-insulated", "well-insulated");

    /** Begins the id that the heat of a room is drawn under. */
    public static final String DRAWN_AS = "room-heat.";

    /** Walls of a square room: four times its side. */
    private static final double SIDES = 4;

    private static final String TABLE = "building_heat";
    private static final String TEMPERATURE = "rearing-temperature";

    public RoomHeat {
        rows = List.copyOf(rows);
    }

    /** Why no heat demand can be worked out: the place has no climate here, or the temperature is neither recorded nor published. */
    public static Optional<Obstacle> obstacle(
            Library library, Optional<String> region, Product product, Heating heating) {
        if (region.isEmpty()) {
            return Optional.of(
                    new Obstacle(
                            "heating",
                            "heating needs region: how much heat a room takes depends on the climate of the country it stands in"));
        }
        if (ClimateNormals.of(library, region.get()).isEmpty()) {
            return Optional.of(new Obstacle(
                    "heating",
                    "heating needs a country as region: no monthly temperatures of "
                            + library.regions().words(region.get()) + " are in this library"));
        }
        if (heating.temperature().isEmpty()
                && published(library, product.id(), TEMPERATURE).isEmpty()) {
            return Optional.of(new Obstacle(
                    "heating",
                    "heating needs temperature_c: no rearing temperature of " + product.label()
                            + " is in this library"));
        }
        return Optional.empty();
    }

    /**
     * The heat of a room.
     *
     * @param gains W that the animals give off, on average over the year
     * @return empty where there is an {@link #obstacle}
     */
    public static Optional<RoomHeat> of(
            Library library, Optional<String> region, String product, Heating heating, RowSpan gains) {
        Optional<RowSpan> inside = heating.temperature().isPresent()
                ? Optional.of(RowSpan.recorded(heating.temperature().get()))
                : published(library, product, TEMPERATURE);
        return region.flatMap(place -> ClimateNormals.of(library, place))
                .flatMap(normals ->
                        inside.map(kept -> new DemandOfRoom(library, normals, heating).between(kept, gains)));
    }

    /** What the default rows of a species' practice span. */
    public static Optional<RowSpan> published(Library library, String product, String quantity) {
        List<BackgroundFactor> rows = library.background("insect_practice").stream()
                .filter(row -> row.subject().equals(product) && row.quantity().equals(quantity) && row.isDefault())
                .toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(RowSpan.of(rows));
    }

    /** The heat as a factor in MJ: log-uniform between its bounds, uniform where the lower one is none. */
    public Factor factor() {
        return new Factor(
                drawnAs,
                high == low ? new Constant(high) : low > 0 ? new LogUniform(low, high) : new Uniform(low, high),
                Optional.empty());
    }

    /** Puts the rows together that a room's demand rests on. */
    private static final class DemandOfRoom {
        private final Library library;
        private final ClimateNormals normals;
        private final Heating heating;
        private final Set<String> rows = new LinkedHashSet<>();

        DemandOfRoom(Library library, ClimateNormals normals, Heating heating) {
            this.library = library;
            this.normals = normals;
            this.heating = heating;
            rows.add(normals.row());
        }

        RoomHeat between(RowSpan inside, RowSpan gains) {
            RowSpan walls = envelope("wall-u");
            RowSpan roof = envelope("roof-u");
            RowSpan floor = envelope("floor-u");
            RowSpan changes = envelope("air-changes");
            RowSpan height = span("room", "height");
            RowSpan air = span("air", "heat-capacity");
            double least = loss(
                    heating.area().least(),
                    height.low(),
                    walls.low(),
                    roof.low(),
                    floor.low(),
                    changes.low(),
                    air.low());
            double most = loss(
                    heating.area().most(),
                    height.high(),
                    walls.high(),
                    roof.high(),
                    floor.high(),
                    changes.high(),
                    air.high());
            rows.addAll(inside.rows());
            rows.addAll(gains.rows());
            double efficiency = efficiency();
            return new RoomHeat(
                    HeatDemand.megajoules(normals, least, inside.low(), gains.high()) / efficiency,
                    HeatDemand.megajoules(normals, most, inside.high(), gains.low()) / efficiency,
                    inside,
                    DRAWN_AS + heating.insulation().orElse("any-insulation"),
                    new ArrayList<>(rows));
        }

        private double loss(
                double area, double height, double walls, double roof, double floor, double changes, double capacity) {
            return HeatDemand.lossCoefficient(
                    List.of(
                            new HeatDemand.Surface(area, roof),
                            new HeatDemand.Surface(area, floor),
                            new HeatDemand.Surface(SIDES * StrictMath.sqrt(area) * height, walls)),
                    new HeatDemand.AirExchange(area * height, changes, capacity));
        }

        private RowSpan envelope(String quantity) {
            return span(heating.insulation().map(List::of).orElse(CLASSES), quantity);
        }

        private RowSpan span(String subject, String quantity) {
            return span(List.of(subject), quantity);
        }

        private RowSpan span(List<String> subjects, String quantity) {
            RowSpan found = RowSpan.of(library.background(TABLE).stream()
                    .filter(row ->
                            subjects.contains(row.subject()) && row.quantity().equals(quantity) && row.isDefault())
                    .toList());
            rows.addAll(found.rows());
            return found;
        }

        /** Electricity becomes heat in the room in full; of a fuel, part of the heat goes up the chimney. */
        private double efficiency() {
            boolean fuel = library.row("energy_carriers", heating.carrier())
                    .filter(carrier -> carrier.text("kind").equals("fuel"))
                    .isPresent();
            return fuel ? span("fuel-heater", "efficiency").low() : 1;
        }
    }
}
