package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.InputStream;
import java.util.Locale;

/** The body of a request as the framework holds it. */
record SentBody(Context context) implements Sent {
    @Override
    public String mediaType() {
        String type = context.header("Content-Type");
        return type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }

    @Override
    public JsonNode json() {
        if (!mediaType().equals(Answer.JSON)) {
            throw new Refused(Problem.plain(
                    415, "media-type", "Wrong media type", "send the records as Content-Type: application/json"));
        }
        return JsonBody.parse(context.bodyAsBytes());
    }

    @Override
    public InputStream stream() {
        return context.bodyInputStream();
    }
}
