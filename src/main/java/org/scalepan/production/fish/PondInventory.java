package org.scalepan.production.fish;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.Background;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.fish.PondFactors.MeasuredGas;
import org.scalepan.words.Message;

/** Adds the water of a fish farm: the gases that rise from it, the ground that it covers, and what is put into it beside feed. */
final class PondInventory {
    private static final double M2_PER_HECTARE = 10_000;
    /** kg N2O per kg N2O-N. */
    private static final double TO_N2O = 44.0 / 28.0;

    private static final List<String> OF_MAKING = List.of("energy", "ghg");

    private final Library library;
    private final FishFarm farm;
    private final Pond pond;
    private final InventoryBuilder builder;
    private final PondFactors factors;

    PondInventory(Library library, FishFarm farm, InventoryBuilder builder) {
        this.library = library;
        this.farm = farm;
        this.pond = farm.pond();
        this.builder = builder;
        this.factors = PondFactors.of(library);
    }

    void add() {
        if (pond.kind().isEmpty()) {
            builder.filled("pond/kind", Gap.GHG, Message.of("gap.pond-kind"));
        }
        methane();
        nitrousOxide();
        ground();
        fertiliser();
        manure();
        lime();
    }

    /** CH4 = area x kg per hectare and year: the equation of the guidelines for constructed waters, with measured factors. */
    private void methane() {
        Optional<MeasuredGas> measured = pond.usualKind() == PondKind.POND ? factors.methane() : Optional.empty();
        if (measured.isEmpty()) {
            builder.notCounted(
                    Stage.MANURE,
                    "pond/methane",
                    Gap.GHG,
                    Message.of("gap.no-pond-gas", "kind", pond.usualKind().message()));
            return;
        }
        if (pond.area().isEmpty()) {
            builder.notCounted(Stage.MANURE, "pond/methane", Gap.GHG, Message.of("gap.no-pond-area"));
            return;
        }
        MeasuredGas gas = measured.get();
        builder.filled("pond/methane", Gap.GHG, gas.message(), gas.rowIds());
        builder.flow(
                Stage.MANURE,
                "methane of the pond",
                Flux.CH4_BIOGENIC,
                pond.area().get().term().over(M2_PER_HECTARE).times(gas.factor()),
                gas.rowIds());
    }

    private void nitrousOxide() {
        factors.nitrousOxide()
                .ifPresentOrElse(
                        gas -> {
                            builder.filled("pond/nitrous oxide", Gap.GHG, gas.message(), gas.rowIds());
                            builder.flow(
                                    Stage.MANURE,
                                    "nitrous oxide of the water",
                                    Flux.N2O,
                                    farm.harvest().mass().times(gas.factor()).times(TO_N2O),
                                    gas.rowIds());
                        },
                        () -> builder.notCounted(
                                Stage.MANURE, "pond/nitrous oxide", Gap.GHG, Message.of("gap.no-measurement")));
    }

    private void ground() {
        if (!pond.usualKind().isOnLand()) {
            builder.filled("pond/ground", List.of("land"), Message.of("gap.cages"));
        } else if (pond.area().isEmpty()) {
            builder.notCounted("pond/area_m2", List.of("land"), Message.of("gap.not-recorded"));
        } else {
            builder.flow(Stage.SITE, "water", Flux.LAND, pond.area().get().term());
        }
    }

    private void fertiliser() {
        if (pond.nitrogen().isEmpty() && pond.phosphate().isEmpty()) {
            builder.cutOff("pond/fertiliser", OF_MAKING, Message.of("gap.not-recorded"));
            return;
        }
        pond.nitrogen().ifPresent(amount -> making("nitrogen", "nitrogen-average", amount));
        pond.phosphate().ifPresent(amount -> making("phosphate", "phosphate-average", amount));
        if (RecordedNumber.centralOr(pond.nitrogen(), 0) + RecordedNumber.centralOr(pond.phosphate(), 0) > 0) {
            builder.notCounted("pond/fertiliser/energy", List.of("energy"), Message.of("gap.fertiliser-gases-only"));
        }
    }

    private void making(String nutrient, String fertiliser, RecordedNumber kilograms) {
        Optional<BackgroundFactor> row = Background.of(library).row("fertiliser_factors", fertiliser, "ghg-production");
        if (row.isEmpty()) {
            builder.notCounted("pond/fertiliser/" + nutrient, Gap.GHG, Message.of("gap.no-factor"));
            return;
        }
        builder.co2e(
                Stage.FEED,
                "fertiliser in the water, " + nutrient,
                kilograms.term().times(Background.of(library).factor(row.get())),
                row.get().gwp().orElse("not-stated"),
                row.get().id());
    }

    private void manure() {
        if (RecordedNumber.centralOr(pond.manure(), 0) > 0) {
            builder.remark(Remark.METHOD, Message.of("remark.manure-in-water"));
        }
    }

    private void lime() {
        if (RecordedNumber.centralOr(pond.lime(), 0) > 0) {
            builder.notCounted("pond/lime_kg", OF_MAKING, Message.of("gap.no-lime"));
        }
    }
}
