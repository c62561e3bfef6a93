package org.scalepan.factors;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.Reference;

/**
 * Reads a factor library, and lays a user's own rows over it. All faults are collected before giving up, so that one start
 * shows everything there is to mend.
 */
public final class LibraryLoader {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final List<Fault> faults = new ArrayList<>();
    private final FactorFiles base;
    private final Optional<FactorFiles> own;

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
        Optional<JsonNode> dataPackage = json(base, "datapackage.json");
        if (dataPackage.isEmpty()) {
            missing("datapackage.json");
            return broken();
        }
        Map<String, Table> tables = new LinkedHashMap<>();
        for (TableSchema schema : TableSchema.readAll(dataPackage.get())) {
            table(schema).ifPresent(table -> tables.put(schema.name(), table));
        }
        List<Reference> references = references();
        Set<String> sources = new TreeSet<>();
        references.forEach(reference -> sources.add(reference.id()));
        TableCheck check = new TableCheck(faults);
        tables.values().forEach(table -> check.links(table, tables, sources));
        if (faults.isEmpty()) {
            new TradeCheck(tables, faults).run();
        }
        if (!faults.isEmpty()) {
            return broken();
        }
        return new LibraryLoad.Loaded(new Library(version(tables, references), tables, references));
    }

    private LibraryLoad broken() {
        faults.sort(
                Comparator.comparing(Fault::file).thenComparingLong(Fault::line).thenComparingInt(Fault::column));
        return new LibraryLoad.Broken(faults);
    }

    private void missing(String name) {
        faults.add(new Fault(
                base.place(name), 1, 1, "the file is missing", "every table named in datapackage.json must be there"));
    }

    private Optional<Table> table(TableSchema schema) {
        TableCheck check = new TableCheck(faults);
        Optional<byte[]> bytes = base.read(schema.path());
        if (bytes.isEmpty()) {
            missing(schema.path());
            return Optional.empty();
        }
        Table table = CsvReading.read(schema, base.place(schema.path()), bytes.get(), false, faults);
        check.cells(table);
        Optional<Table> ownTable = own.flatMap(files -> files.read(schema.path())
                .map(rows -> CsvReading.read(schema, files.place(schema.path()), rows, true, faults)));
        ownTable.ifPresent(check::cells);
        boolean everyRowHasAnId = faults.isEmpty();
        return Optional.of(everyRowHasAnId && ownTable.isPresent() ? table.overlaidBy(ownTable.get()) : table);
    }

    private List<Reference> references() {
        Map<String, Reference> byId = new LinkedHashMap<>();
        references(base, true).forEach(reference -> byId.put(reference.id(), reference));
        own.ifPresent(files -> references(files, false).forEach(reference -> byId.put(reference.id(), reference)));
        return List.copyOf(byId.values());
    }

    private List<Reference> references(FactorFiles files, boolean required) {
        String name = "sources.json";
        Optional<JsonNode> array = json(files, name);
        if (array.isEmpty()) {
            if (required) {
                missing(name);
            }
            return List.of();
        }
        List<String> wrong = CslJson.faults(array.get());
        wrong.forEach(what -> faults.add(new Fault(
                files.place(name), 1, 1, what, "every entry must be a CSL-JSON item with id, type and title")));
        return wrong.isEmpty() ? CslJson.read(array.get()) : List.of();
    }

    private Optional<JsonNode> json(FactorFiles files, String name) {
        return files.read(name)
                .flatMap(bytes -> CsvReading.text(files.place(name), bytes, faults))
                .map(text -> parse(files.place(name), text));
    }

    private JsonNode parse(String place, String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            faults.add(new Fault(
                    place,
                    e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                    e.getLocation() == null ? 1 : e.getLocation().getColumnNr(),
                    "not JSON: " + e.getOriginalMessage(),
                    "mend the syntax there"));
            return JsonNodeFactory.instance.missingNode();
        }
    }

    private LibraryVersion version(Map<String, Table> tables, List<Reference> references) {
        String bundled = base.read("VERSION")
                .map(bytes -> new String(bytes, java.nio.charset.StandardCharsets.UTF_8).strip())
                .orElse("unversioned");
        int ownRows = (int) tables.values().stream()
                .flatMap(table -> table.rows().stream())
                .filter(Row::overlaid)
                .count();
        return new LibraryVersion(
                ownRows == 0 ? bundled : bundled + "+own", LibraryDigest.of(tables, references), ownRows);
    }
}
