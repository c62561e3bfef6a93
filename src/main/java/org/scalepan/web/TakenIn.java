package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;

/** A body that has come whole and been read as JSON. */
record TakenIn(String mediaType, JsonNode json) implements Sent {
    /** Waits for the body; refused as {@link Sent#json} says. */
    static TakenIn of(Sent sent) {
        return new TakenIn(sent.mediaType(), sent.json());
    }

    /** Nothing: the body has been read. */
    @Override
    public InputStream stream() {
        return InputStream.nullInputStream();
    }
}
