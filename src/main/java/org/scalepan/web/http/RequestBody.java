package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.InputStream;

/** The body of a request, read on demand. */
public interface RequestBody {
    /** No body. */
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

    /** The whole body parsed as one JSON text; refused when it is not JSON or too long. */
    JsonNode json();

    /** The body as it arrives. */
    InputStream stream();
}
