package org.scalepan.production;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.Row;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.quantity.Amount;

/** Books a farm's feed: mass, dry matter, nitrogen, and what growing and milling it burdens. */
final class FeedBooks {
    private static final String FACTORS = "ingredient_factors";
    private static final String COMPOSITION = "ingredient_composition";
    /** kg protein per kg nitrogen in feed (IPCC, chapter 10, equation 10.32). */
    private static final double PROTEIN_PER_NITROGEN = 6.25;

    private final Library library;
    private final Background background;
    private final Ledger ledger;
    private final Optional<String> region;
    private Amount nitrogen = Amount.ZERO;
    private final Set<String> withoutNitrogen = new LinkedHashSet<>();
    private boolean nitrogenKnown;
    private boolean dryMatterKnown = true;

    FeedBooks(Library library, Ledger ledger, Optional<String> region) {
        this.library = library;
        this.background = Background.of(library);
        this.ledger = ledger;
        this.region = region;
    }

    void book(FeedUse feed) {
        Term mass = Term.of(feed.kilograms());
        ledger.flow(Stage.FEED, feed.ingredient(), Flux.FEED, mass);
        Optional<Term> dry = dryMatter(feed, mass);
        dry.ifPresentOrElse(
                term -> ledger.flow(Stage.FEED, feed.ingredient(), Flux.FEED_DRY_MATTER, term),
                () -> dryMatterKnown = false);
        nitrogen(feed, mass, dry);
        legality(feed.ingredient());
        burden(feed, mass, dry, Flux.CO2E, "ghg", feed.own().ghg());
        burden(feed, mass, dry, Flux.LAND, "land", feed.own().land());
        burden(feed, mass, dry, Flux.ENERGY, "energy", feed.own().energy());
        burden(feed, mass, dry, Flux.WATER, "water", feed.own().water());
    }

    /** kg N in those ingredients of a year whose protein is known; empty when there is feed and none of it is. */
    Optional<Amount> nitrogen() {
        return nitrogenKnown || withoutNitrogen.isEmpty() ? Optional.of(nitrogen) : Optional.empty();
    }

    /** The ingredients whose nitrogen is not known. */
    Set<String> withoutNitrogen() {
        return withoutNitrogen;
    }

    /** True when the dry matter of every ingredient is known. */
    boolean dryMatterKnown() {
        return dryMatterKnown;
    }

    private Optional<Term> dryMatter(FeedUse feed, Term mass) {
        if (feed.moisture().isPresent()) {
            return Optional.of(mass.times(Amount.ONE.minus(feed.moisture().get())));
        }
        Optional<BackgroundFactor> row = background.row(COMPOSITION, feed.ingredient(), "dry-matter");
        if (row.isEmpty()) {
            ledger.gap(
                    "feed/" + feed.ingredient() + "/moisture",
                    "its dry matter is not counted: none of " + feed.ingredient()
                            + " is in this library; give its moisture");
            return Optional.empty();
        }
        Factor share = background.fraction(row.get());
        ledger.gap(
                "feed/" + feed.ingredient() + "/moisture",
                "moisture %.0f %%, the published dry matter".formatted(100 * (1 - share.central())),
                row.get().id());
        return Optional.of(mass.times(share));
    }

    private void nitrogen(FeedUse feed, Term mass, Optional<Term> dry) {
        Optional<BackgroundFactor> row = background.row(COMPOSITION, feed.ingredient(), "protein");
        Optional<Term> base = row.flatMap(found -> base(found, mass, dry));
        if (base.isEmpty()) {
            withoutNitrogen.add(feed.ingredient());
            return;
        }
        nitrogenKnown = true;
        Term protein = base.get().times(background.fraction(row.orElseThrow()));
        ledger.flow(Stage.FEED, feed.ingredient(), Flux.FEED_PROTEIN, protein);
        nitrogen = nitrogen.plus(protein.middle().over(PROTEIN_PER_NITROGEN));
    }

    private void legality(String ingredient) {
        for (Row row : library.table("ingredients").rows()) {
            if (row.text("id").equals(ingredient) && row.optional("legality").isPresent()) {
                ledger.remark(
                        Remark.LEGALITY,
                        ingredient + " is " + row.text("legality").replace('-', ' ')
                                + ": not lawful as feed for farmed insects or livestock in the EU and Great Britain"
                                + row.optional("lawful_note")
                                        .map(note -> " (" + note + ")")
                                        .orElse("")
                                + ". Ask the veterinary authority.");
            }
        }
    }

