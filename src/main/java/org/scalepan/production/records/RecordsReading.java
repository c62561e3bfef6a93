package org.scalepan.production.records;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.production.Background;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.OwnFactors;
import org.scalepan.production.FarmRecords.Site;
import org.scalepan.production.FarmRecords.TransportUse;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.SoldByProducts;

/** Reads what every farm's records have: feed, energy, water, transport, materials, area, co-products. */
final class RecordsReading {
    private static final List<String> BURDENS =
            Stream.of(Burden.values()).map(Burden::id).toList();

    private final Library library;
    private final RecordVocabulary vocabulary;
    private final RecordNumbers numbers;

    RecordsReading(Library library, RecordNumbers numbers) {
        this.library = library;
        this.numbers = numbers;
        this.vocabulary = RecordVocabulary.of(library);
    }

    /** @param name what the records call the farm or herd */
    FarmRecords read(Input body, String name) {
        return new FarmRecords(
                name,
                body.oneOf("region", vocabulary.regions()),
                year(body),
                body.objects("feed", RecordLimits.ENTRIES).stream()
                        .map(this::feed)
                        .toList(),
                body.objects("energy", RecordLimits.ENTRIES).stream()
                        .map(this::energy)
                        .toList(),
                numbers.number(body, RecordField.WATER),
                body.objects("transport", RecordLimits.ENTRIES).stream()
                        .map(this::transport)
                        .toList(),
                body.objects("materials", RecordLimits.ENTRIES).stream()
                        .map(this::material)
                        .toList(),
                numbers.number(body, RecordField.BUILDING),
                numbers.number(body, RecordField.YARD),
                body.objects("co_products", 20).stream().map(this::coProduct).toList(),
                numbers.number(body, RecordField.GRID_GHG),
                FarmRecords.LISTS.stream().filter(body::isEmptyList).collect(Collectors.toUnmodifiableSet()));
    }

    /** The grid and the tables are read by the year, so that it is one number. */
    private static OptionalInt year(Input body) {
        RecordField field = RecordField.YEAR;
        OptionalDouble given = body.number(field.field(), field.least(), field.most());
        if (given.isEmpty()) {
            return OptionalInt.empty();
        }
        double year = given.getAsDouble();
        if (year != Math.rint(year)) {
            body.fault("year", "year must be a whole number");
        }
        return OptionalInt.of((int) year);
    }

    private FeedUse feed(Input body) {
        String ingredient = ingredient(body);
        RecordedNumber kilograms = numbers.needNumber(body, RecordField.FEED_KG);
        Optional<RecordedNumber> moisture = numbers.number(body, RecordField.FEED_MOISTURE);
        Optional<RecordedNumber> nitrogen = numbers.number(body, RecordField.FEED_NITROGEN);
        if (nitrogen.isPresent()
                && moisture.isEmpty()
                && !body.has("moisture")
                && Background.of(library)
                        .row("ingredient_composition", ingredient, "dry-matter")
                        .isEmpty()) {
            body.fault(
                    "moisture",
                    "moisture is missing: nitrogen is per kg dry matter, and no dry matter of " + ingredient
                            + " is in this library");
        }
        Optional<Burden> burden = body.oneOf("burden", BURDENS).flatMap(Burden::of);
        Optional<String> displaces = body.oneOf("displaces", vocabulary.ingredients());
        Optional<RecordedNumber> displaced = numbers.number(body, RecordField.FEED_DISPLACED);
        boolean instead = burden.filter(Burden.DISPLACED::equals).isPresent();
        boolean beside = burden.filter(Burden.BURDEN_FREE::equals).isPresent();
        if (instead ? displaces.isEmpty() : displaces.isPresent() && !beside) {
            body.fault(
                    "displaces",
                    "displaces goes with the burdens displaced and burden-free: name the ingredient used instead");
        }
        OwnFactors own = new OwnFactors(
                numbers.number(body, RecordField.FEED_GHG),
                numbers.number(body, RecordField.FEED_LAND),
                numbers.number(body, RecordField.FEED_ENERGY),
                numbers.number(body, RecordField.FEED_WATER));
        FeedUse feed = new FeedUse(ingredient, kilograms, moisture, nitrogen, burden, displaces, displaced, own);
        if (!body.has("burden")) {
            SoldByProducts.of(library).obstacle(feed).ifPresent(why -> body.fault(why.field(), why.text(), BURDENS));
        }
        body.close();
        return feed;
    }

    /** An id of the library, or the name of what it does not know. */
    private String ingredient(Input body) {
        if (!body.has("name")) {
            return body.needOneOf("ingredient", vocabulary.ingredients()).orElse("");
        }
        if (body.has("ingredient")) {
            body.fault("name", "give ingredient, an id, or name, a residue that this library does not know; not both");
            return "";
        }
        Optional<String> name = body.text("name");
        List<String> same = name.stream().flatMap(given -> same(given).stream()).toList();
        if (!same.isEmpty()) {
            body.unclear(
                    "name",
                    "\"" + name.orElseThrow() + "\" is in this library: give its id as ingredient, " + same.get(0),
                    same);
        }
        return name.orElse("");
    }

    /** The ingredient that has this very name. */
    private Optional<String> same(String name) {
        return vocabulary.ingredients().contains(name)
                ? Optional.of(name)
                : Optional.ofNullable(vocabulary.ingredientNames().get(name.toLowerCase(Locale.ROOT)));
    }

    private EnergyUse energy(Input body) {
        String carrier = body.needOneOf("carrier", vocabulary.energyCarriers()).orElse("");
        RecordedNumber amount = numbers.needNumber(body, RecordField.ENERGY_AMOUNT);
        Optional<Site> site = body.oneOf("for", List.of("farm", "processing"))
                .map(name -> Site.valueOf(name.toUpperCase(Locale.ROOT)));
        body.close();
        return new EnergyUse(carrier, amount, site);
    }

    private TransportUse transport(Input body) {
        String mode = body.needOneOf("mode", vocabulary.transportModes()).orElse("");
        RecordedNumber work = numbers.needNumber(body, RecordField.TRANSPORT_WORK);
        body.close();
        return new TransportUse(mode, work);
    }

    private MaterialUse material(Input body) {
        String material = body.needOneOf("material", vocabulary.materials()).orElse("");
        RecordedNumber kilograms = numbers.needNumber(body, RecordField.MATERIAL_KG);
        Optional<RecordedNumber> years = numbers.number(body, RecordField.MATERIAL_YEARS);
        body.close();
        return new MaterialUse(material, kilograms, years);
    }

    private CoProduct coProduct(Input body) {
        String name = body.text("name").orElse("co-product");
        RecordedNumber kilograms = numbers.needNumber(body, RecordField.CO_PRODUCT_KG);
        Optional<RecordedNumber> price = numbers.number(body, RecordField.CO_PRODUCT_PRICE);
        body.close();
        return new CoProduct(name, kilograms, price);
    }
}
