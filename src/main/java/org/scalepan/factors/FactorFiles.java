package org.scalepan.factors;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the files of a factor library come from. */
public sealed interface FactorFiles {

    /** The content of a file of the library, or nothing if it has no such file. */
    Optional<byte[]> read(String name);

    /** The CSV and JSON files that lie in this library, so that a misspelt one is not passed over in silence. */
    List<String> names();

    /** How to name a file of this library to a person, so that a fault can be found. */
    String place(String name);

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
        @Override
        public Optional<byte[]> read(String name) {
            Path file = path.resolve(name);
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            try {
                return Optional.of(Files.readAllBytes(file));
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read " + file, e);
            }
        }

        @Override
        public List<String> names() {
            try (Stream<Path> files = Files.list(path)) {
                return files.map(file -> String.valueOf(file.getFileName()))
                        .filter(name -> name.endsWith(".csv") || name.endsWith(".json"))
                        .sorted()
                        .toList();
            } catch (IOException e) {
                throw new UncheckedIOException("cannot list " + path, e);
            }
        }

        @Override
        public String place(String name) {
            return path.resolve(name).toString();
        }
    }
}
