package org.scalepan.web;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.factors.Nearest;

/**
 * The parameters of one request, from path and query. Every reading collects its fault instead of stopping, so that one refusal
 * names everything that is wrong. What was read, defaults included, is kept in order: that is the resolved question.
 */
final class Parameters {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?([eE][+-]?\\d{1,3})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,18}");

    private final Map<String, String> given;
    private final Map<String, Object> resolved = new LinkedHashMap<>();
    private final List<Problem.Flaw> errors = new ArrayList<>();

    Parameters(Map<String, String> given) {
        this.given = new LinkedHashMap<>(given);
    }

    /** Refuses names that the route does not know. */
    void onlyKnown(Collection<String> known) {
        given.keySet().stream()
                .sorted()
                .filter(name -> !known.contains(name))
                .forEach(name -> errors.add(Problem.Flaw.of(
                        name,
                        "unknown parameter \"" + Problem.shortened(name) + "\"",
                        known.stream().sorted().toList(),
                        Nearest.to(name, known, 2))));
    }

    /** Takes a value that was said in another way, such as in a sentence. */
    void add(String name, String value) {
        given.put(name, value);
    }

    /** A value as given, or empty when the parameter is absent or blank. */
    Optional<String> raw(String name) {
        String value = given.get(name);
        if (value == null || value.isBlank()) {
            return Optional.empty();
        }
        if (value.length() > Limits.PARAMETER_CHARACTERS) {
            tooMuch(name, name + " is longer than " + Limits.PARAMETER_CHARACTERS + " characters");
            return Optional.empty();
        }
        return Optional.of(value.strip());
    }

    /** One of a closed list of names. */
    String oneOf(String name, Collection<String> allowed, String byDefault) {
        String value = asListed(raw(name).orElse(byDefault), allowed);
        if (!allowed.contains(value)) {
            unknown(name, value, allowed);
            value = byDefault;
        }
        resolved.put(name, value);
        return value;
    }

    /** One of a closed list of names that stand for something. */
    <T> T oneOf(String name, Collection<String> allowed, Function<String, Optional<T>> read, T byDefault, String id) {
        String value = oneOf(name, allowed, id);
        return read.apply(value).orElse(byDefault);
    }

    /** A comma list of names out of a closed list. */
    List<String> someOf(String name, Collection<String> allowed, List<String> byDefault, int most) {
        List<String> values = list(name, most);
        if (values.isEmpty()) {
            values = byDefault;
        }
        List<String> listed = values.stream()
                .map(value -> asListed(value, allowed))
                .distinct()
                .toList();
        listed.stream().filter(value -> !allowed.contains(value)).forEach(value -> unknown(name, value, allowed));
        resolve(name, listed);
        return listed;
    }

    /** A comma list, blanks around its entries dropped. */
    List<String> list(String name, int most) {
        List<String> values = raw(name)
                .map(value -> Stream.of(value.split(",", -1))
                        .map(String::strip)
                        .filter(entry -> !entry.isEmpty())
                        .distinct()
                        .toList())
                .orElse(List.of());
        if (values.size() > most) {
            tooMuch(name, name + " has " + values.size() + " entries; at most " + most + " are allowed");
            return values.subList(0, most);
        }
        return values;
    }

    /** A finite number within limits. */
    double number(String name, double least, double most, double byDefault) {
        Optional<String> value = raw(name);
        double read = byDefault;
        if (value.isPresent()) {
            boolean number = DECIMAL.matcher(value.get()).matches();
            read = number ? Double.parseDouble(value.get()) : Double.NaN;
            if (!(read >= least && read <= most)) {
                fault(name, name + " must be a number from " + plain(least) + " to " + plain(most));
                read = byDefault;
            }
        }
        resolved.put(name, read);
        return read;
    }

    /** A whole number within limits, of which more than the most is too much rather than wrong. */
    long count(String name, long least, long most, long byDefault) {
        Optional<String> value = raw(name);
        if (value.isPresent() && WHOLE.matcher(value.get()).matches() && Long.parseLong(value.get()) > most) {
            tooMuch(name, name + " must be a whole number from " + least + " to " + most);
            resolved.put(name, byDefault);
            return byDefault;
        }
        return whole(name, least, most, byDefault);
    }

    /** A whole number within limits. */
    long whole(String name, long least, long most, long byDefault) {
        Optional<String> value = raw(name);
        long read = byDefault;
        if (value.isPresent()) {
            boolean whole = WHOLE.matcher(value.get()).matches();
            if (!whole || Long.parseLong(value.get()) < least || Long.parseLong(value.get()) > most) {
                fault(name, name + " must be a whole number from " + least + " to " + most);
            } else {
                read = Long.parseLong(value.get());
            }
        }
        resolved.put(name, read);
        return read;
    }

    /** Adds a fault about a value that is not one of the allowed. */
    void unknown(String name, String value, Collection<String> allowed) {
        unknown(name, value, allowed, Nearest.to(value, allowed, 3));
    }

    void unknown(String name, String value, Collection<String> allowed, List<String> near) {
        // A long list helps nobody in an error; the vocabulary routes have it.
        List<String> shown = allowed.size() <= 60 ? List.copyOf(allowed) : List.of();
        errors.add(Problem.Flaw.of(
                name, "unknown " + singular(name) + " \"" + Problem.shortened(value) + "\"", shown, near));
    }

    void fault(String name, String message) {
        errors.add(Problem.Flaw.of(name, message));
    }

    /** Adds a fault about something that was understood, and is more than the service takes. */
    void tooMuch(String name, String message) {
        errors.add(Problem.Flaw.of(name, message).ofTooMuch());
    }

    /** Adds a fault about something that was not understood, with what could be meant. */
    void unclear(String name, String message, List<String> didYouMean) {
        errors.add(Problem.Flaw.of(name, message, List.of(), didYouMean));
    }

    void resolve(String name, Collection<String> values) {
        if (!values.isEmpty()) {
            resolved.put(name, List.copyOf(values));
        }
    }

    void resolve(String name, String value) {
        resolved.put(name, value);
    }

    /** Takes a name back out of the resolved question. */
    void unresolve(String name) {
        resolved.remove(name);
    }

    /** Everything read so far, defaults included, in order of reading: texts, numbers and lists of texts. */
    Map<String, Object> resolved() {
        return new LinkedHashMap<>(resolved);
    }

    /** Stops here if anything was wrong. */
    void refuseIfWrong() {
        if (!errors.isEmpty()) {
            // A ruler that is read once for each indicator finds the same fault each time.
            throw new Refused(Problem.badQuery(errors.stream().distinct().toList()));
        }
    }

    List<Problem.Flaw> errors() {
        return List.copyOf(errors);
    }

    /** A name as its list spells it: a spreadsheet makes the first letter of what is typed into a cell a capital. */
    static String asListed(String typed, Collection<String> allowed) {
        if (allowed.contains(typed)) {
            return typed;
        }
        return allowed.stream().filter(typed::equalsIgnoreCase).findFirst().orElse(typed);
    }

    static Set<String> names(String... names) {
        return new java.util.LinkedHashSet<>(List.of(names));
    }

    private static String singular(String name) {
        return name.endsWith("s") && !name.endsWith("is") ? name.substring(0, name.length() - 1) : name;
    }

    static String plain(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }
}
