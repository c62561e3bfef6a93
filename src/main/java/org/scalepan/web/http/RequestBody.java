package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.InputStream;

/** What a client sent along with a request; read when it is asked for. */
public interface RequestBody {
    /** Nothing was sent. */
    RequestBody NOTHING = new RequestBody() {
        @Override
        public String mediaType() {
            return "";
        }

        @Override
        public JsonNode json() {
            return MissingNode.getInstance();
        }

        @Override
        public InputStream stream() {
            return InputStream.nullInputStream();
        }
    };

    /** The media type as sent, in lower case, without its parameters. */
    String mediaType();

    /** The whole body as one JSON text; refused when it is something else or too long. */
    JsonNode json();

    /** The body as it arrives. */
    InputStream stream();
}
