package org.scalepan.factors.loading;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Grade;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.ReferenceFarm.DefaultPlace;
import org.scalepan.factors.ReferenceFarm.PracticeBasis;
import org.scalepan.factors.ReferenceFarm.PracticeInput;
import org.scalepan.factors.ReferenceFarm.UncountedInput;
import org.scalepan.factors.table.Fault;

/** Reads the file of one reference farm. What it says is checked against the tables by {@link ReferenceFarmCheck}. */
final class ReferenceFarmReading {
    private static final Set<String> MEMBERS = Set.of(
            "id",
            "name",
            "sentence",
            "product",
            "climate",
            "region",
            "scale",
            "default_for",
            "inputs",
            "uncounted",
            "drawn_together",
            "system");
    private static final Set<String> INPUT_MEMBERS = Set.of("field", "basis", "rows", "over", "times", "grade", "why");
    static final List<String> CLIMATES = List.of("tropical", "temperate");
    private static final List<String> SCALES = List.of("small", "large");

    private final JsonNode root;
    private final JsonLines lines;
    private final List<Fault> faults;

    ReferenceFarmReading(JsonNode root, JsonLines lines, List<Fault> faults) {
        this.root = root;
        this.lines = lines;
        this.faults = faults;
    }

    /** The farm, or nothing after a fault. */
    Optional<ReferenceFarm> read() {
        int before = faults.size();
        strangers(root, "", MEMBERS);
        if (!root.path("system").isObject()) {
            fault("/system", "no system", "give the system of a request, with its ranges");
        }
        ReferenceFarm farm = new ReferenceFarm(
                text(root, "", "id"),
                text(root, "", "name"),
                text(root, "", "sentence"),
                text(root, "", "product"),
                oneOf(root, "", "climate", CLIMATES),
                Optional.ofNullable(root.get("region")).map(JsonNode::asText),
                oneOf(root, "", "scale", SCALES),
                defaults(),
                inputs(),
                uncounted(),
                groups(root, "", "drawn_together"),
                root.path("system").toString());
        return faults.size() == before ? Optional.of(farm) : Optional.empty();
    }

    private List<DefaultPlace> defaults() {
        List<DefaultPlace> places = new ArrayList<>();
        each("default_for", (place, pointer) -> {
            strangers(place, pointer, Set.of("product", "climate"));
            places.add(new DefaultPlace(text(place, pointer, "product"), oneOf(place, pointer, "climate", CLIMATES)));
        });
        return places;
    }

    private List<PracticeInput> inputs() {
        List<PracticeInput> inputs = new ArrayList<>();
        each("inputs", (input, pointer) -> {
            strangers(input, pointer, INPUT_MEMBERS);
            JsonNode times = input.path("times");
            if (!times.isMissingNode() && !(times.asDouble() > 0)) {
                fault(
                        pointer + "/times",
                        "\"times\" must be a number above 0",
                        "give the factor, or leave it out for 1");
            }
            inputs.add(new PracticeInput(
                    text(input, pointer, "field"),
                    PracticeBasis.of(oneOf(input, pointer, "basis", List.of("published", "practice", "chosen")))
                            .orElse(PracticeBasis.CHOSEN),
                    groups(input, pointer, "rows"),
                    groups(input, pointer, "over"),
                    times.asDouble(1),
                    Grade.of(input.path("grade").asText()),
                    text(input, pointer, "why")));
        });
        return inputs;
    }

    private List<UncountedInput> uncounted() {
        List<UncountedInput> uncounted = new ArrayList<>();
        each("uncounted", (input, pointer) -> {
            strangers(input, pointer, Set.of("field", "bounds", "why"));
            if (!input.path("bounds").isArray()) {
                fault(pointer + "/bounds", "no list \"bounds\"", "name the indicators; none for a cut-off");
            }
            List<String> bounds = new ArrayList<>();
            input.path("bounds").forEach(indicator -> bounds.add(indicator.asText()));
            uncounted.add(new UncountedInput(text(input, pointer, "field"), bounds, text(input, pointer, "why")));
        });
        return uncounted;
    }

    private interface ElementReading {
        void read(JsonNode element, String pointer);
    }

    private void each(String member, ElementReading reading) {
        JsonNode list = root.path(member);
        if (!list.isArray()) {
            fault("/" + member, "no list \"" + member + "\"", "give a list; an empty one where there is none");
            return;
        }
        for (int i = 0; i < list.size(); i++) {
            reading.read(list.get(i), "/" + member + "/" + i);
        }
    }

    private List<List<String>> groups(JsonNode of, String pointer, String member) {
        List<List<String>> groups = new ArrayList<>();
        JsonNode list = of.path(member);
        boolean right = list.isMissingNode() || list.isArray();
        for (JsonNode group : list) {
            List<String> ids = new ArrayList<>();
            group.forEach(id -> ids.add(id.asText()));
            right &= group.isArray() && !ids.isEmpty();
            groups.add(ids);
        }
        if (!right) {
            fault(pointer + "/" + member, "\"" + member + "\" is no list of lists", "write [[\"one\", \"another\"]]");
        }
        return groups;
    }

    private String text(JsonNode of, String pointer, String member) {
        String text = of.path(member).asText();
        if (text.isBlank()) {
            fault(pointer + "/" + member, "no \"" + member + "\"", "see the members in factors/README.md");
        }
        return text;
    }

    private String oneOf(JsonNode of, String pointer, String member, List<String> words) {
        String text = of.path(member).asText();
        if (!words.contains(text)) {
            fault(pointer + "/" + member, "\"" + member + "\" is \"" + text + "\"", "it must be one of " + words);
        }
        return text;
    }

    private void strangers(JsonNode of, String pointer, Set<String> known) {
        of.fieldNames().forEachRemaining(member -> {
            if (!known.contains(member)) {
                fault(
                        pointer + "/" + member,
                        "a member that nothing reads",
                        "it must be one of " + known.stream().sorted().toList());
            }
        });
    }

    private void fault(String pointer, String what, String right) {
        faults.add(lines.fault(pointer, what, right));
    }
}
