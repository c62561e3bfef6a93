package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;

/** The running service's reply to posted records. */
public record Posted(int status, String mediaType, String body) {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final JsonMapper JSON = new JsonMapper();

    public static Posted json(String body) {
        return bytes(body.getBytes(StandardCharsets.UTF_8), "application/json");
    }

    public static Posted bytes(byte[] body, String mediaType) {
        return to("/v1/footprint", body, mediaType);
    }

    /** Posts to another route. */
    public static Posted to(String path, String mediaType, String body) {
        return to(path, body.getBytes(StandardCharsets.UTF_8), mediaType);
    }

    private static Posted to(String path, byte[] body, String mediaType) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(RunningScalepan.uri(path)).POST(HttpRequest.BodyPublishers.ofByteArray(body));
        if (!mediaType.isEmpty()) {
            request.header("Content-Type", mediaType);
        }
        try {
            HttpResponse<String> response = CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
            String type =
                    response.headers().firstValue("Content-Type").orElse("").replaceAll(";.*", "");
            return new Posted(response.statusCode(), type, response.body());
        } catch (IOException e) {
            throw new AssertionError("no reply", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("no reply", e);
        }
    }

    /** The answer to records that must be valid. */
    public static JsonNode answer(String body) {
        Posted posted = json(body);
        if (posted.status() != 200) {
            throw new AssertionError(posted.body());
        }
        return posted.tree();
    }

    public JsonNode tree() {
        try {
            return JSON.readTree(body);
        } catch (IOException e) {
            throw new AssertionError("not JSON: " + body, e);
        }
    }

    /** The error at a pointer into the body; fails if there is none. */
    public JsonNode fault(String pointer) {
        for (JsonNode error : tree().path("errors")) {
            if (error.path("pointer").asText("none").equals(pointer)) {
                return error;
            }
        }
        throw new AssertionError("no fault at " + pointer + " in " + body);
    }
}
