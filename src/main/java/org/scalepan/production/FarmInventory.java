package org.scalepan.production;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.TransportUse;
import org.scalepan.words.Message;

/** Adds to the inventory everything of a farm's records that is not about the animals themselves. */
public final class FarmInventory {
    private final Background background;
    private final Library library;
    private final InventoryBuilder builder;
    private final FeedInventory feed;
    private final EnergyInventory energy;
    private final boolean feedRecorded;

    public FarmInventory(Library library, FarmRecords records, InventoryBuilder builder) {
        this.library = library;
        this.background = Background.of(library);
        this.builder = builder;
        this.feedRecorded = !records.feed().isEmpty() || records.none().contains("feed");
        this.feed = new FeedInventory(library, builder, records.region());
        this.energy = new EnergyInventory(library, builder, records);
    }

    /** Adds the records. */
    public void add(FarmRecords records) {
        for (FeedUse use : records.feed()) {
            feed.add(use);
        }
        feed.reportMissing();
        for (EnergyUse use : records.energy()) {
            if (use.site().isEmpty()) {
                builder.filled("energy/" + use.carrier() + "/for", Gap.OF_ENERGY, Message.verbatim("farm"));
            }
            energy.add(
                    use.forProcessing() ? Stage.PROCESSING : Stage.ENERGY,
                    use.carrier(),
                    use.amount().term());
        }
        if (!feedRecorded) {
            builder.notCounted("feed", Gap.OF_FEED, Message.of("gap.not-recorded"));
        }
        if (records.energy().isEmpty() && !records.none().contains("energy")) {
            builder.notCounted("energy", Gap.OF_ENERGY, Message.of("gap.not-recorded"));
        }
        records.water()
                .ifPresentOrElse(
                        this::water,
                        () -> builder.notCounted(
                                "water_m3", List.of("water", "water-on-farm"), Message.of("gap.not-recorded")));
        records.transport().forEach(this::transport);
        if (!records.transport().isEmpty()) {
            builder.notCounted("transport/energy", List.of("energy"), Message.of("gap.no-transport-energy"));
        }
        records.materials().forEach(this::material);
        site(records);
        if (records.transport().isEmpty() && !records.none().contains("transport")) {
            builder.cutOff("transport", List.of("energy", "ghg"), Message.of("gap.not-recorded"));
        }
        if (records.materials().isEmpty() && !records.none().contains("materials")) {
            builder.cutOff("materials", List.of("energy", "ghg"), Message.of("gap.not-recorded"));
        } else if (!records.materials().isEmpty()) {
            builder.cutOff("materials/energy", List.of("energy"), Message.of("gap.materials-gases-only"));
        }
    }

    private void water(RecordedNumber cubicMetres) {
        builder.flow(Stage.WATER, "water", Flux.WATER, cubicMetres.term());
        builder.flow(Stage.WATER, "water", Flux.WATER_ON_FARM, cubicMetres.term());
    }

    /** Adds heat that a process needs, from a carrier. */
    public void heat(String carrier, ActivityTerm megajoules) {
        energy.addMegajoules(Stage.PROCESSING, carrier, megajoules);
    }

    /**
     * Adds heat that keeps the animals warm.
     *
     * @param rows rows of the library that the demand rests on
     */
    public void roomHeat(String carrier, ActivityTerm megajoules, List<String> rows) {
        builder.citing(rows, () -> energy.addMegajoules(Stage.ENERGY, carrier, megajoules));
    }

    /** kg N in the feed of a year, as far as it is known, with the library's contents in the middle; none where no feed is recorded. */
    public Optional<ActivityTerm> feedNitrogen() {
        return feedRecorded ? feed.nitrogen() : Optional.empty();
    }

    /** The ingredients whose nitrogen is not in {@link #feedNitrogen}, because it is not known. */
    public List<String> feedWithoutNitrogen() {
        return List.copyOf(feed.withoutNitrogen());
    }

    /** kg of feed a year in {@link #feedWithoutNitrogen}. */
    public double feedMassWithoutNitrogen() {
        return feed.massWithoutNitrogen();
    }

    /** kg dry matter in the feed of a year, when it is known. */
    public OptionalDouble feedDryMatter() {
        return feed.dryMatterKnown() ? OptionalDouble.of(builder.total(Flux.FEED_DRY_MATTER)) : OptionalDouble.empty();
    }

    /** What the feed of a year holds of something conserved; empty where no feed is recorded. */
    public Optional<FeedContent> feedContent(FarmBalance.BalanceKind kind) {
        return feedRecorded ? Optional.of(feed.content(kind)) : Optional.empty();
    }

    private void site(FarmRecords records) {
        ActivityTerm area = ActivityTerm.sum(List.of(
                RecordedNumber.termOr(records.buildingArea(), 0), RecordedNumber.termOr(records.yardArea(), 0)));
        if (records.buildingArea().isEmpty() && records.yardArea().isEmpty()) {
            builder.notCounted("building_m2, yard_m2", List.of("land"), Message.of("gap.not-recorded"));
        }
        if (area.central() > 0 && records.buildingArea().isEmpty()) {
            builder.filled("building_m2", List.of("land"), Message.verbatim("0"));
        }
        if (area.central() > 0 && records.yardArea().isEmpty()) {
            builder.filled("yard_m2", List.of("land"), Message.verbatim("0"));
        }
        builder.flow(Stage.SITE, "buildings and yard", Flux.LAND, area);
    }

    private void transport(TransportUse use) {
        boolean found = false;
        for (String quantity : List.of("ghg-use", "ghg-upstream")) {
            Optional<BackgroundFactor> row = modes(use.mode()).stream()
                    .flatMap(mode -> background.rows("transport_factors", mode, quantity).stream()
                            .filter(candidate ->
                                    candidate.isDefault() && candidate.per().equals("t-km")))
                    .findFirst();
            if (row.isPresent()) {
                found = true;
                builder.co2e(
                        Stage.TRANSPORT,
                        use.mode(),
                        use.tonneKilometres().term().times(background.factor(row.get())),
                        row.get().gwp().orElse("not-stated"),
                        row.get().id());
            }
        }
        if (!found) {
            builder.notCounted("transport/" + use.mode(), Gap.GHG, Message.of("gap.no-transport-factor"));
        }
    }

    /** The mode itself, then the broader one that includes it. */
    private List<String> modes(String mode) {
        Optional<String> broader = library.row("transport_modes", mode).flatMap(row -> row.optional("broader"));
        return broader.map(other -> List.of(mode, other)).orElse(List.of(mode));
    }

    private void material(MaterialUse use) {
        Optional<BackgroundFactor> row = background.row("material_factors", use.material(), "ghg");
        Optional<String> proxy =
                library.row("materials", use.material()).flatMap(material -> material.optional("proxy"));
        if (row.isEmpty() && proxy.isPresent()) {
            row = background.row("material_factors", proxy.get(), "ghg");
            builder.filled("materials/" + use.material(), Gap.GHG, Message.of("gap.counted-as", "other", proxy.get()));
        }
        if (row.isEmpty()) {
            builder.notCounted("materials/" + use.material(), Gap.GHG, Message.of("gap.no-factor"));
            return;
        }
        if (use.years().isEmpty()) {
            builder.filled("materials/" + use.material() + "/years", Gap.GHG, Message.of("gap.worn-out"));
        }
        builder.co2e(
                Stage.MATERIALS,
                use.material(),
                use.kilograms()
                        .term()
                        .over(RecordedNumber.termOr(use.years(), 1))
                        .times(background.factor(row.get())),
                row.get().gwp().orElse("not-stated"),
                row.get().id());
    }
}
