package org.scalepan.production.insects;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Background;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.IpccTables;
import org.scalepan.production.IpccTables.Where;
import org.scalepan.production.NitrousOxide;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.TermFactor;
import org.scalepan.words.Message;

/**
 * Adds the nitrous oxide of frass to the inventory, as the IPCC guidelines do for manure: stored like solid manure (2019, volume 4, chapter
 * 10, equations 10.25 to 10.29), spread like organic fertiliser (chapter 11, equations 11.1, 11.9 and 11.10).
 */
final class FrassInventory {
    private static final String EDITION = "2019";

    private final Library library;
    private final Background background;
    private final InsectFarm farm;
    private final InventoryBuilder builder;
    private final Optional<ActivityTerm> feedNitrogen;
    private final List<String> unknown;
    private final double unknownMass;
    private final Optional<ActivityTerm> larvalNitrogen;

    FrassInventory(
            Library library,
            InsectFarm farm,
            InventoryBuilder builder,
            Optional<ActivityTerm> feedNitrogen,
            List<String> unknown,
            double unknownMass,
            Optional<ActivityTerm> larvalNitrogen) {
        this.library = library;
        this.background = Background.of(library);
        this.farm = farm;
        this.builder = builder;
        this.feedNitrogen = feedNitrogen;
        this.unknown = List.copyOf(unknown);
        this.unknownMass = unknownMass;
        this.larvalNitrogen = larvalNitrogen;
    }

    void add() {
        Optional<ActivityTerm> nitrogen = nitrogen();
        if (nitrogen.isEmpty()) {
            builder.notCounted(Stage.MANURE, "frass", Gap.GHG, Message.of("gap.frass-unknown"));
            return;
        }
        ActivityTerm n = nitrogen.get();
        if (!(n.central() > 0)) {
            // None was recorded; or feed of unknown nitrogen may contain that of the larvae; where all is known, the
            // farm's balance says what
            // is wrong.
            return;
        }
        boolean stored = farm.frass()
                .flatMap(InsectFarm.Frass::fate)
                .map(fate -> fate == InsectFarm.Fate.STORED)
                .orElse(true);
        farm.frass().ifPresent(this::leftOpen);
        NitrousOxide n2o = new NitrousOxide(IpccTables.of(library, EDITION), builder, "frass", "any-climate");
        if (stored) {
            n2o.stored(n, Where.of("other-animals").manure("mms.solid-storage", "any-climate"));
        } else {
            builder.filled("frass/climate", Gap.GHG, Message.of("gap.frass-wet"));
            n2o.spread(n);
        }
        if (farm.frass().filter(InsectFarm.Frass::credited).isPresent()) {
            credit(n);
            if (!stored) {
                // Stored frass has no field in its account, so that the field of the fertiliser stays out too.
                n2o.replaced(n);
            }
        }
    }

    private void leftOpen(InsectFarm.Frass frass) {
        if (frass.fate().isEmpty()) {
            builder.filled("frass/fate", Gap.GHG, Message.of("gap.frass-stored"));
        }
        if (frass.kilograms().isEmpty()) {
            builder.filled("frass/kg", Gap.GHG, Message.of("gap.frass-balance"));
        }
    }

    /**
     * kg N in frass that the grower weighed, and the row by which it is known.
     *
     * @param kilograms empty where no frass was weighed or nothing is known of its nitrogen
     */
    record WeighedNitrogen(Optional<ActivityTerm> kilograms, Optional<String> row) {}

    /** The nitrogen of weighed frass, by the grower's own analysis or the published one of the species. */
    WeighedNitrogen weighed() {
        Optional<ActivityTerm> mass =
                farm.frass().flatMap(InsectFarm.Frass::kilograms).map(RecordedNumber::term);
        if (mass.isEmpty()) {
            return new WeighedNitrogen(Optional.empty(), Optional.empty());
        }
        Optional<RecordedNumber> own = farm.frass().orElseThrow().nitrogen();
        if (own.isPresent()) {
            return new WeighedNitrogen(Optional.of(mass.get().times(own.get().term())), Optional.empty());
        }
        Optional<BackgroundFactor> row = background.row("frass", farm.product().id(), "nitrogen");
        return new WeighedNitrogen(
                row.map(found -> mass.get().times(background.fraction(found).central())),
                row.map(BackgroundFactor::id));
    }

    private Optional<ActivityTerm> nitrogen() {
        Optional<InsectFarm.Frass> frass = farm.frass();
        WeighedNitrogen weighed = weighed();
        if (weighed.kilograms().isPresent()) {
            weighed.row()
                    .ifPresent(
                            row -> builder.filled("frass/nitrogen", Gap.GHG, Message.of("gap.frass-published"), row));
            return weighed.kilograms();
        }
        if (feedNitrogen.isEmpty() || larvalNitrogen.isEmpty()) {
            return Optional.empty();
        }
        String field = frass.isPresent() ? "frass/nitrogen" : "frass";
        Message balance = Message.of("gap.frass-nitrogen");
        if (unknown.isEmpty()) {
            builder.filled(field, Gap.GHG, balance);
        } else {
            builder.lineNotCounted(
                    Stage.MANURE,
                    Flux.FEED,
                    unknownMass,
                    field,
                    Gap.GHG,
                    Message.of("gap.frass-part", "balance", balance, "ingredients", String.join(", ", unknown)));
        }
        return Optional.of(ActivityTerm.derived(new WhatIsLeft(), List.of(feedNitrogen.get(), larvalNitrogen.get())));
    }

    /** Nothing comes out of nothing: what is in the larvae is taken off what is in the feed, and no more. */
    private record WhatIsLeft() implements TermFactor.RecordFormula {
        @Override
        public double of(double[] inputs) {
            return Math.max(inputs[0] - inputs[1], 0);
        }
    }

    private void credit(ActivityTerm n) {
        background
                .row("fertiliser_factors", "nitrogen-average", "ghg-production")
                .ifPresent(row -> {
                    builder.co2e(
                            Stage.CREDIT,
                            "fertiliser replaced",
                            n.times(-1).times(background.factor(row)),
                            row.gwp().orElse("not-stated"),
                            row.id());
                    builder.remark(Remark.METHOD, Message.of("remark.frass-credit"));
                });
    }
}
