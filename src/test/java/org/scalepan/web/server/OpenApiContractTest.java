package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.Caveat;
import org.scalepan.factors.Gas;
import org.scalepan.factors.table.TableSchema;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.input.Input;
import org.scalepan.literature.LandUseChange;
import org.scalepan.literature.Note;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.records.SystemReading;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.http.RequestBody;
import org.scalepan.web.library.RecordWordRoutes;
import org.scalepan.web.library.VocabularyRoutes;
import org.scalepan.web.render.ProblemView;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Compares the description in {@code openapi} with the running service, in both directions. */
class OpenApiContractTest {
    private static final String NO_SUCH = "no-such-thing";
    /** Headers that a response may have only if described. */
    private static final List<String> TOLD_HEADERS =
            List.of("ETag", "Retry-After", "Cache-Control", "Content-Location", "Library-Version", "Library-Digest");

    /** Parameters whose ids depend on the library; the service lists them, the description does not. */
    private static final Set<String> OPEN =
            Set.of("products", "product", "against", "also_against", "reference", "library");

    private static Description description;
    private static DescribedSchemas schemas;
    /** Services that refuse to compute, shared by all cases since they do not change. */
    private static BusyScalepan busy;

    private static BusyScalepan busyWithOneClient;

    @BeforeAll
    static void read() {
        description = Description.read();
        schemas = new DescribedSchemas(description);
        busy = new BusyScalepan();
        busyWithOneClient = BusyScalepan.withOneClient();
    }

    @AfterAll
    static void stop() {
        busy.close();
        busyWithOneClient.close();
    }

    static List<Description.Operation> operations() {
        return Description.read().operations();
    }

