package org.scalepan.web.http;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.scalepan.words.Language;

/**
 * The body of a response, its media type and entity tag: either whole, so that a fixed one is rendered and tagged once, or as rows
 * streamed while they are computed.
 */
public final class Answer {
    // Without the blank that the framework removes, so that cached and fresh responses have the same header.
    public static final String JSON = "application/json";
    public static final String CSV = "text/csv; charset=utf-8; header=present";
    public static final String MARKDOWN = "text/markdown; charset=utf-8";
    public static final String TEXT = "text/plain;charset=utf-8";
    public static final String NDJSON = "application/x-ndjson";
    public static final String XML = "application/xml; charset=utf-8";
    public static final String SVG = "image/svg+xml";
    public static final String HTML = "text/html;charset=utf-8";

    private final String mediaType;
    private final byte[] body;
    private final String tag;
    private final Optional<Rows> streamed;
    private final Optional<String> fileName;
    private final Optional<Language> language;

    /** Writes a body that is too long for memory. */
    public interface Rows {
        void writeTo(OutputStream out) throws IOException;
    }

    /** The bytes are not copied; the caller must not change them. */
    public Answer(String mediaType, byte[] body) {
        this(mediaType, body, EntityTag.of(body), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private Answer(
            String mediaType,
            byte[] body,
            String tag,
            Optional<Rows> streamed,
            Optional<String> fileName,
            Optional<Language> language) {
        this.mediaType = mediaType;
        this.body = body;
        this.tag = tag;
        this.streamed = streamed;
        this.fileName = fileName;
        this.language = language;
    }

    public static Answer streamed(String mediaType, Rows rows) {
        return new Answer(mediaType, new byte[0], "", Optional.of(rows), Optional.empty(), Optional.empty());
    }

    public static Answer of(String mediaType, String body) {
        return new Answer(mediaType, body.getBytes(StandardCharsets.UTF_8));
    }

    /** The same answer as a download with this file name. */
    public Answer named(String name) {
        return new Answer(mediaType, body, tag, streamed, Optional.of(name), language);
    }

    /** The same answer, whose sentences are in a language. */
    public Answer in(Language spoken) {
        return new Answer(mediaType, body, tag, streamed, fileName, Optional.of(spoken));
    }

    /** The language of its sentences; empty where there are none or they are English alone. */
    public Optional<Language> language() {
        return language;
    }

    /** The file name of a download. */
    public Optional<String> fileName() {
        return fileName;
    }

    public String mediaType() {
        return mediaType;
    }

    public String tag() {
        return tag;
    }

    public byte[] body() {
        return body;
    }

    public Optional<Rows> streamed() {
        return streamed;
    }
}
