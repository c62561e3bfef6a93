package org.scalepan.exchange.read;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.production.records.SystemReading;

/** Reads one side of a question from a body: a product by its name, or a farm or herd by its records, in separate fields. */
public final class SideReading {
    private final Library library;
    private final SystemReading systems;
    private final boolean credit;

    /**
     * @param credit whether systems take off the credit for replaced fertiliser
     */
    public SideReading(Library library, boolean credit) {
        this.library = library;
        this.systems = new SystemReading(library);
        this.credit = credit;
    }

    /** Reads whether the credit for replaced fertiliser is subtracted; not by default. */
    public static boolean credit(Input body) {
        return body.oneOf("credit", List.of("no", "yes")).filter("yes"::equals).isPresent();
    }

    /**
     * A side with the records that it was computed from, for questions that change them.
     *
     * @param notebook empty for a published product
     */
    public record Read(Side side, Optional<EditableRecords> notebook) {}

    /** A required side, given in one of its two fields; empty after an error, which is recorded in the body. */
    public Optional<Side> one(Input body, String productField, String systemField) {
        return read(body, productField, systemField).map(Read::side);
    }

    /** The same, with the records. */
    public Optional<Read> read(Input body, String productField, String systemField) {
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

    /** The field in which a side was given. */
    public static String field(Side side, String productField, String systemField) {
        return side instanceof Side.Recorded ? systemField : productField;
    }

    private Optional<Side> product(Input body, String field, String name) {
        return new ProductReading(library, body).written(field, name).map(Side.PublishedSide::new);
    }
}
