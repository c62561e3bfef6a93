package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/**
 * Property test: every generated request, valid or not, gets a described response: status, media type and fields. A long run: {@code mvn
 * test -Dtest=GeneratedRequestsIT -Dscalepan.requests=100000}; another one: {@code -Dscalepan.firstRequest=2001}.
 */
public class GeneratedRequestsIT {
    private static final int USUAL = 2_000;
    private static final int MOST_SHOWN = 12;
    private static final Description DESCRIPTION = Description.read();
    private static final DescribedSchemas SCHEMAS = new DescribedSchemas(DESCRIPTION);

    @Test
    void every_answer_to_a_generated_request_is_as_described() {
        RequestGenerator generator = new RequestGenerator(DESCRIPTION);
        long first = Long.getLong("scalepan.firstRequest", 1);
        int count = Integer.getInteger("scalepan.requests", USUAL);
        Map<Integer, Integer> statuses = new TreeMap<>();
        Map<String, String> faults = new LinkedHashMap<>();
        for (long seed = first; seed < first + count && faults.size() < MOST_SHOWN; seed++) {
            RequestGenerator.GeneratedRequest request = generator.generate(seed);
            Reply reply = request.reply();
            statuses.merge(reply.status(), 1, Integer::sum);
            for (String fault : faults(request, reply)) {
                faults.putIfAbsent(
                        request.operation() + " " + reply.status() + " " + fault, "request " + seed + ": " + request);
            }
        }
        if (!faults.isEmpty()) {
            List<String> report = new ArrayList<>();
            faults.forEach((fault, request) -> report.add(fault + "\n    " + request));
            fail(statuses + "\n" + String.join("\n", report));
        }
        assertTrue(statuses.getOrDefault(200, 0) > count / 5, () -> "too few were answered: " + statuses);
        assertTrue(statuses.getOrDefault(400, 0) > count / 5, () -> "too few were refused: " + statuses);
    }

    private static List<String> faults(RequestGenerator.GeneratedRequest request, Reply reply) {
        Optional<Description.Answer> answer = DESCRIPTION.answers(request.operation()).stream()
                .filter(one -> one.status() == reply.status())
                .findFirst();
        if (answer.isEmpty() || reply.status() >= 500) {
            return List.of("is no answer to a question: " + reply.body());
        }
        if (request.question().contains("on_error=200") && reply.body().startsWith("#")) {
            // A one-line refusal with status 200, as described for on_error.
            return reply.mediaType().equals("text/plain") ? List.of() : List.of("is a hint as " + reply.mediaType());
        }
        Map<String, Description.Part> content = answer.get().content();
        if (content.isEmpty()) {
            return reply.body().isEmpty() ? List.of() : List.of("has a body that is not described");
        }
        Description.Part described = content.get(reply.mediaType());
        if (described == null) {
            return List.of("has the media type " + reply.mediaType() + ", described are " + content.keySet());
        }
        List<String> faults = new ArrayList<>();
        answer.get().part().child("headers").children().keySet().stream()
                .filter(name -> reply.header(name).isEmpty())
                .forEach(name -> faults.add("has no header " + name));
        if (reply.isJson()) {
            JsonPointer schema = DESCRIPTION.resolve(described.child("schema")).at();
            faults.addAll(SCHEMAS.faults(schema, reply.json()));
            Ordered.check("", reply.json(), faults);
        }
        return faults;
    }

    /** An interval has ordered ends with the median between them. */
    public static final class Ordered {
        private Ordered() {}

        public static void check(String at, JsonNode node, List<String> faults) {
            JsonNode low = node.path("low");
            JsonNode high = node.path("high");
            // A swing has the figure at the low and the high end of its input, so its ends may be in reverse order.
            if (low.isNumber() && high.isNumber() && !at.endsWith("/swing")) {
                JsonNode middle = node.path("median").isNumber() ? node.path("median") : low;
                boolean ordered = JsonAt.number(low, "") <= JsonAt.number(middle, "")
                        && JsonAt.number(middle, "") <= JsonAt.number(high, "");
                if (!ordered || !Double.isFinite(JsonAt.number(low, "")) || !Double.isFinite(JsonAt.number(high, ""))) {
                    faults.add("is no interval at " + at.replaceAll("/\\d+", "/#") + ": " + low + " " + middle + " "
                            + high);
                }
            }
            if (node.isNumber() && !Double.isFinite(JsonAt.number(node, ""))) {
                faults.add("is no number at " + at);
            }
            node.properties().forEach(field -> check(at + "/" + field.getKey(), field.getValue(), faults));
            for (int i = 0; node.isArray() && i < node.size(); i++) {
                check(at + "/" + i, node.get(i), faults);
            }
        }
    }
}
