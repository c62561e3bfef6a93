package org.scalepan.web;

import java.nio.charset.StandardCharsets;

/** The body of an answer, its media type and the tag of its bytes; an answer that never changes is made, and tagged, once. */
final class Answer {
    static final String JSON = "application/json";
    static final String CSV = "text/csv; charset=utf-8; header=present";
    static final String MARKDOWN = "text/markdown; charset=utf-8";
    static final String TEXT = "text/plain; charset=utf-8";
    static final String XML = "application/xml; charset=utf-8";
    static final String HTML = "text/html; charset=utf-8";

    private final String mediaType;
    private final byte[] body;
    private final String tag;

    /** The bytes are not copied; the caller gives them away. */
    Answer(String mediaType, byte[] body) {
        this.mediaType = mediaType;
        this.body = body;
        this.tag = EntityTag.of(body);
    }

    static Answer of(String mediaType, String body) {
        return new Answer(mediaType, body.getBytes(StandardCharsets.UTF_8));
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
}
