package org.scalepan.web;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Notebook;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;

/**
 * Reads one side of a question out of a body: a product by its name, or a farm or herd by its records. The records stand in a field
 * of their own, so that a name is never mistaken for a record.
 */
final class SideReading {
    private final Library library;
    private final SystemReading systems;
    private final boolean credit;

    /**
     * @param credit whether systems take off the credit for replaced fertiliser
     */
    SideReading(Library library, boolean credit) {
        this.library = library;
        this.systems = new SystemReading(library);
        this.credit = credit;
    }

    /** Reads whether the credit for replaced fertiliser is taken off; it is not unless asked. */
    static boolean credit(Input body) {
        return body.oneOf("credit", List.of("no", "yes")).filter("yes"::equals).isPresent();
    }

    /**
     * A side with the records that it was computed from, for questions that change them.
     *
     * @param notebook empty for a published product
     */
    record Read(Side side, Optional<Notebook> notebook) {}

    /** A side that must be given in one of its two fields; after a fault the result is empty and the fault is in the body. */
    Optional<Side> one(Input body, String productField, String systemField) {
        return read(body, productField, systemField).map(Read::side);
    }

    /** The same, with the records. */
    Optional<Read> read(Input body, String productField, String systemField) {
        boolean named = body.has(productField);
        boolean recorded = body.has(systemField);
        if (named == recorded) {
            body.fault(
                    named ? systemField : productField,
                    "give either " + productField + ", the name of a product, or " + systemField
                            + ", the records of a farm or herd" + (named ? ", not both" : ""));
            return Optional.empty();
        }
        return named
                ? body.text(productField)
                        .flatMap(name -> product(body, productField, name))
                        .map(side -> new Read(side, Optional.empty()))
                : body.object(systemField)
                        .flatMap(systems::notebook)
                        .map(notebook -> new Read(
                                new Side.Recorded(notebook.inventory(library), credit), Optional.of(notebook)));
    }

    /** The field that a side was given in. */
    static String field(Side side, String productField, String systemField) {
        return side instanceof Side.Recorded ? systemField : productField;
    }

    private Optional<Side> product(Input body, String field, String name) {
        return new ProductReading(library, body).written(field, name).map(Side.Published::new);
    }
}
