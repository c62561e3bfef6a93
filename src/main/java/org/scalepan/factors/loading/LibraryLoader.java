package org.scalepan.factors.loading;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.LibraryVersion;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;

/**
 * Reads a factor library, and overlays a user's own rows. All faults are collected before giving up, so that one start shows everything
 * there is to correct.
 */
public final class LibraryLoader {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** How the parser tells of a field that an object has twice. */
    private static final Pattern TWICE = Pattern.compile("^Duplicate field '(.*)'", Pattern.DOTALL);

    private static final Pattern ENTRY = Pattern.compile("entry (\\d{1,9}) \\(");

    private static final String DATA_PACKAGE = "datapackage.json";

    private static final String REFERENCE_FARMS = "reference_farms/";

    private final List<Fault> faults = new ArrayList<>();
    private final FactorFiles base;
    private final Optional<FactorFiles> own;
    private final Set<String> whole = new HashSet<>();

    private LibraryLoader(FactorFiles base, Optional<FactorFiles> own) {
        this.base = base;
        this.own = own;
    }

    /** Reads the library that travels with the program. */
    public static LibraryLoad bundled() {
        return load(new FactorFiles.Bundled(), Optional.empty());
    }

    /**
     * Reads a library.
     *
     * @param base a whole library, with {@code datapackage.json}
     * @param own some of the same tables with a user's rows, which win over rows of {@code base} with the same id
     */
    public static LibraryLoad load(FactorFiles base, Optional<FactorFiles> own) {
        return new LibraryLoader(base, own).load();
    }

    private LibraryLoad load() {
        Optional<JsonNode> dataPackage = json(base, DATA_PACKAGE, true);
        if (dataPackage.isEmpty()) {
            return broken();
        }
        Map<String, Table> tables = new LinkedHashMap<>();
        List<TableSchema> schemas = TableSchema.readAll(dataPackage.get());
        // Tables do not depend on each other; what is wrong with each is told in their order.
        for (TableRead read : schemas.parallelStream().map(this::table).toList()) {
            faults.addAll(read.faults);
            read.table.ifPresent(table -> tables.put(read.schema.name(), table));
            if (read.whole) {
                whole.add(read.schema.name());
            }
        }
        own.ifPresent(files -> strangers(files, TableSchema.readAll(dataPackage.get())));
        int known = faults.size();
        List<Reference> references = references();
        links(tables, references, faults.size() == known);
        new ConsistencyCheck(tables, whole, List.copyOf(faults), faults).run();
        Map<String, byte[]> documents = documents(dataPackage.get());
        List<ReferenceFarm> farms = referenceFarms(documents, tables, whole.size() == schemas.size());
        if (!faults.isEmpty()) {
            return broken();
        }
        return new LibraryLoad.Loaded(
                new Library(version(tables, references, farms), tables, references, documents, farms));
    }

    /** The reference farms among the documents; checked against the tables where every row could be read. */
    private List<ReferenceFarm> referenceFarms(
            Map<String, byte[]> documents, Map<String, Table> tables, boolean readable) {
        List<ReferenceFarm> farms = new ArrayList<>();
        ReferenceFarmCheck check = new ReferenceFarmCheck(tables, faults);
        documents.forEach((name, content) -> {
            if (!name.startsWith(REFERENCE_FARMS)) {
                return;
            }
            String place = base.place(name);
            Optional<String> text = CsvReading.text(place, content, faults);
            Optional<JsonNode> tree = text.flatMap(written -> parse(place, written));
            if (tree.isEmpty()) {
                return;
            }
            JsonLines lines = new JsonLines(place, text.orElseThrow());
            new ReferenceFarmReading(tree.get(), lines, faults).read().ifPresent(farm -> {
                if (readable) {
                    String id = name.substring(REFERENCE_FARMS.length()).replaceFirst("\\.json$", "");
                    check.check(id, farm, tree.get().path("system"), lines);
                }
                farms.add(farm);
            });
        });
        return farms;
    }

