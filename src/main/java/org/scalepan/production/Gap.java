package org.scalepan.production;

import java.util.List;
import org.scalepan.factors.Boundary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * A field that the records leave open, and the named default that filled it, or that it is not counted.
 *
 * @param field the field, as in the request
 * @param kind whether a default filled it
 * @param indicators ids of the indicators whose figures it can change, each once, in alphabetical order
 * @param with the default in words, or what is not counted and why
 * @param rows the rows of the library behind the default; empty when nothing is counted
 * @param boundary the narrowest system boundary within which it matters
 * @param landUseChange true where it is about emissions of land-use change, and matters only where those are asked for
 */
public record Gap(
        String field,
        Kind kind,
        List<String> indicators,
        Message with,
        List<String> rows,
        Boundary boundary,
        boolean landUseChange) {
    /** Begins the field of the gases that the animals themselves give off, where the species was never measured. */
    public static final String ANIMAL_GASES = "direct gases of ";
    /** Greenhouse gases alone. */
    public static final List<String> GHG = List.of("ghg");
    /** What an energy carrier adds to. */
    public static final List<String> OF_ENERGY = List.of("energy", "energy-on-farm", "ghg", "land");
    /** What growing and milling feed adds to. */
    public static final List<String> OF_FEED_BURDEN = List.of("energy", "ghg", "land", "water");
    /** What feed adds to, by its burden or itself. */
    public static final List<String> OF_FEED = List.of("energy", "feed", "feed-dry-matter", "ghg", "land", "water");
    /** Every indicator: for what changes the output that a burden is divided by. */
    public static final List<String> ALL =
            List.of("energy", "energy-on-farm", "feed", "feed-dry-matter", "ghg", "land", "water", "water-on-farm");

    /** What fills a field that the records leave open. */
    public enum Kind {
        /** A named default. */
        FILLED("filled"),
        /** Nothing, and it is required: the figure is a lower bound. */
        NOT_COUNTED("not-counted"),
        /** Nothing, and it is too small or too far from the animals to be required: no bound follows. */
        CUT_OFF("cut-off");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    public Gap {
        indicators = isSorted(indicators)
                ? List.copyOf(indicators)
                : indicators.stream().distinct().sorted().toList();
        rows = List.copyOf(rows);
    }

    Gap(String field, Kind kind, List<String> indicators, Message with, List<String> rows) {
        this(field, kind, indicators, with, rows, Boundary.FARM_GATE, false);
    }

    /** Something required that is not counted, up to the farm gate. */
    public static Gap notCounted(String field, List<String> indicators, Message why) {
        return new Gap(field, Kind.NOT_COUNTED, indicators, why, List.of());
    }

    /** Something left out that no figure is required to have. */
    public static Gap cutOff(String field, List<String> indicators, Message why) {
        return new Gap(field, Kind.CUT_OFF, indicators, why, List.of());
    }

    /** The default in English words, or what is not counted and why. */
    public String filledWith() {
        return with.english();
    }

    /** The field in a sentence: {@code feed (pineapple-residue, ghg)}. */
    public Message fieldMessage() {
        if (field.startsWith(ANIMAL_GASES)) {
            return Message.of("field.animal-gases", "product", field.substring(ANIMAL_GASES.length()));
        }
        int slash = field.indexOf('/');
        if (slash < 0) {
            return Message.of("field", "name", fieldName(field));
        }
        return Message.of(
                "field.part",
                "name",
                fieldName(field.substring(0, slash)),
                "part",
                field.substring(slash + 1).replace("/", ", "));
    }

    private static DisplayName fieldName(String field) {
        return DisplayName.of(
                "field." + field.replace(", ", ".").replace(' ', '-'),
                field.replace("_m2", " area").replace("_m3", "").replace('_', ' '));
    }

    private static boolean isSorted(List<String> names) {
        for (int i = 1; i < names.size(); i++) {
            if (names.get(i - 1).compareTo(names.get(i)) >= 0) {
                return false;
            }
        }
        return true;
    }

    Gap as(Kind other) {
        return new Gap(field, other, indicators, with, rows, boundary, landUseChange);
    }

    /** True when the true figure on a basis is higher than what is counted, for want of this. */
    boolean lowers(Scope scope) {
        boolean inside =
                scope.boundary().includes(boundary) || scope.indicator().isFeed();
        return kind == Kind.NOT_COUNTED
                && inside
                && (!landUseChange || scope.landUseChange())
                && indicators.contains(scope.indicator().id());
    }
}
