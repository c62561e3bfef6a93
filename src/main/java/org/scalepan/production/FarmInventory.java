package org.scalepan.production;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.TransportUse;

/** Books everything of a farm's records that is not about the animals themselves. */
public final class FarmInventory {
    private final Background background;
    private final Library library;
    private final InventoryBuilder ledger;
    private final FeedInventory feed;
    private final EnergyInventory energy;
    private final boolean feedRecorded;

    public FarmInventory(Library library, FarmRecords records, InventoryBuilder ledger) {
        this.library = library;
        this.background = Background.of(library);
        this.ledger = ledger;
        this.feedRecorded = !records.feed().isEmpty() || records.none().contains("feed");
        this.feed = new FeedInventory(library, ledger, records.region());
        this.energy = new EnergyInventory(library, ledger, records);
    }

    /** Books the records. */
    public void book(FarmRecords records) {
        for (FeedUse use : records.feed()) {
            feed.book(use);
        }
        feed.reportMissing();
        for (EnergyUse use : records.energy()) {
            if (use.site().isEmpty()) {
                ledger.filled("energy/" + use.carrier() + "/for", Gap.OF_ENERGY, "farm");
            }
            energy.book(use.forProcessing() ? Stage.PROCESSING : Stage.ENERGY, use.carrier(), use.amount());
        }
        if (!feedRecorded) {
            ledger.notCounted("feed", Gap.OF_FEED, "not recorded, not counted");
        }
        if (records.energy().isEmpty() && !records.none().contains("energy")) {
            ledger.notCounted("energy", Gap.OF_ENERGY, "not recorded, not counted");
        }
        records.water()
                .ifPresentOrElse(
                        water -> ledger.flow(Stage.WATER, "water", Flux.WATER, ActivityTerm.of(water)),
                        () -> ledger.notCounted("water_m3", Set.of("water"), "not recorded, not counted"));
        records.transport().forEach(this::transport);
        records.materials().forEach(this::material);
        site(records);
        if (records.transport().isEmpty() && !records.none().contains("transport")) {
            ledger.cutOff("transport", Gap.GHG, "not recorded, not counted");
        }
        if (records.materials().isEmpty() && !records.none().contains("materials")) {
            ledger.cutOff("materials", Gap.GHG, "not recorded, not counted");
        }
    }

    /** Books heat that a process needs, from a carrier. */
    public void heat(String carrier, ActivityTerm megajoules) {
        energy.bookMegajoules(Stage.PROCESSING, carrier, megajoules);
    }

    /** kg N in the feed of a year, as far as it is known; none where no feed is recorded. */
    public OptionalDouble feedNitrogen() {
        return feedRecorded ? feed.nitrogen() : OptionalDouble.empty();
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
        return feed.dryMatterKnown() ? OptionalDouble.of(ledger.total(Flux.FEED_DRY_MATTER)) : OptionalDouble.empty();
    }

    private void site(FarmRecords records) {
        double area = records.buildingArea().orElse(0) + records.yardArea().orElse(0);
        if (records.buildingArea().isEmpty() && records.yardArea().isEmpty()) {
            ledger.notCounted("building_m2, yard_m2", Set.of("land"), "not recorded, not counted");
        }
        if (area > 0 && records.buildingArea().isEmpty()) {
            ledger.filled("building_m2", Set.of("land"), "0");
        }
        if (area > 0 && records.yardArea().isEmpty()) {
            ledger.filled("yard_m2", Set.of("land"), "0");
        }
        ledger.flow(Stage.SITE, "buildings and yard", Flux.LAND, ActivityTerm.of(area));
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
                ledger.co2e(
                        Stage.TRANSPORT,
                        use.mode(),
                        ActivityTerm.of(use.tonneKilometres()).times(background.factor(row.get())),
                        row.get().gwp().orElse("not-stated"),
                        row.get().id());
            }
        }
        if (!found) {
            ledger.notCounted(
                    "transport/" + use.mode(), Gap.GHG, "not counted: no factor per tonne-kilometre in this library");
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
            ledger.filled("materials/" + use.material(), Gap.GHG, "counted as " + proxy.get());
        }
        if (row.isEmpty()) {
            ledger.notCounted("materials/" + use.material(), Gap.GHG, "not counted: no factor in this library");
            return;
        }
        if (use.years().isEmpty()) {
            ledger.filled("materials/" + use.material() + "/years", Gap.GHG, "1: worn out within the year");
        }
        ledger.co2e(
                Stage.MATERIALS,
                use.material(),
                ActivityTerm.of(use.kilograms() / use.years().orElse(1)).times(background.factor(row.get())),
                row.get().gwp().orElse("not-stated"),
                row.get().id());
    }
}