    /** Foreign keys are checked only where every row could be read: one broken file must not fault each row that refers to it. */
    private void links(Map<String, Table> tables, List<Reference> references, boolean sourcesAreWhole) {
        Map<String, Table> targets = new LinkedHashMap<>(tables);
        targets.keySet().retainAll(whole);
        Optional<Set<String>> sources = sourcesAreWhole
                ? Optional.of(references.stream().map(Reference::id).collect(Collectors.toUnmodifiableSet()))
                : Optional.empty();
        TableCheck check = new TableCheck(faults);
        tables.values().forEach(table -> check.links(table, targets, sources));
    }

    /** A misspelt file in a user's folder must not be ignored silently. */
    private void strangers(FactorFiles files, List<TableSchema> schemas) {
        List<String> known = new ArrayList<>(List.of("sources.json", DATA_PACKAGE));
        schemas.forEach(schema -> known.add(schema.path()));
        List<String> names = names(files);
        if (names.stream().allMatch(DATA_PACKAGE::equals)) {
            faults.add(new Fault(
                    files.place(""),
                    1,
                    1,
                    "the folder holds no table",
                    "put a file such as results.csv there, see factors/README.md"));
        }
        // A copy of the bundled file changes nothing; any other would have no effect and is therefore a fault.
        Optional<byte[]> ownSchema = bytes(files, DATA_PACKAGE);
        if (ownSchema.isPresent()
                && !Arrays.equals(ownSchema.get(), bytes(base, DATA_PACKAGE).orElse(new byte[0]))) {
            faults.add(new Fault(
                    files.place(DATA_PACKAGE),
                    1,
                    1,
                    "the columns cannot be changed by a folder of your own",
                    "take the file away, or leave it as it came"));
        }
        for (String name : names) {
            if (!known.contains(name)) {
                String near = Nearest.to(name, known, 1).stream()
                        .findFirst()
                        .map(right -> "did you mean " + right + "? ")
                        .orElse("");
                faults.add(new Fault(
                        files.place(name),
                        1,
                        1,
                        "no table has this file name",
                        near + "see factors/README.md for the files"));
            }
        }
    }

    private List<String> names(FactorFiles files) {
        try {
            return files.names();
        } catch (FactorFiles.Unreadable unreadable) {
            faults.add(unreadable.at(files.place("")));
            return List.of();
        }
    }

    private Optional<byte[]> bytes(FactorFiles files, String name) {
        return bytes(files, name, faults);
    }

    private static Optional<byte[]> bytes(FactorFiles files, String name, List<Fault> faults) {
        try {
            return files.read(name);
        } catch (FactorFiles.Unreadable unreadable) {
            faults.add(unreadable.at(files.place(name)));
            return Optional.empty();
        }
    }

    private LibraryLoad broken() {
        faults.sort(
                Comparator.comparing(Fault::file).thenComparingLong(Fault::line).thenComparingInt(Fault::column));
        return new LibraryLoad.Broken(faults);
    }

    private Fault missing(String name) {
        return new Fault(
                base.place(name), 1, 1, "the file is missing", "every file named in datapackage.json must be there");
    }

    /**
     * A table as it was read.
     *
     * @param table empty where its file is missing
     * @param whole whether every row could be read
     */
    private record TableRead(TableSchema schema, Optional<Table> table, boolean whole, List<Fault> faults) {}

    private TableRead table(TableSchema schema) {
        List<Fault> found = new ArrayList<>();
        Optional<byte[]> bytes = bytes(base, schema.path(), found);
        if (bytes.isEmpty()) {
            found.add(missing(schema.path()));
            return new TableRead(schema, Optional.empty(), false, found);
        }
        Table table = CsvReading.read(schema, base.place(schema.path()), bytes.get(), false, found);
        Optional<Table> ownTable = own.flatMap(files -> bytes(files, schema.path(), found)
                .map(rows -> CsvReading.read(schema, files.place(schema.path()), rows, true, found)));
        boolean readable = found.isEmpty();
        TableCheck check = new TableCheck(found);
        check.cells(table);
        ownTable.ifPresent(check::cells);
        return new TableRead(schema, Optional.of(ownTable.map(table::overlaidBy).orElse(table)), readable, found);
    }

