package org.scalepan.factors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.factors.loading.FactorFiles;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.factors.table.Fault;

/** A copy of the bundled folder in which a test changes single cells and knows the line and column of each. */
public final class LibraryCopy {
    /** One cell of a raw RFC 4180 line that holds no line end, and the comma or end that closes it. */
    private static final Pattern CELL = Pattern.compile("(\"(?:[^\"]|\"\")*\"|[^,]*)(,|$)");

    private final Path folder;

    public LibraryCopy(Path folder) {
        this.folder = folder;
        try (Stream<Path> files = Files.walk(bundledFolder())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copied = folder.resolve(bundledFolder().relativize(file).toString());
                Files.createDirectories(copied.getParent());
                Files.copy(file, copied);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Path bundledFolder() {
        try {
            return Path.of(LibraryLoader.class.getResource("/factors/VERSION").toURI())
                    .getParent();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    public String text(String name) {
        try {
            return Files.readString(file(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public void write(String name, String text) {
        write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public void write(String name, byte[] bytes) {
        try {
            Files.write(file(name), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public void delete(String name) {
        try {
            Files.delete(file(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Line (from 1) of the row with an id. */
    public int line(String name, String id) {
        List<String> lines = lines(name);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).equals(id) || lines.get(i).startsWith(id + ",")) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(name + " has no row " + id);
    }

    /** The raw line of the row with an id. */
    String raw(String name, String id) {
        return lines(name).get(line(name, id) - 1);
    }

    /** Puts another line in place of the row with an id. */
    public void replace(String name, String id, String line) {
        List<String> lines = lines(name);
        lines.set(line(name, id) - 1, line);
        write(name, String.join("\n", lines) + "\n");
    }

    /**
     * Puts raw text into one cell.
     *
     * @return the place of the cell as a fault names it, {@code file:line:column}
     */
    public String set(String name, String id, String column, String raw) {
        int line = line(name, id);
        List<String> cells = cells(raw(name, id));
        int index = cells(lines(name).get(0)).indexOf(column);
        int start =
                1 + cells.subList(0, index).stream().mapToInt(String::length).sum() + index;
        assertFalse(cells.get(index).equals(raw), () -> column + " of " + id + " is " + raw + " already");
        cells.set(index, raw);
        replace(name, id, String.join(",", cells));
        return file(name) + ":" + line + ":" + start;
    }

    /** The cell as written in the file, with its quotes. */
    String cell(String name, String id, String column) {
        return cells(raw(name, id)).get(cells(lines(name).get(0)).indexOf(column));
    }

    private List<String> lines(String name) {
        return new ArrayList<>(text(name).lines().toList());
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher matcher = CELL.matcher(line);
        while (matcher.find()) {
            cells.add(matcher.group(1));
            if (matcher.group(2).isEmpty()) {
                break;
            }
        }
        return cells;
    }

    public LibraryLoad load() {
        return LibraryLoader.load(new FactorFiles.Folder(folder), Optional.empty());
    }

    Library library() {
        return load() instanceof LibraryLoad.Loaded loaded ? loaded.library() : failWith(faults());
    }

    private static Library failWith(List<String> faults) {
        throw new AssertionError("the library is broken: " + faults);
    }

    /** Every fault, as the service prints it; none when the library is sound. */
    public List<String> faults() {
        return load() instanceof LibraryLoad.Broken broken
                ? broken.faults().stream().map(Fault::toString).toList()
                : List.of();
    }

    public void assertFaults(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", faults()));
    }
}
