package org.scalepan.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.factors.Nearest;
import org.scalepan.quantity.SevenDigits;

/**
 * The named values of a question, from a query string or an object of a JSON body. A value is a scalar, a list (in a query string
 * separated by commas) or, in a body, an object. Each read records its error instead of stopping, so that one problem lists all errors:
 * by parameter, or by JSON Pointer (RFC 6901). Values read, defaults included, are recorded in order: the resolved question.
 *
 * <p>Reads with a default accept scalars as a query string writes them: numbers as text, names in capitals too. Reads without a default
 * require the exact JSON types of records.
 */
public final class Input {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?([eE][+-]?\\d{1,3})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,18}");

    private final JsonNode node;
    private final InputFaults faults;
    private final Set<String> read = new LinkedHashSet<>();
    private final Map<String, String> added = new LinkedHashMap<>();
    private final Map<String, Object> resolved = new LinkedHashMap<>();

    private Input(JsonNode node, InputFaults faults) {
        this.node = node;
        this.faults = faults;
    }

    /** The parameters of a request, from path and query. */
    public static Input query(Map<String, String> given) {
        ObjectNode values = JsonNodeFactory.instance.objectNode();
        given.forEach(values::put);
        return new Input(values, InputFaults.ofQuery());
    }

    /** A body as a whole, which must be an object. */
    public static Input body(JsonNode node) {
        Input body = new Input(node, InputFaults.ofBody());
        if (!node.isObject()) {
            body.faults.addWhole("the body must be a JSON object");
        }
        return body;
    }

    /** Whether the values are the parameters of a request rather than an object of a body. */
    public boolean isQuery() {
        return faults.isQuery();
    }

    // Known names

    /** Refuses names other than these. */
    public void onlyKnown(Collection<String> known) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(name -> {
            if (!known.contains(name)) {
                names.add(name);
            }
        });
        if (names.isEmpty()) {
            return;
        }
        List<String> right = new ArrayList<>(known);
        if (isQuery()) {
            names.sort(null);
            right.sort(null);
        }
        String what = isQuery() ? "parameter" : "field";
        for (String name : names) {
            String shortName = isQuery() ? Excerpt.of(name) : name;
            faults.addUnknownName(
                    name, "unknown " + what + " \"" + shortName + "\"", right, Nearest.to(name, known, 2));
        }
    }

    /** Refuses unknown fields, which are mostly misspelt. */
    public void close() {
        onlyKnown(read);
    }

    public boolean has(String name) {
        read.add(name);
        return !node.path(name).isMissingNode();
    }

    /** Sets a value that was given in another form, such as in a sentence. */
    public void add(String name, String value) {
        added.put(name, value);
    }

    // Scalars as a query string writes them

    /** A text or number as given, or empty when it is absent or blank. */
    public Optional<String> raw(String name) {
        String value = added.get(name);
        if (value == null) {
            if (!has(name)) {
                return Optional.empty();
            }
            JsonNode given = node.path(name);
            if (!given.isTextual() && !given.isNumber()) {
                fault(name, name + " must be a text or a number");
                return Optional.empty();
            }
            value = given.asText();
        }
        if (value.isBlank()) {
            return Optional.empty();
        }
        if (value.length() > InputLimits.PARAMETER_CHARACTERS) {
            tooMuch(name, name + " is longer than " + InputLimits.PARAMETER_CHARACTERS + " characters");
            return Optional.empty();
        }
        return Optional.of(value.strip());
    }

    /** One of a closed list of names. */
    public String oneOf(String name, Collection<String> allowed, String byDefault) {
        String value = asListed(raw(name).orElse(byDefault), allowed);
        if (!allowed.contains(value)) {
            List<String> several = parts(value).stream()
                    .filter(part -> allowed.contains(asListed(part, allowed)))
                    .toList();
            if (several.size() > 1) {
                unclear(name, onlyOne(name), several);
            } else {
                unknown(name, value, allowed);
            }
            value = byDefault;
        }
        resolved.put(name, value);
        return value;
    }

    /** What is said to a list where one name is asked for. */
    public static String onlyOne(String name) {
        return name + " takes one name here, not a list";
    }

    /** The entries of what may be a list. */
    public static List<String> parts(String text) {
        return Stream.of(text.split("[,;]", -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /** One of a closed list of names, mapped to its value. */
    public <T> T oneOf(
            String name, Collection<String> allowed, Function<String, Optional<T>> read, T byDefault, String id) {
        String value = oneOf(name, allowed, id);
        return read.apply(value).orElse(byDefault);
    }

    /** Names from a closed list. */
    public List<String> someOf(String name, Collection<String> allowed, List<String> byDefault, int most) {
        List<String> values = items(name, most).stream().map(InputItem::text).toList();
        if (values.isEmpty()) {
            values = byDefault;
        }
        List<String> listed = values.stream()
                .map(value -> asListed(value, allowed))
                .distinct()
                .toList();
        listed.stream().filter(value -> !allowed.contains(value)).forEach(value -> unknown(name, value, allowed));
        if (!listed.isEmpty()) {
            resolved.put(name, listed);
        }
        return listed;
    }

    /** A finite number within limits. */
    public double number(String name, double least, double most, double byDefault) {
        Optional<String> value = raw(name);
        double number = byDefault;
        if (value.isPresent()) {
            boolean decimal = DECIMAL.matcher(value.get()).matches();
            number = decimal ? Double.parseDouble(value.get()) : Double.NaN;
            if (!(number >= least && number <= most) || Underflow.happened(number, value.get())) {
                fault(name, name + " must be a number from " + plain(least) + " to " + plain(most));
                number = byDefault;
            }
        }
        resolved.put(name, number);
        return number;
    }

    /** A whole number within limits; one above the maximum exceeds a limit (422) rather than being invalid. */
    public long count(String name, long least, long most, long byDefault) {
        Optional<String> value = raw(name);
        if (value.isPresent() && WHOLE.matcher(value.get()).matches() && Long.parseLong(value.get()) > most) {
            tooMuch(name, name + " must be a whole number from " + least + " to " + most);
            resolved.put(name, byDefault);
            return byDefault;
        }
        return whole(name, least, most, byDefault);
    }

    /** A whole number within limits. */
    public long whole(String name, long least, long most, long byDefault) {
        Optional<String> value = raw(name);
        long number = byDefault;
        if (value.isPresent()) {
            boolean whole = WHOLE.matcher(value.get()).matches();
            if (!whole || Long.parseLong(value.get()) < least || Long.parseLong(value.get()) > most) {
                fault(name, name + " must be a whole number from " + least + " to " + most);
            } else {
                number = Long.parseLong(value.get());
            }
        }
        resolved.put(name, number);
        return number;
    }

    // Lists

    /** The texts of a list, each with its location: separated by commas in a query string, one entry each in a body. */
    public List<InputItem> items(String name, int most) {
        if (!isQuery()) {
            return texts(name, most, true);
        }
        List<String> values = raw(name)
                .map(value -> Stream.of(value.split(",", -1))
                        .map(String::strip)
                        .filter(entry -> !entry.isEmpty())
                        .distinct()
                        .toList())
                .orElse(List.of());
        if (values.size() > most) {
            tooMuch(name, name + " has " + values.size() + " entries; at most " + most + " are allowed");
        }
        return values.stream().limit(most).map(text -> item(name, text)).toList();
    }

    /** The text of a name. */
    public InputItem item(String name, String text) {
        return new InputItem(name, "", text, faults);
    }

    /** A list of texts in a body; absent reads as empty. */
    public List<String> texts(String name, int most) {
        return texts(name, most, false).stream().map(InputItem::text).toList();
    }

    private List<InputItem> texts(String name, int most, boolean stripped) {
        List<InputItem> texts = new ArrayList<>();
        for (int i = 0; i < elements(name, most); i++) {
            JsonNode inner = node.path(name).path(i);
            if (inner.isTextual() && inner.asText().length() <= InputLimits.FIELD_CHARACTERS) {
                texts.add(new InputItem(name, "/" + i, stripped ? inner.asText().strip() : inner.asText(), faults));
            } else {
                faults.add(name, "/" + i, "entries of " + name + " must be short texts", List.of(), List.of());
            }
        }
        return texts;
    }

    /** A list of objects; absent reads as empty. */
    public List<Input> objects(String name, int most) {
        List<Input> objects = new ArrayList<>();
        for (int i = 0; i < elements(name, most); i++) {
            JsonNode inner = node.path(name).path(i);
            if (inner.isObject()) {
                objects.add(new Input(inner, faults.inside(name, "/" + i)));
            } else {
                faults.add(name, "/" + i, "entries of " + name + " must be objects", List.of(), List.of());
            }
        }
        return objects;
    }

    /** True when a list was given and nothing is in it. */
    public boolean isEmptyList(String name) {
        return node.path(name).isArray() && node.path(name).isEmpty();
    }

    private int elements(String name, int most) {
        if (!has(name)) {
            return 0;
        }
        JsonNode list = node.path(name);
        if (!list.isArray()) {
            fault(name, name + " must be a list");
            return 0;
        }
        if (list.size() > most) {
            tooMuch(name, name + " has " + list.size() + " entries; at most " + most + " are allowed");
            return 0;
        }
        return list.size();
    }

    // Exact JSON types, as records require

    /** True when a nested object was given. */
    public boolean isObject(String name) {
        return node.path(name).isObject();
    }

    /** A nested object; absent reads as empty. */
    public Optional<Input> object(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        JsonNode inner = node.path(name);
        if (!inner.isObject()) {
            fault(name, name + " must be an object");
            return Optional.empty();
        }
        return Optional.of(new Input(inner, faults.inside(name, "")));
    }

    /** A number within limits, if given; then it is added to the resolved question. */
    public OptionalDouble number(String name, double least, double most) {
        if (!has(name)) {
            return OptionalDouble.empty();
        }
        JsonNode value = node.path(name);
        if (!isWithin(value, least, most)) {
            String one = value.isArray() ? "one number" : "a number";
            fault(name, name + " must be " + one + limits(least, most) + (value.isArray() ? ", not a range" : ""));
            return OptionalDouble.empty();
        }
        resolved.put(name, value.asDouble());
        return OptionalDouble.of(value.asDouble());
    }

    private static boolean isWithin(JsonNode value, double least, double most) {
        return value.isNumber() && value.asDouble() >= least && value.asDouble() <= most;
    }

    private static String limits(double least, double most) {
        return " from " + SevenDigits.plain(least) + " to " + SevenDigits.plain(most);
    }

    /**
     * A number within limits or a range of such, if given.
     *
     * @return nothing where it is absent or wrong; one number; low and high; or low, best guess and high
     */
    public double[] numberOrRange(String name, double least, double most) {
        if (!has(name)) {
            return new double[0];
        }
        JsonNode value = node.path(name);
        if (isWithin(value, least, most)) {
            return new double[] {value.asDouble()};
        }
        double[] range = new double[value.isArray() ? value.size() : 0];
        boolean right = range.length == 2 || range.length == 3;
        boolean rising = true;
        for (int i = 0; i < range.length && right; i++) {
            right = isWithin(value.path(i), least, most);
            range[i] = value.path(i).asDouble();
            rising &= i == 0 || range[i] >= range[i - 1];
        }
        if (!right) {
            fault(
                    name,
                    name + " must be a number" + limits(least, most)
                            + ", or a range of such: [low, high] or [low, best guess, high]");
            return new double[0];
        }
        if (!rising || range[0] == range[range.length - 1]) {
            fault(name, name + " must rise from low to high: [low, high] or [low, best guess, high], or be one number");
            return new double[0];
        }
        return range;
    }

    /** Where a field of this object stands: a JSON Pointer (RFC 6901) into the body. */
    public String pointer(String name) {
        return faults.place(name);
    }

    /** A required number; 0 after an error. */
    public double needNumber(String name, double least, double most) {
        if (!has(name)) {
            fault(name, name + " is missing");
            return 0;
        }
        return number(name, least, most).orElse(0);
    }

    /** A short text, if given. */
    public Optional<String> text(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        JsonNode value = node.path(name);
        if (value.isTextual() && value.asText().length() > InputLimits.FIELD_CHARACTERS) {
            tooMuch(name, name + " is longer than " + InputLimits.FIELD_CHARACTERS + " characters");
            return Optional.empty();
        }
        String line = value.isTextual() ? PlainLine.of(value.asText()) : "";
        if (line.isEmpty()) {
            fault(name, name + " must be a text of 1 to " + InputLimits.FIELD_CHARACTERS + " characters");
            return Optional.empty();
        }
        return Optional.of(line);
    }

    /** One of a closed list of names, if given. */
    public Optional<String> oneOf(String name, Collection<String> allowed) {
        Optional<String> value = text(name);
        if (value.isPresent() && !allowed.contains(value.get())) {
            unknown(name, value.get(), allowed, Nearest.to(value.get(), allowed, 3));
            return Optional.empty();
        }
        return value;
    }

    /** A required name of a closed list. */
    public Optional<String> needOneOf(String name, Collection<String> allowed) {
        if (!has(name)) {
            fault(name, name + " is missing", allowed);
            return Optional.empty();
        }
        return oneOf(name, allowed);
    }

    // Errors

    /** Adds an error about a value that is not allowed. */
    public void unknown(String name, String value, Collection<String> allowed) {
        String what = isQuery() ? singular(name) : name;
        List<String> meant = FieldWords.meant(value, allowed);
        faults.add(
                name, "", unknownWords(what, value), allowed, meant.isEmpty() ? Nearest.to(value, allowed, 3) : meant);
    }

    /** The same for a text of records, with the nearest allowed values. */
    public void unknown(String name, String value, Collection<String> allowed, List<String> near) {
        faults.add(name, "", "unknown " + name + " \"" + value + "\"", allowed, near);
    }

    /** The same with what is to be done about a value that is in no list. */
    public void unknownBut(String name, String value, String wayOn, Collection<String> allowed, List<String> near) {
        faults.add(name, "", unknownWords(name, value) + wayOn, allowed, near);
    }

    public void fault(String name, String message) {
        fault(name, message, List.of());
    }

    /** An error with the allowed values. */
    public void fault(String name, String message, Collection<String> allowed) {
        faults.add(name, "", message, allowed, List.of());
    }

    /** Adds the obstacles that the records or the question report. */
    public void fault(Obstacle obstacle) {
        fault(obstacle.field(), obstacle.text());
    }

    /** Adds an error about a valid value that exceeds a limit. */
    public void tooMuch(String name, String message) {
        faults.addTooMuch(name, message);
    }

    /** Adds an error about an unknown value, with the nearest allowed values. */
    public void unclear(String name, String message, List<String> didYouMean) {
        faults.add(name, "", message, List.of(), didYouMean);
    }

    /** All errors found so far, anywhere in the question. */
    public List<FieldError> faults() {
        return faults.all();
    }

    static String unknownWords(String what, String value) {
        return "unknown " + what + " \"" + Excerpt.of(value) + "\"";
    }

    // The resolved question

    public void resolve(String name, Object value) {
        resolved.put(name, value);
    }

    /** Removes a name from the resolved question. */
    public void unresolve(String name) {
        resolved.remove(name);
    }

    /** Everything read so far, defaults included, in order of reading: texts, numbers and lists of texts. */
    public Map<String, Object> resolved() {
        return new LinkedHashMap<>(resolved);
    }

    /** A name as its list spells it: spreadsheets capitalise the first letter typed into a cell. */
    public static String asListed(String typed, Collection<String> allowed) {
        if (allowed.contains(typed)) {
            return typed;
        }
        return allowed.stream().filter(typed::equalsIgnoreCase).findFirst().orElse(typed);
    }

    static String singular(String name) {
        return name.endsWith("s") && !name.endsWith("is") ? name.substring(0, name.length() - 1) : name;
    }

    public static String plain(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }
}
