package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.InputStream;
import java.util.Locale;
import java.util.function.IntConsumer;

/** The body of a request, read from the connection. */
public record StreamedBody(Context context) implements RequestBody {

    @Override
    public String mediaType() {
        String type = context.header("Content-Type");
        return type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }

    @Override
    public JsonNode json() {
        return JsonBody.parse(records(bytes -> {}));
    }

    @Override
    public InputStream stream() {
        return arriving(Limits.ROWS_BYTES);
    }

    /**
     * All bytes of a JSON body.
     *
     * @param taking as {@link BoundedInput#upTo} has it
     */
    byte[] records(IntConsumer taking) {
        if (!mediaType().equals(Answer.JSON)) {
            throw new ProblemException(Problem.plain(
                    415, "media-type", "Wrong media type", "send the records as Content-Type: application/json"));
        }
        return arriving(Limits.BODY_BYTES).upTo(Limits.BODY_BYTES, taking);
    }

    /** A body whose Content-Length exceeds the limit is refused before any of it is read. */
    private BoundedInput arriving(long most) {
        if (context.req().getContentLengthLong() > most) {
            throw BoundedInput.tooLong("The body is too long", most);
        }
        return new BoundedInput(context.bodyInputStream());
    }
}
