package org.scalepan.factors.loading;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.factors.table.Fault;

/** Where the files of a factor library come from. */
public sealed interface FactorFiles {

    /** The content of a file of the library, or nothing if it has no such file. */
    Optional<byte[]> read(String name);

    /** The files of this library that are or look like tables, so that a misspelt one is not ignored silently. */
    List<String> names();

    /** How to name a file of this library to a person, so that a fault can be found. */
    String place(String name);

    /** A file of a user's folder that cannot be read, with what would be right; reported as a fault with its place. */
    final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final String right;

        Unreadable(String what, String right) {
            super(what, null, false, false);
            this.right = right;
        }

        Fault at(String place) {
            return new Fault(place, 1, 1, String.valueOf(getMessage()), right);
        }
    }

    /** The library that travels inside the jar. */
    record Bundled() implements FactorFiles {
        @Override
        public Optional<byte[]> read(String name) {
            try (InputStream in = FactorFiles.class.getResourceAsStream("/factors/" + name)) {
                return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read the bundled factors/" + name, e);
            }
        }

        @Override
        public List<String> names() {
            return List.of();
        }

        @Override
        public String place(String name) {
            return "factors/" + name;
        }
    }

    /** A folder on disk, as given with {@code --factors}. */
    record Folder(Path path) implements FactorFiles {
        /** Larger than any table of published numbers; a mistaken file must not fill the memory. */
        private static final long MOST_BYTES = 32L * 1024 * 1024;
        /** Rows take some ten times the bytes of their file while they are read. */
        private static final long HEAP_OVER_FILE = 16;

        private static final long MEGABYTE = 1024L * 1024;

        /** What only looks like a table would otherwise be ignored in silence. */
        private static final Pattern LOOKS_LIKE_A_TABLE = Pattern.compile(
                "(?i).*\\.(csv|tsv|tab|txt|json|jsonl|ndjson|xls|xlsx|xlsm|ods|numbers|yaml|yml|parquet|gz|zip)");

        @Override
        public Optional<byte[]> read(String name) {
            Path file = path.resolve(name);
            if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.empty();
            }
            // A pipe would be waited for without end, and a dangling link would be ignored.
            if (!Files.isRegularFile(file)) {
                throw new Unreadable("it is not a regular file", "put a plain file there, or nothing");
            }
            try {
                if (Files.size(file) > MOST_BYTES) {
                    throw new Unreadable("the file is larger than 32 MB", "split off what is not needed");
                }
                long heap = Runtime.getRuntime().maxMemory();
                if (Files.size(file) > heap / HEAP_OVER_FILE) {
                    throw new Unreadable(
                            "the file has " + Files.size(file) / MEGABYTE + " MB, too much for a heap of "
                                    + heap / MEGABYTE + " MB",
                            "start Java with a larger heap (-Xmx), or split off what is not needed");
                }
                return Optional.of(Files.readAllBytes(file));
            } catch (IOException e) {
                throw new Unreadable("the file cannot be read", "see who may read it");
            }
        }

        @Override
        public List<String> names() {
            try (Stream<Path> files = Files.list(path)) {
                return files.map(file -> String.valueOf(file.getFileName()))
                        .filter(name -> !name.startsWith(".")
                                && LOOKS_LIKE_A_TABLE.matcher(name).matches())
                        .sorted()
                        .toList();
            } catch (IOException e) {
                throw new Unreadable("the folder cannot be listed", "see who may read it");
            }
        }

        @Override
        public String place(String name) {
            return path.resolve(name).toString();
        }
    }
}
