package org.scalepan.production;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.Regions;
import org.scalepan.factors.table.Row;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * Adds energy by carrier to the inventory: MJ delivered to the farm, the primary energy behind it, the gases of combustion, and the upstream burden of supply. CO2 from
 * wood and charcoal is biogenic and not counted; their methane and nitrous oxide are.
 */
public final class EnergyInventory {
    private static final String FACTORS = "energy_factors";
    private static final String PRIMARY = "primary-energy-total";
    private static final double MJ_PER_KWH = 3.6;

    private final Library library;
    private final Background background;
    private final InventoryBuilder builder;
    private final Optional<String> region;
    private final OptionalInt year;
    private final Optional<RecordedNumber> gridIntensity;

    EnergyInventory(Library library, InventoryBuilder builder, FarmRecords records) {
        this.library = library;
        this.background = Background.of(library);
        this.builder = builder;
        this.region = records.region();
        this.year = records.year();
        this.gridIntensity = records.gridIntensity();
    }

    /** Adds an amount in the carrier's own unit: kWh, kg or litre. */
    void add(Stage stage, String carrier, ActivityTerm amount) {
        Row row = carrier(carrier);
        if (row.text("unit").equals("kWh")) {
            addMegajoules(stage, carrier, amount.times(MJ_PER_KWH));
            return;
        }
        ActivityTerm mass = row.text("unit").equals("litre") ? amount.times(factor(carrier, "density")) : amount;
        addMegajoules(stage, carrier, mass.times(factor(carrier, "lower-heating-value")));
    }

    /** Adds delivered energy in MJ, as a process needs it. */
    void addMegajoules(Stage stage, String carrier, ActivityTerm megajoules) {
        builder.flow(stage, carrier, Flux.ENERGY_ON_FARM, megajoules);
        if (carrier(carrier).text("kind").equals("fuel")) {
            fuel(stage, carrier, megajoules);
        } else if (carrier(carrier).text("kind").equals("grid") && gridIntensity.isPresent()) {
            ActivityTerm kilowattHours = megajoules.times(1 / MJ_PER_KWH);
            builder.co2e(stage, carrier, kilowattHours.times(gridIntensity.get().term()), "not-stated");
            land(stage, carrier, kilowattHours);
        } else {
            electricity(stage, carrier, megajoules.times(1 / MJ_PER_KWH));
        }
        primary(stage, carrier, megajoules);
    }

    /**
     * All primary energy behind what is delivered, renewable included; factors of non-renewable energy are another kind and never stand in.
     * Without a factor the delivered energy counts, which is less.
     */
    private void primary(Stage stage, String carrier, ActivityTerm megajoules) {
        boolean grid = carrier(carrier).text("kind").equals("grid");
        Optional<BackgroundFactor> row = grid
                ? background.nearest(FACTORS, carrier, PRIMARY, region, year)
                : background.row(FACTORS, carrier, PRIMARY);
        if (row.isPresent()) {
            builder.flow(stage, carrier, Flux.ENERGY, megajoules.times(background.factor(row.get())));
            row.get()
                    .region()
                    .filter(place -> grid && region.filter(place::equals).isEmpty())
                    .ifPresent(place -> builder.filled(
                            "region",
                            List.of("energy"),
                            Message.of("gap.primary-energy", "carrier", name(carrier), "place", place(place)),
                            row.get().id()));
            return;
        }
        if (grid && region.isEmpty()) {
            builder.filled(
                    "region",
                    List.of("energy"),
                    Message.of("gap.primary-energy-of-the-world", "carrier", name(carrier)));
        }
        builder.flow(stage, carrier, Flux.ENERGY, megajoules);
        builder.lineNotCounted(
                stage,
                Flux.ENERGY_ON_FARM,
                megajoules.central(),
                "energy/" + carrier + "/primary",
                List.of("energy"),
                grid
                        ? Message.of(
                                "gap.as-delivered.grid",
                                "carrier",
                                name(carrier),
                                "place",
                                place(region.orElse(Regions.WORLD)))
                        : Message.of("gap.as-delivered", "carrier", name(carrier)));
    }

    /** kg CO2e per kWh delivered that the library takes for a place and a year, centrally, where it has one. */
    public static OptionalDouble intensity(Library library, String carrier, FarmRecords records) {
        Background background = Background.of(library);
        double delivered = delivered(background, lineLoss(background, carrier, records.region()));
        return background
                .nearest(FACTORS, carrier, "ghg-life-cycle", records.region(), records.year())
                .map(row -> OptionalDouble.of(background.factor(row).central() / delivered))
                .orElse(OptionalDouble.empty());
    }

    /** Whether the electricity of a region is counted with a factor of its own, and not with that of a place near it. */
    public static boolean hasOwnGrid(Library library, String region) {
        return Background.of(library)
                .nearest(FACTORS, "grid-electricity", "ghg-life-cycle", Optional.of(region), OptionalInt.empty())
                .flatMap(BackgroundFactor::region)
                .filter(region::equals)
                .isPresent();
    }

    /** What the lines nearest to a place lose, of the latest year; empty for what is made where it is used. */
    private static Optional<BackgroundFactor> lineLoss(Background background, String carrier, Optional<String> region) {
        return background.nearest(FACTORS, carrier, "line-loss", region, OptionalInt.empty());
    }

    /** The part of what is generated that reaches the user, taken as certain: a national account, far surer than the factor. */
    private static double delivered(Background background, Optional<BackgroundFactor> loss) {
        return 1 - loss.map(row -> background.fraction(row).central()).orElse(0.0);
    }