    @Test
    void every_address_of_the_service_is_described_and_every_described_address_is_served() {
        Set<String> served = new TreeSet<>();
        RunningScalepan.routes()
                .forEach(route -> served.add(route.method().name().toLowerCase(Locale.ROOT) + " " + route.path()));
        Set<String> described = new TreeSet<>();
        description.operations().forEach(operation -> described.add(operation.method() + " " + operation.path()));

        assertSame("addresses", served, described);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void a_route_accepts_exactly_the_described_parameters(Description.Operation operation) {
        Route route = route(operation);
        Set<String> known = new TreeSet<>(route.parameters());
        if (route.isApi()) {
            known.addAll(List.of("nocache", "library"));
        }
        if (route.speaks()) {
            known.add("lang");
        }
        Set<String> inPath = new TreeSet<>();
        Matcher variable = Pattern.compile("\\{(\\w+)}").matcher(operation.path());
        while (variable.find()) {
            inPath.add(variable.group(1));
        }

        assertSame("query parameters of " + operation, known, names(operation, false));
        assertSame("path parameters of " + operation, inPath, names(operation, true));
    }

    private static Set<String> names(Description.Operation operation, boolean inPath) {
        Set<String> names = new TreeSet<>();
        description.parameters(operation).stream()
                .filter(parameter -> parameter.inPath() == inPath)
                .forEach(parameter -> assertTrue(
                        names.add(parameter.name()), () -> operation + " describes " + parameter.name() + " twice"));
        return names;
    }

    @ParameterizedTest
    @MethodSource("operations")
    void an_operation_has_a_name_of_its_own_a_summary_a_description_and_a_declared_tag(
            Description.Operation operation) {
        JsonNode node = operation.part().node();
        Set<String> declared = new TreeSet<>();
        description.root().path("tags").forEach(tag -> declared.add(JsonAt.text(tag, "/name")));

        assertTrue(
                operation.id().matches("[a-z][A-Za-z]+"), () -> operation + " has the operationId " + operation.id());
        assertEquals(
                1,
                description.operations().stream()
                        .filter(other -> other.id().equals(operation.id()))
                        .count(),
                () -> "operationId " + operation.id() + " is not its own");
        assertTrue(!JsonAt.text(node, "/summary").isBlank(), () -> operation + " has no summary");
        assertTrue(!JsonAt.text(node, "/description").isBlank(), () -> operation + " has no description");
        assertTrue(declared.contains(JsonAt.text(node, "/tags/0")), () -> operation + " has no tag that is declared");
    }

    @ParameterizedTest
    @MethodSource("operations")
    void the_choices_of_a_parameter_are_those_that_the_service_offers(Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        for (Description.Parameter parameter : description.parameters(operation)) {
            if (parameter.inPath()) {
                continue;
            }
            String question = with(operation, parameter.name(), NO_SUCH);
            JsonNode schema =
                    parameter.isList() ? description.resolve(parameter.schema().path("items")) : parameter.schema();
            Set<String> described = texts(schema.path("enum"));
            Set<String> offered = offered(ask(operation, question, asProblem(operation)));
            if (!OPEN.contains(parameter.name()) && !described.equals(offered)) {
                faults.add(operation + ": " + parameter.name() + " is described as one of " + described
                        + ", the service offers " + offered);
            }
        }
        assertNone(faults);
    }

    /** Spreadsheet cells are refused in one line of text unless the client asks for the whole problem. */
    private static Map<String, String> asProblem(Description.Operation operation) {
        return route(operation).cell() ? Map.of("Accept", ProblemView.MEDIA_TYPE) : Map.of();
    }

    /** Sends a request; a route that takes records gets those of its first example. */
    private static Reply ask(Description.Operation operation, String question, Map<String, String> headers) {
        Map<String, String> sent = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        if (description.body(operation).isPresent()) {
            sent.putAll(description.headers(operation));
        }
        sent.putAll(headers);
        return Reply.to(question, sent, description.body(operation));
    }

    /** The allowed values in the refusal of an unknown one. */
    private static Set<String> offered(Reply reply) {
        if (reply.status() == 200 || !reply.isJson()) {
            return Set.of();
        }
        for (JsonNode error : reply.json().path("errors")) {
            if (JsonAt.text(error, "/message").contains(NO_SUCH)) {
                return texts(error.path("allowed"));
            }
        }
        return Set.of();
    }

    @ParameterizedTest
    @MethodSource("operations")
    void the_choices_within_a_path_are_those_that_the_service_offers(Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        for (Description.Parameter parameter : description.parameters(operation)) {
            if (parameter.inPath() && parameter.schema().has("enum")) {
                Set<String> described = texts(parameter.schema().path("enum"));
                for (String choice : described) {
                    Reply reply = Reply.to(withPath(operation, parameter.name(), choice), asProblem(operation));
                    boolean known = reply.status() == 200
                            || JsonAt.text(reply.json(), "/type").equals("/problems/no-evidence");
                    if (!known) {
                        faults.add(operation + ": " + parameter.name() + " " + choice + " is described, but answers "
                                + reply.status());
                    }
                }
                Reply refusal = Reply.to(withPath(operation, parameter.name(), NO_SUCH), asProblem(operation));
                Set<String> offered = offered(refusal);
                if (refusal.status() != 404 || (!offered.isEmpty() && !offered.equals(described))) {
                    faults.add(operation + ": " + parameter.name() + " is described as one of " + described
                            + ", the service offers " + offered);
                }
            }
        }
        assertNone(faults);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void every_described_media_type_is_sent_when_accepted(Description.Operation operation) {
        Set<String> described = new TreeSet<>();
        description.answers(operation).stream()
                .filter(answer -> answer.status() == 200)
                .forEach(answer -> described.addAll(answer.content().keySet()));
        Set<String> sent = new TreeSet<>();
        String question = description.question(operation);
        described.forEach(mediaType ->
                sent.add(ask(operation, question, Map.of("Accept", mediaType)).mediaType()));
        // Rows are returned in the format in which they were sent.
        description.sent(operation).forEach(example -> sent.add(example.reply().mediaType()));
        // Where the path names a file, the file decides.
        description.parameters(operation).stream()
                .filter(parameter -> parameter.inPath() && parameter.name().equals("file"))
                .flatMap(parameter -> texts(parameter.schema().path("enum")).stream())
                .forEach(file ->
                        sent.add(Reply.to(withPath(operation, "file", file)).mediaType()));

        assertSame("media types of " + operation, sent, described);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void the_limits_of_a_number_are_those_that_the_service_keeps(Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        for (Description.Parameter parameter : description.parameters(operation)) {
            JsonNode schema = parameter.schema();
            if (schema.has("minimum")) {
                double step = JsonAt.text(schema, "/type").equals("integer") ? 1 : 0.001;
                Map<Double, Integer> statusOf = new LinkedHashMap<>();
                statusOf.put(JsonAt.number(schema, "/minimum"), 200);
                statusOf.put(JsonAt.number(schema, "/minimum") - step, 400);
                statusOf.put(JsonAt.number(schema, "/maximum"), 200);
                // Too many draws exceed a limit (422); a coverage above one is invalid (400).
                statusOf.put(
                        JsonAt.number(schema, "/maximum") + step,
                        parameter.name().equals("draws") ? 422 : 400);
                statusOf.forEach((value, status) -> {
                    String question = with(operation, parameter.name(), Input.plain(value));
                    int got = ask(operation, question, Map.of()).status();
                    if (got != status) {
                        faults.add(question + " answers " + got + ", by the limits described it would be " + status);
                    }
                });
            }
        }
        assertNone(faults);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void the_described_maximum_length_of_a_list_is_that_of_the_service(Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        for (Description.Parameter parameter : description.parameters(operation)) {
            if (parameter.isList()) {
                int most = JsonAt.integer(parameter.schema(), "/maxItems");
                for (int count : new int[] {most, most + 1}) {
                    String list = String.join(
                            ",",
                            IntStream.range(0, count).mapToObj(i -> "x" + i).toList());
                    String body = ask(operation, with(operation, parameter.name(), list), asProblem(operation))
                            .body();
                    if (body.contains("at most " + most + " are allowed") != count > most) {
                        faults.add(operation + ": " + parameter.name() + " with " + count
                                + " entries, described are at most " + most + ", is answered with " + body);
                    }
                }
            }
        }
        assertNone(faults);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void a_described_default_is_that_of_the_service(Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        if (operation.method().equals("post")) {
            // A response to records has no permalink, which would reveal them.
            return;
        }
        String question = description.question(operation);
        Reply reply = ask(operation, question, Map.of());
        for (Description.Parameter parameter : description.parameters(operation)) {
            if (parameter.byDefault().isPresent() && !question.contains(parameter.name() + "=")) {
                String described = plain(parameter.byDefault().get());
                String taken = Stream.of(
                                reply.header("Content-Location").orElse("").split("[?&]"))
                        .filter(pair -> pair.startsWith(parameter.name() + "="))
                        .findFirst()
                        .orElse("nothing");
                if (!taken.equals(parameter.name() + "=" + described)) {
                    faults.add(operation + ": the default of " + parameter.name() + " is described as " + described
                            + ", the service takes " + taken);
                }
            }
        }
        assertNone(faults);
    }

    private static String plain(JsonNode value) {
        return value.isArray() ? String.join(",", texts(value)) : JsonAt.scalar(value, "");
    }

    @Test
    void every_closed_list_of_words_repeats_its_vocabulary() {
        Map<String, Supplier<Collection<String>>> own = new TreeMap<>();
        own.put("askable functional units", FunctionalUnit::askable);
        own.put(
                "land-use change in questions",
                () -> Stream.of(LandUseChange.values()).map(LandUseChange::id).toList());
        own.put(
                "protein bases",
                () -> Stream.of(ProteinBasis.values()).map(ProteinBasis::id).toList());
        own.put("nutrition bases", Basis::ids);
        own.put("nutrition notes", OpenApiContractTest::caveats);
        own.put("note codes", OpenApiContractTest::noteCodes);
        own.put(
                "reasons without a break-even",
                () -> Stream.of(org.scalepan.ask.farm.BreakEven.Reason.values())
                        .map(org.scalepan.ask.farm.BreakEven.Reason::id)
                        .toList());
        own.put(
                "kinds of input",
                () -> Stream.of(org.scalepan.ask.farm.InputName.InputKind.values())
                        .map(org.scalepan.ask.farm.InputName.InputKind::id)
                        .toList());
        own.put("warning codes", () -> {
            Set<String> codes = new LinkedHashSet<>(noteCodes());
            codes.addAll(List.of(
                    "contents-no-advice",
                    "ranges-of-samples",
                    "few-samples",
                    "noisy-shares",
                    "records-certain",
                    "few-studies",
                    "no-evidence",
                    "region-fallback",
                    "regional-results",
                    "animal-boundary",
                    "energy-kinds",
                    "quality-patterns",
                    "form-mix",
                    "minerals-eaten",
                    "lower-bound",
                    "luc-bound",
                    "kinds-averaged",
                    "later-boundary-lower",
                    "impossible-balance",
                    "unlike-energy",
                    "retail-feed-factor",
                    "processing-not-recorded",
                    "larger-than-farm",
                    "burden-free-by-product",
                    "computed-beside-published",
                    "modelled",
                    "fresh-beside-dried",
                    "missing-values",
                    "incomplete-profile",
                    "crude-protein",
                    "own-library"));
            codes.addAll(caveats());
            return codes;
        });
        own.put("livestock of records", () -> SystemReading.CATEGORIES);
        own.put("processing steps", () -> SystemReading.STEPS);
        RecordWordRoutes.GUIDELINE.forEach((path, part) -> {
            if (!part.kind().equals("category")) {
                own.put("guideline " + path.replaceAll("/v1/(ipcc-)?", "").replace('-', ' '), () -> items(path));
            }
        });
        own.put(
                "stages of records",
                () -> Stream.of(Stage.values()).map(Stage::id).toList());
        own.put("gases of records", () -> gasesAnd("co2e-not-split"));
        own.put(
                "fluxes of records",
                () -> gasesAnd(
                        "co2e",
                        "land",
                        "energy",
                        "energy-on-farm",
                        "water",
                        "water-on-farm",
                        "feed",
                        "feed-dry-matter"));
        own.put(
                "places of breeding stock",
                () -> Stream.of(org.scalepan.production.herd.Herd.BreedingStock.values())
                        .map(org.scalepan.production.herd.Herd.BreedingStock::id)
                        .toList());
        own.put("remark codes", () -> constants(Remark.class));
        own.put(
                "balance kinds",
                () -> Stream.of(FarmBalance.BalanceKind.values())
                        .map(FarmBalance.BalanceKind::id)
                        .toList());
        own.put(
                "balance verdicts",
                () -> Stream.of(FarmBalance.BalanceVerdict.values())
                        .map(FarmBalance.BalanceVerdict::id)
                        .toList());
        own.put("warming_sets or not-stated", () -> {
            Set<String> sets =
                    new LinkedHashSet<>(RunningScalepan.library().warmingSets().keySet());
            sets.add("not-stated");
            return sets;
        });
        List<String> faults = new ArrayList<>();
        Set<String> met = new TreeSet<>();
        List<Description.Part> parts = new ArrayList<>();
        description.schemas().values().forEach(schema -> collectEnums(schema, parts));
        for (Description.Part part : parts) {
            String vocabulary = part.text("x-vocabulary");
            met.add(vocabulary);
            if (vocabulary.equals("fixed")) {
                continue;
            }
            Collection<String> right =
                    own.containsKey(vocabulary) ? own.get(vocabulary).get() : ofLibrary(vocabulary);
            Set<String> wanted = new TreeSet<>(right);
            Set<String> described = new TreeSet<>(texts(part.node().path("enum")));
            if (!wanted.equals(described)) {
                faults.add(part.at() + " lists " + described + ", the vocabulary \"" + vocabulary + "\" has " + wanted);
            }
        }
        assertNone(faults);
        assertTrue(met.containsAll(own.keySet()), () -> "of " + own.keySet() + " only " + met + " were met");
    }

    private static void collectEnums(Description.Part part, List<Description.Part> found) {
        if (part.node().has("enum")) {
            found.add(part);
        }
        part.children().values().forEach(child -> collectEnums(child, found));
    }

    /** The terms that a vocabulary route lists. */
    private static Collection<String> items(String path) {
        List<String> ids = new ArrayList<>();
        Reply.to(path).json().path("items").forEach(item -> ids.add(JsonAt.text(item, "/id")));
        return ids;
    }

    private static Collection<String> gasesAnd(String... others) {
        return Stream.concat(Stream.of(Gas.values()).map(Gas::id), Stream.of(others))
                .toList();
    }

    private static Collection<String> caveats() {
        return Stream.of(Caveat.values()).map(Caveat::code).toList();
    }

    private static Collection<String> noteCodes() {
        return constants(Note.Codes.class);
    }

    private static Collection<String> constants(Class<?> of) {
        List<String> codes = new ArrayList<>();
        for (Field field : of.getFields()) {
            try {
                codes.add((String) field.get(null));
            } catch (IllegalAccessException e) {
                throw new AssertionError(e);
            }
        }
        return codes;
    }

    /** The ids of a table, or the allowed values of a column, written {@code table.column}. */
    private static Collection<String> ofLibrary(String vocabulary) {
        int dot = vocabulary.indexOf('.');
        String table = dot < 0 ? vocabulary : vocabulary.substring(0, dot);
        assertTrue(
                RunningScalepan.library().tables().stream()
                        .anyMatch(found -> found.schema().name().equals(table)),
                () -> "x-vocabulary \"" + vocabulary + "\" names neither a list known here nor a table");
        if (dot < 0) {
            return RunningScalepan.library().table(table).rows().stream()
                    .map(row -> row.text("id"))
                    .toList();
        }
        String column = vocabulary.substring(dot + 1);
        return RunningScalepan.library().table(table).schema().fields().stream()
                .filter(field -> field.name().equals(column))
                .flatMap(field -> field.allowed().stream())
                .toList();
    }

    @Test
    void the_schema_of_a_row_has_the_columns_of_its_table() {
        List<String> faults = new ArrayList<>();
        int tables = 0;
        for (Description.Part schema : description.schemas().values()) {
            if (schema.node().has("x-table")) {
                tables++;
                Set<String> columns =
                        new TreeSet<>(RunningScalepan.library().table(schema.text("x-table")).schema().fields().stream()
                                .map(TableSchema.Field::name)
                                .toList());
                Set<String> described =
                        new TreeSet<>(schema.child("properties").children().keySet());
                // Fields that routes add to a row.
                described.removeAll(Set.of("potentials", "needs_burden", "default_rows", "own_grid"));
                if (!columns.equals(described)) {
                    faults.add(schema.at() + " has " + described + ", the table has " + columns);
                }
            }
        }
        assertNone(faults);
        assertEquals(
                // The cautions and the regions have different kinds of route.
                VocabularyRoutes.TABLES.size() + RecordWordRoutes.TABLES.size() + 2,
                tables,
                "one schema for the rows of each table that has an address");
    }

    @ParameterizedTest
    @MethodSource("operations")
    void a_route_returns_each_described_status_and_no_other(Description.Operation operation) {
        Map<Integer, Description.Answer> described = new TreeMap<>();
        description.answers(operation).forEach(answer -> described.put(answer.status(), answer));
        List<String> faults = new ArrayList<>();
        Set<Integer> shown = new TreeSet<>();
        for (Probe probe : probes(operation)) {
            Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
            if (probe.body().isPresent()) {
                headers.putAll(description.headers(operation));
            }
            headers.putAll(probe.headers());
            Reply reply = Reply.to(probe.question(), headers, probe.body());
            shown.add(reply.status());
            Description.Answer answer = described.get(reply.status());
            if (answer == null) {
                faults.add(probe.question() + " with " + probe.headers() + " answers " + reply.status()
                        + ", which is not described");
            } else {
                faults.addAll(faults(probe.question(), reply, answer));
            }
        }
        if (operation.path().equals("/health/ready")) {
            // Tested below, on a service that has not started.
            shown.add(503);
        }
        if (operation.path().equals("/v1/footprints")) {
            // SpoolTest tests it without a quarter of a gigabyte.
            shown.add(413);
        }
        if (operation.method().equals("post")) {
            // SlowClientIT tests it, which takes longer.
            shown.add(408);
        }
        if (route(operation).computes() || operation.path().equals("/v1/footprints")) {
            // Tested below, on services that are busy with others or with this client.
            shown.addAll(List.of(429, 503));
        }
        if (!shown.equals(described.keySet())) {
            faults.add(operation + " is described with " + described.keySet() + ", but shows " + shown);
        }
        assertNone(faults);
    }

    /** A request that gets a given status. */
    private record Probe(String question, Map<String, String> headers, Optional<String> body) {}

    /** Requests for every described status of a path, derived from one that it answers with 200. */
    private static List<Probe> probes(Description.Operation operation) {
        String good = description.question(operation);
        String joint = good.contains("?") ? "&" : "?";
        Optional<String> body = description.body(operation);
        List<Probe> probes = new ArrayList<>();
        probes.add(new Probe(good, Map.of(), body));
        probes.add(new Probe(good + joint + "no_such_parameter=1", Map.of(), body));
        probes.add(new Probe(good + joint + "x&".repeat(65), Map.of(), body));
        if (operation.path().startsWith("/v1/")) {
            probes.add(new Probe(good + joint + "nocache=1", Map.of("If-None-Match", "*"), body));
            probes.add(new Probe(good + joint + "nocache=2", Map.of("Accept", "image/png"), body));
            probes.add(new Probe(good + joint + "library=0000000000000000", Map.of(), body));
        } else {
            probes.add(new Probe(good + "?", Map.of("If-None-Match", "*"), body));
        }
        if (operation.path().endsWith("}")) {
            String path = good.replaceAll("\\?.*", "");
            probes.add(new Probe(path.substring(0, path.lastIndexOf('/') + 1) + NO_SUCH, Map.of(), body));
        }
        if (body.isPresent()) {
            probes.add(new Probe(good, Map.of(), Optional.of("{}")));
            probes.add(new Probe(good, Map.of(), Optional.of("{\"system\":")));
            probes.add(new Probe(good, Map.of(), Optional.of("[]")));
            probes.add(new Probe(good, Map.of("Content-Type", "text/html"), body));
            probes.add(new Probe(good, Map.of(), Optional.of(" ".repeat(1_048_577) + "{}")));
        }
        return probes;
    }

    /** Differences of a response from its description: media type, headers, and the body by its schema. */
    private static List<String> faults(String question, Reply reply, Description.Answer answer) {
        List<String> faults = new ArrayList<>();
        Map<String, Description.Part> content = answer.content();
        if (content.isEmpty() != reply.body().isEmpty()) {
            faults.add(question + ": " + answer + " is described with the bodies " + content.keySet()
                    + ", the reply has " + reply.body().length() + " characters");
        }
        if (!content.isEmpty() && !content.containsKey(reply.mediaType())) {
            faults.add(question + ": " + answer + " is described as " + content.keySet() + ", the reply is "
                    + reply.mediaType());
        }
        Map<String, Description.Part> headers = answer.part().child("headers").children();
        headers.forEach((name, header) -> {
            JsonPointer schema = description.resolve(header).child("schema").at();
            reply.header(name)
                    .ifPresentOrElse(
                            value -> schemas.faults(schema, TextNode.valueOf(value))
                                    .forEach(fault -> faults.add(question + ": header " + name + ": " + fault)),
                            () -> faults.add(question + ": " + answer + " has no header " + name));
        });
        TOLD_HEADERS.stream()
                .filter(name -> reply.header(name).isPresent() && !headers.containsKey(name))
                .forEach(name -> faults.add(question + ": " + answer + " is described without the header " + name));
        faults.addAll(bodyFaults(question, reply, answer));
        return faults;
    }

    /** Differences of a body from its schema. */
    private static List<String> bodyFaults(String question, Reply reply, Description.Answer answer) {
        Map<String, Description.Part> content = answer.content();
        if (!reply.isJson() || !content.containsKey(reply.mediaType())) {
            return List.of();
        }
        JsonPointer schema = content.get(reply.mediaType()).child("schema").at();
        return schemas.faults(schema, reply.json()).stream()
                .map(fault -> question + ": " + answer + ": " + fault)
                .toList();
    }

    @Test
    void a_service_that_is_not_ready_answers_503() {
        Readiness readiness = new Readiness();
        Route ready = new OperatingRoutes(
                        RunningScalepan.library(),
                        new Metrics(),
                        readiness,
                        Answer.of(Answer.JSON, "{}"),
                        org.scalepan.web.bulk.SpoolFolder.ofSystem())
                .routes().stream()
                        .filter(route -> route.path().equals("/health/ready"))
                        .findFirst()
                        .orElseThrow();
        Request request = new Request(
                "/health/ready",
                Map.of(),
                Input.query(Map.of()),
                "",
                RequestBody.NOTHING,
                "http",
                "",
                Client.at("127.0.0.1"));

        ProblemException refused =
                assertThrows(ProblemException.class, () -> ready.handling().answer(request));

        assertEquals(503, refused.problem().status());
    }

    @ParameterizedTest
    @MethodSource("operations")
    void a_busy_service_answers_503_as_described_from_routes_that_compute(Description.Operation operation) {
        String question = description.question(operation);
        boolean computes = route(operation).computes() || operation.path().equals("/v1/footprints");
        List<Map<String, String>> wishes = List.of(Map.of(), Map.of("Accept", ProblemView.MEDIA_TYPE));
        if (!computes) {
            assertEquals(200, askBusy(busy, operation, Map.of()).status(), question);
            return;
        }
        for (Map<String, String> headers : route(operation).cell() ? wishes : List.of(wishes.get(0))) {
            Reply reply = askBusy(busy, operation, headers);

            assertEquals(503, reply.status(), question);
            assertNone(faults(question, reply, answer(question, 503)));
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void a_client_at_its_limit_gets_429_as_described_from_routes_that_compute(Description.Operation operation) {
        String question = description.question(operation);
        if (route(operation).computes() || operation.path().equals("/v1/footprints")) {
            Reply reply = askBusy(busyWithOneClient, operation, Map.of());

            assertEquals(429, reply.status(), question);
            assertNone(faults(question, reply, answer(question, 429)));
        }
    }

    private static Reply askBusy(BusyScalepan service, Description.Operation operation, Map<String, String> wishes) {
        Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        headers.putAll(description.body(operation).isPresent() ? description.headers(operation) : Map.of());
        headers.putAll(wishes);
        return Reply.to(service.uri(description.question(operation)), headers, description.body(operation));
    }

    /** Requests beyond the examples: every product as product and as reference, every kind of step, and thin evidence. */
    static List<String> questions() {
        List<String> questions = new ArrayList<>(List.of(
                "/v1/comparison?products=mealworm,house-cricket,black-soldier-fly,chicken,pork,milk,tofu&against=beef",
                "/v1/comparison?products=mealworm&against=beef&boundary=retail&per=100g-protein&luc=include",
                "/v1/comparison?products=mealworm&against=chicken&per=kg-quality-protein&protein=corrected&quality=uncapped",
                "/v1/comparison?products=house-cricket&against=beef&boundary=animal&per=kg-live&gwp=ar5-gtp20&strict=yes",
                "/v1/comparison?products=mealworm&against=pork&grade=abstract&region=thailand&coverage=0.5&draws=1000",
                "/v1/comparison?products=mealworm&against=beef&exclude=poore-nemecek-2018&seed=7&delim=;&bom=0",
                "/v1/table?products=mealworm,beef&indicators=ghg,land,energy,feed&format=json"
                        + "&stats=median,mean,low,high,studies,results",
                "/v1/claim?text=insects%20emit%20a%20hundred%20times%20less%20than%20beef&draws=1000",
                "/v1/claim?text=house%20crickets%20need%20no%20land",
                "/v1/claim?product=house-cricket&reference=chicken&percent_less=20&boundary=processing-gate&draws=1000",
                "/v1/claim?product=mealworm&reference=chicken&times_less=1&draws=1000",
                "/v1/claim?product=palm-weevil&none=yes",
                "/v1/results?product=beef",
                "/v1/results?indicator=feed-dry-matter&form=fresh&boundary=animal&region=world&grade=secondary",
                "/v1/results",
                "/v1/sources",
                "/v1/sources?format=csl",
                "/v1/rows/c01",
                "/v1/rows/mms.pasture",
                "/v1/table?products=nothing&indicators=nothing&coverage=2&draws=1.5",
                "/v1/nutrition?products=mealworm,beef,beans,tofu&basis=100g-edible&mixed_forms=yes&prices=12,-,2,3"
                        + "&currency=CHF&market=ch&protein=corrected",
                "/v1/nutrition?products=black-soldier-fly:defatted-meal,egg&pattern=who-fao-unu-2007-1-2-years",
                "/v1/nutrition?products=mealworm,beans&basis=100g-edible",
                "/v1/cautions?product=shrimp"));
        for (String basis : Basis.ids()) {
            for (String form : RunningScalepan.library().ids("forms")) {
                questions.add("/v1/nutrition?grade=abstract&basis=" + basis + "&products="
                        + String.join(
                                ",",
                                RunningScalepan.library().products().keySet().stream()
                                        .limit(20)
                                        .map(id -> id + ":" + form)
                                        .toList()));
            }
        }
        RunningScalepan.library().products().keySet().forEach(id -> questions.add("/v1/products/" + id));
        RunningScalepan.library()
                .indicators()
                .keySet()
                .forEach(id -> questions.add("/v1/comparison?draws=1000&against=beef&indicator=" + id + "&products="
                        + String.join(
                                ",",
                                RunningScalepan.library().products().keySet().stream()
                                        .limit(20)
                                        .toList())));
        return questions;
    }

    @ParameterizedTest
    @MethodSource("questions")
    void a_real_answer_conforms_to_its_schema(String question) {
        Reply reply = Reply.to(question);
        Description.Answer answer = answer(question, reply.status());

        assertNone(faults(question, reply, answer));
    }

    private static Description.Answer answer(String question, int status) {
        String path = question.replaceAll("\\?.*", "");
        Description.Operation operation = description.operations().stream()
                .filter(found -> path.matches(found.path().replaceAll("\\{\\w+}", "[^/]+")))
                .findFirst()
                .orElseThrow(() -> new AssertionError(path + " is not described"));
        return answer(operation, status);
    }

    private static Description.Answer answer(Description.Operation operation, int status) {
        return description.answers(operation).stream()
                .filter(answer -> answer.status() == status)
                .findFirst()
                .orElseThrow(() -> new AssertionError(operation + " answers " + status + ", which is not described"));
    }

    @ParameterizedTest
    @MethodSource("operations")
    void an_example_is_listed_under_its_status_and_media_type_and_conforms_to_its_schema(
            Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        description
                .answers(operation)
                .forEach(answer -> description.examples(answer).forEach((example, mediaType) -> {
                    Reply reply = example.reply();
                    if (reply.status() != answer.status() || !reply.mediaType().equals(mediaType)) {
                        faults.add("example " + example.name() + " stands under " + answer + " " + mediaType
                                + ", its question has " + reply.status() + " " + reply.mediaType());
                    }
                    faults.addAll(bodyFaults(example.question(), reply, answer));
                }));
        assertNone(faults);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void an_example_body_conforms_to_its_schema_and_is_answered_as_described(Description.Operation operation) {
        List<String> faults = new ArrayList<>();
        for (Description.Example example : description.sent(operation)) {
            assertTrue(
                    example.question().replaceAll("\\?.*", "").equals(operation.path()),
                    () -> "example " + example.name() + " of " + operation + " is sent to " + example.question());
            Reply reply = example.reply();
            assertEquals(200, reply.status(), () -> "example " + example.name() + " is answered " + reply.body());
            faults.addAll(faults(example.question(), reply, answer(operation, 200)));
            JsonPointer schema = example.at().head().head().appendProperty("schema");
            schemas.faults(schema, example.body().orElseThrow())
                    .forEach(fault -> faults.add("example " + example.name() + ": " + fault));
        }
        assertNone(faults);
        assertEquals(
                operation.method().equals("post"),
                !description.sent(operation).isEmpty(),
                () -> operation + " shows no body that it takes");
    }

    /** These have no permalink that an example could refer to. */
    @ParameterizedTest
    @CsvSource({
        "/v1/comparison?products=mealworm&against=beef, image/png, 406",
        "/v1/value/ghg/mealworm?per=kg-protien, application/problem+json, 400",
        "/v1/value/ghg/mealwrm, application/problem+json, 404"
    })
    void a_problem_that_depends_on_the_accept_header_is_as_described(String question, String accept, int status) {
        Reply reply = Reply.to(question, Map.of("Accept", accept));

        assertEquals(status, reply.status(), question);
        assertEquals(ProblemView.MEDIA_TYPE, reply.mediaType(), question);
        assertNone(faults(question, reply, answer(question, status)));
    }

    @Test
    void several_faults_of_a_body_are_answered_as_described() {
        String body = """
                {
                  "system": {
                    "kind": "insects",
                    "product": "mealworm",
                    "harvst": {"kg_per_year": 600},
                    "feed": [{"ingredient": "wheat-brn", "kg": -1}]
                  },
                  "per": "kilo"
                }""";

        Reply reply = Reply.to("/v1/footprint", Map.of(), Optional.of(body));

        assertEquals(400, reply.status());
        assertNone(faults("/v1/footprint", reply, answer("/v1/footprint", 400)));
    }

    @Test
    void an_answer_is_referred_to_and_never_copied_so_that_no_change_of_the_library_changes_the_description() {
        Set<String> asked = new TreeSet<>();
        for (Description.Operation operation : description.operations()) {
            for (Description.Answer answer : description.answers(operation)) {
                answer.content().forEach((mediaType, content) -> {
                    assertFalse(content.node().has("example"), () -> answer + " has a copied example");
                    content.child("examples").children().forEach((name, example) -> {
                        assertFalse(example.node().has("value"), () -> answer + " has the copied example " + name);
                        assertTrue(
                                example.text("externalValue").startsWith("/"),
                                () -> name + " refers to another service: " + example.text("externalValue"));
                        asked.add(example.at().toString());
                    });
                });
            }
        }
        Set<String> there = new TreeSet<>();
        collectReferred(new Description.Part(JsonPointer.empty(), description.root()), there);

        assertSame("examples that are asked", asked, there);
        assertFalse(Description.joined()
                .contains(RunningScalepan.library().version().digest()));
    }

    private static void collectReferred(Description.Part part, Set<String> found) {
        if (part.node().has("externalValue")) {
            found.add(part.at().toString());
        }
        part.children().values().forEach(child -> collectReferred(child, found));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1", "/v1/", "/v2/products", "/v1/products/beef/more", "/docs/index.html", "/index.html"})
    void an_undescribed_path_is_not_served(String path) {
        Reply reply = Reply.to(path);

        assertEquals(404, reply.status(), path);
        assertNone(schemas.faults(JsonPointer.compile("/components/schemas/Problem"), reply.json()));
    }

    @Test
    void the_served_description_equals_the_joined_files() {
        assertTrue(
                Description.joined().equals(Reply.to("/openapi.yaml").body()),
                () -> "the build serves another description than " + Description.FOLDER + "; compile it again");
    }

    private static Route route(Description.Operation operation) {
        return RunningScalepan.routes().stream()
                .filter(route -> route.path().equals(operation.path())
                        && route.method().name().equalsIgnoreCase(operation.method()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(operation + " is not served"));
    }

    /** The valid request of the path, with one parameter set to a value. */
    private static String with(Description.Operation operation, String name, String value) {
        String good = description.question(operation);
        int mark = good.indexOf('?');
        String path = mark < 0 ? good : good.substring(0, mark);
        List<String> pairs = new ArrayList<>(List.of(name + "=" + value));
        if (mark >= 0) {
            Stream.of(good.substring(mark + 1).split("&"))
                    .filter(pair -> !pair.startsWith(name + "="))
                    .forEach(pairs::add);
        }
        return path + "?" + String.join("&", pairs);
    }

    /** The valid request of the path, with one path variable set to a value. */
    private static String withPath(Description.Operation operation, String name, String value) {
        String[] template = operation.path().split("/", -1);
        String[] path = description.question(operation).replaceAll("\\?.*", "").split("/", -1);
        for (int i = 0; i < template.length; i++) {
            if (template[i].equals("{" + name + "}")) {
                path[i] = value;
            }
        }
        return String.join("/", path);
    }

    private static Set<String> texts(JsonNode array) {
        Set<String> texts = new LinkedHashSet<>();
        StreamSupport.stream(array.spliterator(), false)
                .map(each -> JsonAt.scalar(each, ""))
                .forEach(texts::add);
        return texts;
    }

    private static void assertSame(String what, Set<String> served, Set<String> described) {
        Set<String> missing = new TreeSet<>(served);
        missing.removeAll(described);
        Set<String> surplus = new TreeSet<>(described);
        surplus.removeAll(served);
        assertTrue(
                missing.isEmpty() && surplus.isEmpty(),
                () -> what + ": the description lacks " + missing + " and has too many " + surplus);
    }

    private static void assertNone(List<String> faults) {
        if (!faults.isEmpty()) {
            fail(String.join("\n", faults));
        }
    }
}
