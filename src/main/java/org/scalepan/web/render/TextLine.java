package org.scalepan.web.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.cite.PlainText;
import org.scalepan.cite.Reference;

/** One line of running text. */
public record TextLine(List<Run> runs) {
    public TextLine {
        runs = List.copyOf(runs);
    }

    /** A run of text in one style. */
    sealed interface Run {
        /** Text of any origin, shown literally. */
        record Plain(String text) implements Run {}

        /** A label, in the service's own words. */
        record Strong(String text) implements Run {}

        /** An address to be opened or copied: {@code http}, {@code https} or a path of this service. */
        record Address(String address) implements Run {}
    }

    /** The text alone. */
    public String plain() {
        return runs.stream()
                .map(run -> run instanceof Run.Plain plain
                        ? plain.text()
                        : run instanceof Run.Strong strong ? strong.text() : ((Run.Address) run).address())
                .collect(Collectors.joining());
    }

    public static TextLine of(String text) {
        return new TextLine(List.of(new Run.Plain(text)));
    }

    /** {@code Verdict: fails}, with the label emphasised. */
    static TextLine labelled(String label, String text) {
        return new TextLine(List.of(new Run.Strong(label + ":"), new Run.Plain(" " + text)));
    }

    static TextLine link(String address) {
        return new TextLine(List.of(new Run.Address(address)));
    }

    /** A full reference with its address. */
    static TextLine of(Reference reference) {
        return of("", reference);
    }

    /** The same behind its number, as in {@code [3]}, and before what the record of it did not have. */
    static TextLine numbered(int number, Reference reference) {
        List<Run> runs = new ArrayList<>(of("[" + number + "] ", reference).runs());
        if (!reference.missing().isEmpty()) {
            runs.add(new Run.Plain(" (not known: " + String.join(", ", reference.missing()) + ")"));
        }
        return new TextLine(runs);
    }

    private static TextLine of(String before, Reference reference) {
        List<Run> runs = new ArrayList<>(List.of(new Run.Plain(before + PlainText.withoutLink(reference))));
        reference.link().ifPresent(address -> {
            runs.add(new Run.Plain(" "));
            runs.add(new Run.Address(address));
        });
        return new TextLine(runs);
    }
}
