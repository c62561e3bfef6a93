package org.scalepan.web.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The documents with tested examples: README.md and the guides. After a change of data or answers, {@code -Dscalepan.rewrite=true}
 * updates them.
 */
public final class Documents {
    static final Path README = Path.of("README.md");
    static final Path GUIDES = Path.of("src/site/markdown");
    /** The address that all of them use for the service. */
    static final String SERVICE = "http://127.0.0.1:8080";

    private Documents() {}

    static List<Path> all() {
        return Stream.concat(Stream.of(README), GuideRoutes.NAMES.stream().map(Documents::guide))
                .toList();
    }

    public static Path guide(String name) {
        return GUIDES.resolve(name + ".md");
    }

    public static String read(Path document) {
        try {
            return Files.readString(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes a document, only where rewriting was asked for and something has changed. */
    static void rewrite(Path document, String text) {
        if (Boolean.getBoolean("scalepan.rewrite") && !read(document).equals(text)) {
            try {
                Files.writeString(document, text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
