package org.scalepan.production.insects;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Background;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.Gap;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Remark;
import org.scalepan.production.heating.Heating;
import org.scalepan.production.heating.RoomHeat;
import org.scalepan.production.RowSpan;

/** Adds the heat of a rearing room that has no meter. */
final class HeatingInventory {
    private static final double DAYS = 365;
    private static final String FIELD = "heating";

    /**
     * The mean mass of a batch over its cycle, as a share of its mass at harvest, is (1 − s) / ln(1/s) for animals that start at the share s
     * of it and grow exponentially, and a half for steady growth from next to nothing: least for a thousandfold gain, and most.
     */
    private static final double LEAST_MEAN_MASS = (1 - 1e-3) / StrictMath.log(1e3);

    private static final double MOST_MEAN_MASS = 0.5;

    private final Library library;
    private final InsectFarm farm;
    private final InventoryBuilder builder;

    HeatingInventory(Library library, InsectFarm farm, InventoryBuilder builder) {
        this.library = library;
        this.farm = farm;
        this.builder = builder;
    }

    void add(FarmInventory farmInventory) {
        farm.heating().ifPresent(room -> add(room, farmInventory));
    }

    private void add(Heating room, FarmInventory farmInventory) {
        Optional<RowSpan> gains = gains();
        Optional<RoomHeat> heat = RoomHeat.of(
                library,
                farm.records().region(),
                farm.product().id(),
                room,
                gains.orElse(new RowSpan(0, 0, List.of())));
        if (heat.isEmpty()) {
            builder.notCounted(FIELD, Gap.OF_ENERGY, "not counted: no climate or no rearing temperature is known");
            return;
        }
        tell(room, heat.get(), gains);
        if (farm.records().energy().stream().anyMatch(use -> !use.forProcessing())) {
            builder.remark(
                    Remark.METHOD,
                    "heat is worked out from the climate beside the energy recorded: leave heating out where a meter has it already");
        }
        if (heat.get().high() > 0) {
            farmInventory.roomHeat(
                    room.carrier(),
                    ActivityTerm.of(1).times(heat.get().factor()),
                    heat.get().rows());
        }
    }

    private void tell(Heating room, RoomHeat heat, Optional<RowSpan> gains) {
        if (room.temperature().isEmpty()) {
            builder.filled(
                    FIELD + "/temperature_c",
                    Gap.OF_ENERGY,
                    String.format(
                            Locale.ROOT,
                            "%.0f to %.0f °C, as published of %s",
                            heat.inside().low(),
                            heat.inside().high(),
                            farm.product().id()),
                    heat.inside().rows().toArray(String[]::new));
        }
        if (room.insulation().isEmpty()) {
            builder.filled(FIELD + "/insulation", Gap.OF_ENERGY, "anything between uninsulated and well insulated");
        }
        if (gains.isEmpty()) {
            builder.filled(
                    FIELD + "/animals",
                    Gap.OF_ENERGY,
                    "0: what the animals give off is not taken off, because it or the length of their cycle is not known");
        }
        String place = library.regions().words(farm.records().region().orElseThrow());
        builder.filled(
                FIELD,
                Gap.OF_ENERGY,
                heat.high() > 0
                        ? String.format(
                                Locale.ROOT,
                                "heat demand by degree days of %s: %s to %s MJ a year%s; sun and ventilation on purpose are not counted",
                                place,
                                rounded(heat.low()),
                                rounded(heat.high()),
                                gains.isPresent() ? ", less what the animals give off" : "")
                        : "0: every month of " + place + " is as warm as the room, or the animals keep it warm",
                heat.rows().toArray(String[]::new));
    }

    private static String rounded(double megajoules) {
        return new BigDecimal(megajoules)
                .round(new MathContext(2))
                .toBigInteger()
                .toString();
    }

    /** W given off by the animals that are in the room at any time, where it was measured and the length of the cycle is known. */
    private Optional<RowSpan> gains() {
        Optional<RowSpan> perKilogram =
                RoomHeat.published(library, farm.product().id(), "heat-given-off");
        Optional<BackgroundFactor> usual =
                Background.of(library).row("insect_practice", farm.product().id(), "cycle-days");
        OptionalDouble days = farm.cycleDays().isPresent()
                ? OptionalDouble.of(farm.cycleDays().get().central())
                : usual.map(row -> row.printed().value()).orElse(OptionalDouble.empty());
        if (perKilogram.isEmpty() || days.isEmpty()) {
            return Optional.empty();
        }
        double harvested = farm.harvest().kilograms() * days.getAsDouble() / DAYS;
        List<String> rows = new ArrayList<>(perKilogram.get().rows());
        if (farm.cycleDays().isEmpty()) {
            usual.ifPresent(row -> rows.add(row.id()));
        }
        return Optional.of(new RowSpan(
                harvested * LEAST_MEAN_MASS * perKilogram.get().low(),
                harvested * MOST_MEAN_MASS * perKilogram.get().high(),
                rows));
    }
}
