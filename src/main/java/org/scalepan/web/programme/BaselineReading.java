package org.scalepan.web.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.Side;
import org.scalepan.ask.programme.Baseline;
import org.scalepan.ask.programme.Shares;
import org.scalepan.ask.programme.Use;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.input.Input;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.http.Limits;

/** Reads what a programme displaces: products or systems, their shares, and their prices. */
final class BaselineReading {
    private static final double MOST = 1e12;

    private final Input body;
    private final Use use;
    private final SideReading sides;

    BaselineReading(Input body, Use use, SideReading sides) {
        this.body = body;
        this.use = use;
        this.sides = sides;
    }

    /** One entry before its share of the whole is known. */
    private record BaselineEntry(
            Optional<Side> side,
            OptionalDouble share,
            FunctionalUnit unit,
            OptionalDouble price,
            OptionalDouble imported) {}

    /**
     * The baseline; empty after an error, which is recorded in the body.
     *
     * @param currency that of all prices of the question
     */
    Optional<Baseline> baseline(Optional<String> currency) {
        int before = body.faults().size();
        List<Input> given = body.objects("baseline", Limits.BASELINE_PARTS);
        if (body.faults().size() > before) {
            return Optional.empty();
        }
        if (given.isEmpty()) {
            body.fault(
                    "baseline",
                    body.has("baseline")
                            ? "baseline must name at least one product or system"
                            : "baseline is missing: what is displaced, as a list of products or systems with shares");
            return Optional.empty();
        }
        List<BaselineEntry> entries =
                given.stream().map(one -> entry(one, currency)).toList();
        Optional<List<Double>> shares =
                Shares.of(entries.stream().map(BaselineEntry::share).toList());
        if (shares.isEmpty()) {
            body.fault("baseline", "the shares of baseline must add to 1; one entry may leave its share out");
        }
        if (shares.isEmpty() || entries.stream().anyMatch(entry -> entry.side().isEmpty())) {
            return Optional.empty();
        }
        List<Baseline.BaselinePart> parts = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            BaselineEntry entry = entries.get(i);
            parts.add(new Baseline.BaselinePart(
                    entry.side().orElseThrow(), shares.get().get(i), entry.unit(), entry.price(), entry.imported()));
        }
        body.resolve(
                "baseline",
                parts.stream()
                        .map(part -> part.side().written() + " " + SevenDigits.plain(part.share()))
                        .toList());
        return Optional.of(new Baseline(parts));
    }

    private BaselineEntry entry(Input given, Optional<String> currency) {
        Optional<Side> side = sides.one(given, "product", "system");
        side.ifPresent(found -> use.obstacleToDisplacement(found.product())
                .ifPresent(why -> given.fault(SideReading.field(found, "product", "system"), why)));
        OptionalDouble share = given.number("share", 0, 1);
        FunctionalUnit unit = ProgrammeReading.unit(given);
        OptionalDouble price = given.number("price_per_kg", 0, MOST);
        OptionalDouble imported = given.number("imported_share", 0, 1);
        if (imported.isPresent() && !given.has("price_per_kg")) {
            given.fault("price_per_kg", "price_per_kg is missing: imported_share is of the value of what is displaced");
        }
        // Prices in two currencies would have to be converted, which the service does not do.
        Optional<String> own = given.text("currency");
        if (own.isPresent() && !own.equals(currency)) {
            given.fault("currency", "all prices must be in one currency; nothing is converted");
        }
        given.close();
        return new BaselineEntry(side, share, unit, price, imported);
    }
}