    private List<Reference> references() {
        Map<String, Reference> byId = new LinkedHashMap<>();
        references(base, true).forEach(reference -> byId.put(reference.id(), reference));
        own.ifPresent(files -> references(files, false).forEach(reference -> byId.put(reference.id(), reference)));
        return List.copyOf(byId.values());
    }

    private List<Reference> references(FactorFiles files, boolean required) {
        String name = "sources.json";
        Optional<String> text = text(files, name, required);
        Optional<JsonNode> array = text.flatMap(written -> parse(files.place(name), written));
        if (array.isEmpty()) {
            return List.of();
        }
        JsonLines lines = new JsonLines(files.place(name), text.orElseThrow());
        List<Reference> read = CslJson.read(
                array.get(),
                what -> faults.add(
                        lines.at(entry(what), what, "every entry must be a CSL-JSON item with id, type and title")));
        for (int i = 0; i < read.size(); i++) {
            String check = read.get(i).check();
            if (Grade.of(check).isEmpty()) {
                faults.add(lines.at(
                        "/" + i + "/custom/check",
                        "unknown custom.check \"" + check + "\" of "
                                + read.get(i).id(),
                        "it must be one of "
                                + Stream.of(Grade.values()).map(Grade::id).collect(Collectors.joining(", "))));
            }
        }
        return read;
    }

    /** The place of an entry that a fault names by its number, counted from 1. */
    private static String entry(String fault) {
        Matcher number = ENTRY.matcher(fault);
        return number.find() ? "/" + (Integer.parseInt(number.group(1)) - 1) : "";
    }

    /** The tree in a JSON file, or nothing when the file is absent or, which is then a fault, cannot be read. */
    private Optional<JsonNode> json(FactorFiles files, String name, boolean required) {
        return text(files, name, required).flatMap(text -> parse(files.place(name), text));
    }

    private Optional<String> text(FactorFiles files, String name, boolean required) {
        Optional<byte[]> bytes = bytes(files, name);
        if (bytes.isEmpty() && required) {
            faults.add(missing(name));
        }
        return bytes.flatMap(content -> CsvReading.text(files.place(name), content, faults));
    }

    private Optional<JsonNode> parse(String place, String text) {
        try {
            return Optional.of(JSON.readTree(text));
        } catch (JsonProcessingException e) {
            Matcher twice = TWICE.matcher(String.valueOf(e.getOriginalMessage()));
            faults.add(new Fault(
                    place,
                    e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                    e.getLocation() == null ? 1 : e.getLocation().getColumnNr(),
                    twice.find()
                            ? "the field \"" + twice.group(1) + "\" stands twice in one object"
                            : "not JSON from here on",
                    twice.reset().find()
                            ? "leave one of the two"
                            : "see to the quotes, commas and brackets here and just before"));
            return Optional.empty();
        }
    }

    /** The files of the folder that hold no rows: the schema and the documents that it names. */
    private Map<String, byte[]> documents(JsonNode dataPackage) {
        Map<String, byte[]> documents = new LinkedHashMap<>();
        document(DATA_PACKAGE, documents);
        dataPackage.path("documents").forEach(name -> document(name.asText(), documents));
        return documents;
    }

    private void document(String name, Map<String, byte[]> documents) {
        Optional<byte[]> content = bytes(base, name);
        if (content.isEmpty() && name.startsWith(REFERENCE_FARMS)) {
            faults.add(missing(name));
        }
        content.ifPresent(bytes -> documents.put(name, bytes));
    }

    private LibraryVersion version(Map<String, Table> tables, List<Reference> references, List<ReferenceFarm> farms) {
        String bundled = base.read("VERSION")
                .map(bytes -> new String(bytes, java.nio.charset.StandardCharsets.UTF_8).strip())
                .orElse("unversioned");
        int ownRows = (int) tables.values().stream()
                .flatMap(table -> table.rows().stream())
                .filter(Row::overlaid)
                .count();
        return new LibraryVersion(
                ownRows == 0 ? bundled : bundled + "+own", LibraryDigest.of(tables, references, farms), ownRows);
    }
}
