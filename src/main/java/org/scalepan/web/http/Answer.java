package org.scalepan.web.http;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The body of an answer, its media type and the tag of its bytes: whole, so that one that never changes is made and tagged once, or as
 * rows that are written while they are computed.
 */
public final class Answer {
    // Without a blank where the framework takes it out, so that all ways to an answer write the same.
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

    /** Writes an answer that is too long to be held. */
    public interface Rows {
        void writeTo(OutputStream out) throws IOException;
    }

    /** The bytes are not copied; the caller gives them away. */
    public Answer(String mediaType, byte[] body) {
        this(mediaType, body, EntityTag.of(body), Optional.empty(), Optional.empty());
    }

    private Answer(String mediaType, byte[] body, String tag, Optional<Rows> streamed, Optional<String> fileName) {
        this.mediaType = mediaType;
        this.body = body;
        this.tag = tag;
        this.streamed = streamed;
        this.fileName = fileName;
    }

    public static Answer streamed(String mediaType, Rows rows) {
        return new Answer(mediaType, new byte[0], "", Optional.of(rows), Optional.empty());
    }

    public static Answer of(String mediaType, String body) {
        return new Answer(mediaType, body.getBytes(StandardCharsets.UTF_8));
    }

    /** The same answer, to be kept as a file of this name. */
    public Answer named(String name) {
        return new Answer(mediaType, body, tag, streamed, Optional.of(name));
    }

    /** The name of the file, for what a browser keeps rather than shows. */
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
