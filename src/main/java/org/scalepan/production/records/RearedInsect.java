package org.scalepan.production.records;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.input.Input;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.StatedComposition;
import org.scalepan.production.insects.KnownInsects;

/**
 * What a farm rears: an insect of the library by its id, with or without its own {@code composition}; or one that the library does not
 * know, by its name, with what it holds.
 */
record RearedInsect(Product product, StatedComposition composition) {
    private static final String PRODUCT = "product";
    private static final String COMPOSITION = "composition";

    /** Empty after an error, which is recorded in the body. */
    static Optional<RearedInsect> read(Library library, Input body, RecordNumbers numbers) {
        Optional<StatedComposition> stated = body.object(COMPOSITION).map(given -> {
            StatedComposition read = contents(
                    given,
                    numbers,
                    RecordField.COMPOSITION_DRY_MATTER,
                    RecordField.COMPOSITION_PROTEIN,
                    RecordField.COMPOSITION_NITROGEN,
                    RecordField.COMPOSITION_FAT);
            given.close();
            return read;
        });
        if (!body.isObject(PRODUCT)) {
            return known(library, body)
                    .map(product -> new RearedInsect(product, stated.orElse(StatedComposition.NONE)));
        }
        if (body.has(COMPOSITION)) {
            body.fault(
                    COMPOSITION,
                    "composition goes with an id as product; product with a name says itself what it holds");
        }
        return body.object(PRODUCT).flatMap(given -> unknown(given, numbers));
    }

    private static Optional<Product> known(Library library, Input body) {
        if (!body.has(PRODUCT)) {
            body.fault(
                    PRODUCT,
                    "product is missing: an id, or an object with the name of an insect that this library does not know",
                    RecordVocabulary.of(library).insects());
            return Optional.empty();
        }
        Optional<String> id = body.text(PRODUCT);
        Optional<Product> found = id.filter(RecordVocabulary.of(library).insects()::contains)
                .flatMap(name -> Optional.ofNullable(library.products().get(name)));
        if (id.isPresent() && found.isEmpty()) {
            body.unknownBut(
                    PRODUCT,
                    id.get(),
                    "; an insect that this library does not know is an object: {\"name\": ..., \"dry_matter\": ..., \"protein\": ...}",
                    RecordVocabulary.of(library).insects(),
                    KnownInsects.of(library).near(id.get()));
        }
        return found;
    }

    private static Optional<RearedInsect> unknown(Input given, RecordNumbers numbers) {
        Optional<String> name = given.text("name");
        if (!given.has("name")) {
            given.fault("name", "name is missing: what the insect is called");
        }
        given.oneOf("group", List.of("insect"));
        StatedComposition read = contents(
                given,
                numbers,
                RecordField.PRODUCT_DRY_MATTER,
                RecordField.PRODUCT_PROTEIN,
                RecordField.PRODUCT_NITROGEN,
                RecordField.PRODUCT_FAT);
        given.close();
        return name.map(spoken -> new RearedInsect(Product.ofRecords(spoken), read));
    }

    private static StatedComposition contents(
            Input given,
            RecordNumbers numbers,
            RecordField dryMatter,
            RecordField protein,
            RecordField nitrogen,
            RecordField fat) {
        Optional<RecordedNumber> dry = numbers.number(given, dryMatter);
        StatedComposition read = new StatedComposition(
                dry, numbers.number(given, protein), numbers.number(given, nitrogen), numbers.number(given, fat));
        read.obstacle().ifPresent(given::fault);
        return read;
    }
}