    private void burden(
            FeedUse feed, Term mass, Optional<Term> dry, Flux flux, String indicator, Optional<Amount> own) {
        if (own.isPresent()) {
            Term term = mass.times(own.get());
            if (flux == Flux.CO2E) {
                ledger.co2e(Stage.FEED, feed.ingredient(), term, "not-stated");
            } else {
                ledger.flow(Stage.FEED, feed.ingredient(), flux, term);
            }
            return;
        }
        Burden burden = feed.burden().orElse(null);
        if (burden == Burden.BURDEN_FREE) {
            ledger.remark(
                    Remark.METHOD,
                    feed.ingredient()
                            + " is counted burden-free: a choice of method, not evidence that it has no burden");
            return;
        }
        if (burden == Burden.DISPLACED) {
            displaced(feed, mass, flux, indicator);
            return;
        }
        published(feed, mass, dry, flux, indicator, Optional.ofNullable(burden));
    }

    /** What was fed elsewhere must now be replaced there: its burden comes along. */
    private void displaced(FeedUse feed, Term mass, Flux flux, String indicator) {
        String instead = feed.displaces().orElseThrow();
        Term replaced = mass.times(feed.displacedPerKilogram().orElse(Amount.ONE));
        Optional<Term> dry =
                background.row(COMPOSITION, instead, "dry-matter").map(row -> replaced.times(background.fraction(row)));
        FeedUse other = new FeedUse(
                instead,
                replaced.certain(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                FarmRecords.OwnFactors.NONE);
        published(other, replaced, dry, flux, indicator, Optional.empty());
    }

    private void published(
            FeedUse feed, Term mass, Optional<Term> dry, Flux flux, String indicator, Optional<Burden> burden) {
        Optional<BackgroundFactor> row = choose(feed.ingredient(), indicator, burden);
        Optional<Term> base = row.flatMap(found -> base(found, mass, dry));
        if (row.isPresent() && base.isPresent()) {
            if (row.get().allocation().filter("cut-off"::equals).isPresent()) {
                ledger.remark(
                        Remark.METHOD,
                        feed.ingredient() + " is cut off as a residue: a choice of method, not evidence");
                return;
            }
            if (row.get().endsAtRetail()) {
                ledger.remark(
                        Remark.RETAIL_FEED,
                        "the " + indicator + " of " + feed.ingredient() + " is counted up to retail ("
                                + row.get().id() + "), not to the farm: it errs high");
            }
            Term term = base.get().times(background.factor(row.get()));
            if (flux == Flux.CO2E) {
                ledger.co2e(
                        Stage.FEED,
                        feed.ingredient(),
                        term,
                        row.get().gwp().orElse("not-stated"),
                        row.get().id());
            } else {
                ledger.flow(Stage.FEED, feed.ingredient(), flux, term, row.get().id());
            }
            return;
        }
        if (indicator.equals("land") && landOfCrop(feed.ingredient(), mass)) {
            return;
        }
        if (indicator.equals("ghg") || indicator.equals("land")) {
            ledger.gap(
                    "feed/" + feed.ingredient() + "/" + indicator,
                    "not counted: no published " + indicator + " of " + feed.ingredient()
                            + " fits; the figure is a lower bound (give your own factor, or burden)");
        }
    }

    /** Economic before mass before unnamed allocation; a cut-off zero last, because it is a choice. */
    private Optional<BackgroundFactor> choose(String ingredient, String indicator, Optional<Burden> burden) {
        List<String> order = List.of("economic", "mass", "not-stated", "system-expansion", "cut-off");
        List<BackgroundFactor> rows = background.rows(FACTORS, ingredient, indicator).stream()
                .filter(BackgroundFactor::isDefault)
                .toList();
        Optional<BackgroundFactor> asked = rows.stream()
                .filter(row -> burden.isPresent()
                        && row.allocation().filter(burden.get().id()::equals).isPresent())
                .findFirst();
        if (asked.isPresent()) {
            return asked;
        }
        Optional<BackgroundFactor> taken = rows.stream()
                .min(Comparator.comparingInt(
                        row -> order.indexOf(row.allocation().orElse("not-stated"))));
        if (burden.isPresent() && taken.isPresent()) {
            ledger.gap(
                    "feed/" + ingredient + "/burden",
                    "no " + indicator + " with " + burden.get().id() + " allocation is published; "
                            + taken.get().allocation().orElse("not-stated") + " is taken",
                    taken.get().id());
        }
        return taken;
    }

    /** m2·yr per kg = 10 ÷ yield in t/ha. */
    private boolean landOfCrop(String ingredient, Term mass) {
        Optional<Row> row = background.cropYield(ingredient, region);
        row.ifPresent(found -> ledger.flow(
                Stage.FEED,
                ingredient,
                Flux.LAND,
                mass.times(10 / found.number("value").orElseThrow()),
                found.text("id")));
        return row.isPresent();
    }

    private static Optional<Term> base(BackgroundFactor row, Term mass, Optional<Term> dry) {
        return row.per().equals("kg-dry-matter") ? dry : Optional.of(mass);
    }
}
