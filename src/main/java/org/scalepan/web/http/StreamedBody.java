package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.InputStream;
import java.util.Locale;
import java.util.function.IntConsumer;
import org.scalepan.input.Excerpt;

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

    /** A compressed body could hold far more than its limit, and would be read as something that it is not. */
    private void refuseEncoded() {
        String encoding = context.header("Content-Encoding");
        if (encoding != null && !encoding.strip().equalsIgnoreCase("identity")) {
            throw new ProblemException(Problem.plain(
                    415,
                    "content-encoding",
                    "Wrong content encoding",
                    "the body comes as Content-Encoding: " + Excerpt.of(encoding)
                            + "; send it as it is, without this header"));
        }
    }

    /** A body whose Content-Length exceeds the limit is refused before any of it is read. */
    private BoundedInput arriving(long most) {
        refuseEncoded();
        if (context.req().getContentLengthLong() > most) {
            throw BoundedInput.tooLong("The body is too long", most);
        }
        return new BoundedInput(context.bodyInputStream());
    }
}
