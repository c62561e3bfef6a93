package org.scalepan.web;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The body of an answer, its media type and the tag of its bytes: whole, so that one that never changes is made and tagged once, or as
 * rows that are written while they are computed.
 */
final class Answer {
    // Without a blank where the framework takes it out, so that all ways to an answer write the same.
    static final String JSON = "application/json";
    static final String CSV = "text/csv; charset=utf-8; header=present";
    static final String MARKDOWN = "text/markdown; charset=utf-8";
    static final String TEXT = "text/plain;charset=utf-8";
    static final String NDJSON = "application/x-ndjson";
    static final String XML = "application/xml; charset=utf-8";
    static final String SVG = "image/svg+xml";
    static final String HTML = "text/html;charset=utf-8";

    private final String mediaType;
    private final byte[] body;
    private final String tag;
    private final Optional<Rows> streamed;
    private final Optional<String> fileName;

    /** Writes an answer that is too long to be held. */
    interface Rows {
        void writeTo(OutputStream out) throws IOException;
    }

    /** The bytes are not copied; the caller gives them away. */
    Answer(String mediaType, byte[] body) {
        this(mediaType, body, EntityTag.of(body), Optional.empty(), Optional.empty());
    }

    private Answer(String mediaType, byte[] body, String tag, Optional<Rows> streamed, Optional<String> fileName) {
        this.mediaType = mediaType;
        this.body = body;
        this.tag = tag;
        this.streamed = streamed;
        this.fileName = fileName;
    }

    static Answer streamed(String mediaType, Rows rows) {
        return new Answer(mediaType, new byte[0], "", Optional.of(rows), Optional.empty());
    }

    static Answer of(String mediaType, String body) {
        return new Answer(mediaType, body.getBytes(StandardCharsets.UTF_8));
    }

    /** The same answer, to be kept as a file of this name. */
    Answer named(String name) {
        return new Answer(mediaType, body, tag, streamed, Optional.of(name));
    }

    /** The name of the file, for what a browser keeps rather than shows. */
    Optional<String> fileName() {
        return fileName;
    }

    String mediaType() {
        return mediaType;
    }

    String tag() {
        return tag;
    }

    byte[] body() {
        return body;
    }

    Optional<Rows> streamed() {
        return streamed;
    }
}
