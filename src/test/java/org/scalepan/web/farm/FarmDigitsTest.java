package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** Another seed does not move what is printed of a farm: its draws are stratified. */
class FarmDigitsTest {
    private static final int SEEDS = 50;
    private static final JsonMapper JSON = new JsonMapper();

    /** The standard deviation of either end of the interval over 50 seeds is at most 0.5 % of it, for greenhouse gases and land. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "invented-allotment-hens",
                "invented-brewery-black-soldier-flies",
                "invented-school-superworms",
                "mealworms-oonincx-deboer-2012"
            })
    void printed_ends_of_a_farm_hold_whatever_the_seed(String system) throws IOException {
        ObjectNode request =
                (ObjectNode) JSON.readTree(Files.readString(Path.of("factors", "systems", system + ".json")))
                        .path("request");
        request.putArray("indicators").add("ghg").add("land");
        request.remove("compare");

        Map<String, double[]> ends = new LinkedHashMap<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            request.put("seed", seed);
            for (JsonNode one : JsonAt.array(Posted.answer(request.toString()), "/footprints")) {
                for (String end : new String[] {"low", "median", "high"}) {
                    String what = JsonAt.text(one, "/indicator") + " " + end;
                    ends.computeIfAbsent(what, name -> new double[SEEDS])[seed - 1] =
                            JsonAt.number(one, "/footprint/" + end);
                }
            }
        }

        assertTrue(ends.size() >= 3, "no footprint of " + system);
        ends.forEach((what, values) -> assertTrue(
                scatter(values) <= 0.005, what + " of " + system + " moves by " + 100 * scatter(values) + " %"));
    }

    private static double scatter(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double mean = sum / values.length;
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return mean == 0 ? 0 : Math.sqrt(squares / (values.length - 1)) / mean;
    }
}
