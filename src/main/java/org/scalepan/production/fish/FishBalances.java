package org.scalepan.production.fish;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.FarmBalance.BalanceKind;
import org.scalepan.production.FarmBalance.OutgoingContent;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.FeedContent;
import org.scalepan.production.Flux;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Remark;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * The balances of a fish farm: nitrogen and dry matter of the edible part of what grew against those of the feed. Heads and bones are not
 * counted, so that it errs to the side of the farm. In open water fish also eat what grows there, from fertiliser or without, which no record
 * has: more out than in is then possible, and only remarked.
 */
final class FishBalances {
    private static final double PROTEIN_PER_NITROGEN = 6.25;
    private static final Message NATURAL_FOOD = Message.of("balance.natural-food");

    private final Library library;
    private final FishFarm farm;
    private final FarmInventory books;
    private final InventoryBuilder builder;

    FishBalances(Library library, FishFarm farm, FarmInventory books, InventoryBuilder builder) {
        this.library = library;
        this.farm = farm;
        this.books = books;
        this.builder = builder;
    }

    void add() {
        builder.balance(balance(BalanceKind.NITROGEN, FunctionalUnit.KG_PROTEIN, PROTEIN_PER_NITROGEN));
        builder.balance(balance(BalanceKind.DRY_MATTER, FunctionalUnit.KG_DRY_MATTER, 1));
        builder.balance(FarmBalance.notMade(BalanceKind.GROSS_ENERGY, Message.of("balance.no-fish-energy")));
        feedConversion();
    }

    private FarmBalance balance(BalanceKind kind, FunctionalUnit content, double divisor) {
        Optional<FeedContent> in =
                books.feedContent(kind).filter(found -> found.atMost().central() > 0);
        Optional<OutgoingContent> out = edibleShare(content).map(share -> {
            ActivityTerm gained = gain().times(share / divisor);
            return new OutgoingContent(
                    gained, Message.of("balance.edible-growth", "grown", printed(gained.central())), List.of());
        });
        FarmBalance balance =
                FarmBalance.of(kind, in, out, Message.of("balance.fish-not-held", "kind", kind.message()));
        return farm.pond().usualKind().hasNaturalFood() ? balance.possibleFrom(NATURAL_FOOD) : balance;
    }

    /** kg live that grew in the year. */
    private ActivityTerm gain() {
        ActivityTerm harvested = farm.harvest().mass();
        return farm.stocked()
                .map(young -> ActivityTerm.sum(List.of(harvested, young.mass().times(-1))))
                .orElse(harvested);
    }

    /** kg of a content per kg live, of the edible part alone. */
    private Optional<Double> edibleShare(FunctionalUnit content) {
        UnitChain chain = UnitChain.of(
                library, farm.product(), farm.product().defaultForm(), "", ProteinBasis.CRUDE, true, Grade.SECONDARY);
        if (chain.path(FunctionalUnit.KG_LIVE, content) instanceof ChainPath.FoundPath found) {
            double share = 1;
            for (ChainStep step : found.steps()) {
                share /= step.multiplier();
            }
            return Optional.of(share);
        }
        return Optional.empty();
    }

    /** Feed per kg gained, held against what was published of the species. */
    private void feedConversion() {
        double gained = gain().central();
        if (gained <= 0) {
            builder.remark(
                    Remark.UNUSUAL,
                    Message.of(
                            "remark.no-growth",
                            "out",
                            printed(farm.harvest().kilograms()),
                            "in",
                            printed(farm.harvest().kilograms() - gained)));
            return;
        }
        double fed = builder.total(Flux.FEED);
        List<Row> published = published();
        if (fed == 0 || published.isEmpty()) {
            return;
        }
        DoubleSummaryStatistics ends = published.stream()
                .flatMap(row -> Stream.of(row.number("low"), row.number("value"), row.number("high")))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .summaryStatistics();
        double conversion = fed / gained;
        if (conversion < ends.getMin() || conversion > ends.getMax()) {
            builder.remark(
                    Remark.UNUSUAL,
                    Message.of(
                            conversion < ends.getMin() ? "remark.little-feed-of-fish" : "remark.much-feed-of-fish",
                            "feed",
                            printed(conversion),
                            "product",
                            farm.product().label(),
                            "least",
                            printed(ends.getMin()),
                            "most",
                            printed(ends.getMax())),
                    published.stream().map(row -> row.text("id")).toArray(String[]::new));
        }
    }

    private List<Row> published() {
        return library.table("feed_conversion").rows().stream()
                .filter(row -> row.text("product").equals(farm.product().id())
                        && row.text("per").equals("kg-live")
                        && !row.text("check").equals(Grade.MEMORY.id()))
                .toList();
    }

    private static Figure printed(double amount) {
        return new Figure(SignificantFigures.text(amount, 3));
    }
}
