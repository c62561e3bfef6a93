package org.scalepan.production.herd;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
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
import org.scalepan.production.InventoryBuilder;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * The balances of a herd: nitrogen and dry matter of milk, eggs and the edible part of live weight against those of the feed. Bones,
 * hides and manure are not counted, so that it errs to the side of the farm. What animals graze or find is on no record, so that no
 * balance is made unless all manure falls in housing.
 */
final class HerdBalances {
    private static final double PROTEIN_PER_NITROGEN = 6.25;
    private static final String PASTURE = "mms.pasture";

    private final Library library;
    private final Herd herd;
    private final FarmInventory feed;
    private final InventoryBuilder builder;

    HerdBalances(Library library, Herd herd, FarmInventory feed, InventoryBuilder builder) {
        this.library = library;
        this.herd = herd;
        this.feed = feed;
        this.builder = builder;
    }

    void add() {
        builder.balance(balance(BalanceKind.NITROGEN, FunctionalUnit.KG_PROTEIN, PROTEIN_PER_NITROGEN));
        builder.balance(balance(BalanceKind.DRY_MATTER, FunctionalUnit.KG_DRY_MATTER, 1));
        builder.balance(FarmBalance.notMade(BalanceKind.GROSS_ENERGY, Message.of("balance.no-livestock-energy")));
    }

    private FarmBalance balance(BalanceKind kind, FunctionalUnit content, double divisor) {
        boolean housed = !herd.manure().isEmpty()
                && herd.manure().stream()
                        .noneMatch(share ->
                                share.system().equals(PASTURE) && share.share().central() > 0);
        if (!housed) {
            return FarmBalance.notMade(
                    kind,
                    herd.manure().isEmpty()
                            ? Message.of("balance.housing-not-recorded")
                            : Message.of("balance.grazing-not-recorded"));
        }
        Optional<FeedContent> in =
                feed.feedContent(kind).filter(found -> found.atMost().central() > 0);
        List<ActivityTerm> parts = herd.yields().stream()
                .flatMap(yield -> part(yield, content).stream())
                .map(part -> part.over(divisor))
                .toList();
        ActivityTerm sum = ActivityTerm.sum(parts);
        Optional<OutgoingContent> out = parts.isEmpty()
                ? Optional.empty()
                : Optional.of(new OutgoingContent(
                        sum,
                        Message.of("balance.sold", "sold", new Figure(SignificantFigures.text(sum.central(), 3))),
                        List.of()));
        return FarmBalance.of(kind, in, out, Message.of("balance.sold-not-held", "kind", kind.message()));
    }

    private Optional<ActivityTerm> part(Herd.Yield yield, FunctionalUnit content) {
        return HerdOutput.product(herd.category(), yield.kind())
                .flatMap(id -> Optional.ofNullable(library.products().get(id)))
                .flatMap(product -> share(
                        product,
                        yield.kind() == Herd.AnimalKind.LIVE ? FunctionalUnit.KG_LIVE : FunctionalUnit.KG_PRODUCT,
                        content))
                .map(share -> yield.kilograms().term().times(share));
    }

    /** kg of the content per unit of the product. */
    private Optional<Double> share(Product product, FunctionalUnit unit, FunctionalUnit content) {
        UnitChain chain =
                UnitChain.of(library, product, product.defaultForm(), "", ProteinBasis.CRUDE, true, Grade.SECONDARY);
        if (chain.path(unit, content) instanceof ChainPath.FoundPath found) {
            double share = 1;
            for (ChainStep step : found.steps()) {
                share /= step.multiplier();
            }
            return Optional.of(share);
        }
        return Optional.empty();
    }
}
