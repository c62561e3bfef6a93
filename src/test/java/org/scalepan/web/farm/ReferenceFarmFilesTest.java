package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.factors.Product;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.web.Posted;
import org.scalepan.web.RunningScalepan;

/** The reference farms, posted with the central value of each range as if they were somebody's records. */
class ReferenceFarmFilesTest {
    private static final JsonMapper JSON = new JsonMapper();

    static List<String> farms() {
        return RunningScalepan.library().referenceFarms().stream()
                .map(ReferenceFarm::id)
                .toList();
    }

    @Test
    void every_insect_of_the_library_has_one_that_is_its_default_somewhere() {
        Set<String> covered = RunningScalepan.library().referenceFarms().stream()
                .flatMap(farm -> farm.defaults().stream())
                .map(ReferenceFarm.DefaultPlace::product)
                .collect(Collectors.toSet());

        List<String> without = RunningScalepan.library().products().values().stream()
                .filter(product -> product.group().equals("insect"))
                .map(Product::id)
                .filter(product -> !covered.contains(product))
                .toList();

        assertEquals(List.of(), without);
        assertTrue(
                covered.containsAll(Set.of("chicken", "egg", "pork", "milk", "beef", "goat-meat")),
                "livestock on the same ruler: " + covered);
    }

    @ParameterizedTest
    @MethodSource("farms")
    void each_gives_a_figure_or_a_bound_that_its_sentence_tells(String id, TestReporter reporter)
            throws JsonProcessingException {
        ReferenceFarm farm = farm(id);
        String per = Set.of("egg", "milk").contains(farm.product()) ? "kg-product" : "kg-live";

        JsonNode answer = computed(farm, per);

        assertEquals(farm.product(), JsonAt.text(answer, "/system/product"));
        StringBuilder printed = new StringBuilder(id);
        for (JsonNode footprint : JsonAt.array(answer, "/footprints")) {
            String indicator = JsonAt.text(footprint, "/indicator");
            List<String> missing = JsonAt.texts(footprint, "/not_counted");
            boolean figure = footprint.has("first_order");
            assertTrue(
                    figure || (indicator.equals("land") && !missing.isEmpty()),
                    () -> id + " " + indicator + ": " + footprint);
            assertTrue(
                    missing.isEmpty() || farm.sentence().contains("Not counted: "),
                    () -> "the sentence does not say that it leaves out " + missing);
            printed.append("; ")
                    .append(indicator)
                    .append(' ')
                    .append(figure ? JsonAt.number(footprint, "/first_order/value") : Double.NaN)
                    .append(' ')
                    .append(JsonAt.text(footprint, "/bound"))
                    .append(missing);
        }
        reporter.publishEntry("figures", printed.toString());
    }

    /** What goes out must have come in: a typical farm that breaks physics would be a mistake of the file. */
    @ParameterizedTest
    @MethodSource("farms")
    void none_gives_more_than_it_is_fed(String id) throws JsonProcessingException {
        for (JsonNode balance : JsonAt.array(computed(farm(id), "kg-live"), "/balances")) {
            assertTrue(!JsonAt.text(balance, "/verdict").equals("impossible"), () -> id + ": " + balance);
        }
    }

    /** An input that makes no difference would be told of and not counted. */
    @ParameterizedTest
    @MethodSource("farms")
    void what_a_farm_leaves_out_is_not_in_its_records(String id) throws JsonProcessingException {
        JsonNode system = JSON.readTree(farm(id).system());

        for (ReferenceFarm.UncountedInput left : farm(id).uncounted()) {
            boolean recorded = system.has(left.field())
                    && !Set.of("feed", "frass", "breeding_stock").contains(left.field());
            assertTrue(!recorded, () -> left.field() + " is in the system and left out at once");
        }
    }

    private static ReferenceFarm farm(String id) {
        return RunningScalepan.library().referenceFarms().stream()
                .filter(farm -> farm.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode computed(ReferenceFarm farm, String per) throws JsonProcessingException {
        ObjectNode body = JSON.createObjectNode();
        body.set("system", central(JSON.readTree(farm.system())));
        body.put("per", per);
        body.putArray("indicators").add("ghg").add("land").add("feed");
        return Posted.answer(body.toString());
    }

    /** The middle of a range: the best guess, else the geometric mean, or the mean where the range begins at 0. */
    private static JsonNode central(JsonNode node) {
        if (node.isArray() && !node.isEmpty() && node.get(0).isNumber()) {
            double low = JsonAt.number(node, "/0");
            double high = JsonAt.number(node, "/1");
            return JsonNodeFactory.instance.numberNode(
                    node.size() == 3 ? high : low > 0 ? Math.sqrt(low * high) : (low + high) / 2);
        }
        if (node.isArray()) {
            List<JsonNode> elements = new ArrayList<>();
            node.forEach(element -> elements.add(central(element)));
            return JSON.createArrayNode().addAll(elements);
        }
        if (node.isObject()) {
            ObjectNode object = JSON.createObjectNode();
            node.properties().forEach(field -> object.set(field.getKey(), central(field.getValue())));
            return object;
        }
        return node;
    }
}