    private void electricity(Stage stage, String carrier, ActivityTerm kilowattHours) {
        Optional<BackgroundFactor> row = background.nearest(FACTORS, carrier, "ghg-life-cycle", region, year);
        if (row.isEmpty()) {
            builder.lineNotCounted(
                    stage,
                    Flux.ENERGY_ON_FARM,
                    kilowattHours.central() * MJ_PER_KWH,
                    "energy/" + carrier,
                    uncounted(carrier),
                    Message.of("gap.no-intensity", "carrier", name(carrier)));
            return;
        }
        OptionalInt vintage = row.get().year();
        if (year.isPresent() && vintage.isPresent() && year.getAsInt() != vintage.getAsInt()) {
            builder.filled(
                    "year",
                    Gap.GHG,
                    Message.of(
                            "gap.nearest-year", "carrier", name(carrier), "year", Integer.toString(vintage.getAsInt())),
                    row.get().id());
        }
        if (year.isEmpty() && vintage.isPresent()) {
            builder.filled(
                    "year",
                    Gap.GHG,
                    Message.of(
                            "gap.latest-year", "carrier", name(carrier), "year", Integer.toString(vintage.getAsInt())),
                    row.get().id());
        }
        String place = row.get().region().orElse("world");
        if (region.filter(place::equals).isEmpty()) {
            builder.filled(
                    "region",
                    Gap.GHG,
                    intensity(carrier, place, row.get().year()),
                    row.get().id());
        }
        Optional<BackgroundFactor> loss = lineLoss(background, carrier, region);
        builder.co2e(
                stage,
                carrier,
                kilowattHours.times(1 / delivered(background, loss)).times(background.factor(row.get())),
                row.get().gwp().orElse("not-stated"),
                Stream.concat(row.stream(), loss.stream())
                        .map(BackgroundFactor::id)
                        .toArray(String[]::new));
        land(stage, carrier, kilowattHours);
    }

    /** The indicators that electricity of unknown intensity would add to. */
    private List<String> uncounted(String carrier) {
        return background.row(FACTORS, carrier, "land").isPresent() ? List.of("ghg", "land") : Gap.GHG;
    }

    private void land(Stage stage, String carrier, ActivityTerm kilowattHours) {
        background
                .row(FACTORS, carrier, "land")
                .ifPresent(land -> builder.flow(
                        stage, carrier, Flux.LAND, kilowattHours.times(background.factor(land)), land.id()));
    }

    private void fuel(Stage stage, String carrier, ActivityTerm megajoules) {
        gas(stage, carrier, "co2-combustion", megajoules.times(0.001), Flux.CO2);
        gas(stage, carrier, "ch4-combustion", megajoules.times(0.001), Flux.CH4_FOSSIL);
        gas(stage, carrier, "n2o-combustion", megajoules.times(0.001), Flux.N2O);
        ActivityTerm kilograms = megajoules.over(factor(carrier, "lower-heating-value"));
        for (BackgroundFactor row : background.rows(FACTORS, carrier, "ghg-upstream")) {
            if (row.isDefault()) {
                upstream(stage, carrier, megajoules, kilograms, row);
                break;
            }
        }
        gas(stage, carrier, "ch4-upstream", kilograms, Flux.CH4_FOSSIL);
        gas(stage, carrier, "n2o-upstream", kilograms, Flux.N2O);
    }

    private void gas(Stage stage, String carrier, String quantity, ActivityTerm base, Flux flux) {
        background.row(FACTORS, carrier, quantity).ifPresent(row -> {
            if (row.biogenic() && flux == Flux.CO2) {
                builder.remark(Remark.METHOD, Message.of("remark.biogenic", "carrier", carrier));
                return;
            }
            Flux origin = row.biogenic() && flux == Flux.CH4_FOSSIL ? Flux.CH4_BIOGENIC : flux;
            builder.flow(stage, carrier, origin, base.times(background.factor(row)), row.id());
        });
    }

    private void upstream(
            Stage stage, String carrier, ActivityTerm megajoules, ActivityTerm kilograms, BackgroundFactor row) {
        ActivityTerm base = switch (row.per()) {
            case "kWh", "kWh-net" -> megajoules.times(1 / MJ_PER_KWH);
            case "litre" -> kilograms.over(factor(carrier, "density"));
            default -> kilograms;
        };
        builder.co2e(
                stage, carrier, base.times(background.factor(row)), row.gwp().orElse("not-stated"), row.id());
    }

    private Factor factor(String carrier, String quantity) {
        return background
                .row(FACTORS, carrier, quantity)
                .map(background::factor)
                .orElseThrow(() -> new IllegalStateException("no " + quantity + " of " + carrier + " in the library"));
    }

    /** What a carrier is called inside a sentence. */
    private Message intensity(String carrier, String place, OptionalInt from) {
        Message intensity = from.isPresent()
                ? Message.of(
                        "gap.intensity.year",
                        "carrier",
                        name(carrier),
                        "place",
                        place(place),
                        "year",
                        Integer.toString(from.getAsInt()))
                : Message.of("gap.intensity", "carrier", name(carrier), "place", place(place));
        return region.map(asked -> Message.of("gap.nearest-place", "intensity", intensity, "asked", place(asked)))
                .orElse(intensity);
    }

    private DisplayName name(String carrier) {
        String name = carrier(carrier).text("name");
        return DisplayName.of("carrier." + carrier, name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1));
    }

    private DisplayName place(String region) {
        return DisplayName.of("region." + region, library.regions().words(region));
    }

    private Row carrier(String id) {
        return library.row("energy_carriers", id)
                .orElseThrow(() -> new IllegalArgumentException("unknown energy carrier " + id));
    }
}
