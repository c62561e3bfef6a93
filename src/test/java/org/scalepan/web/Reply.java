package org.scalepan.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The running service's reply to a request. */
public record Reply(int status, Map<String, String> headers, String body) {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final JsonMapper JSON = new JsonMapper();

    /** Sends the given headers only; the client adds no Accept header of its own. */
    public static Reply to(String question, Map<String, String> headers) {
        return to(question, headers, Optional.empty());
    }

    /** The same; a body, where there is one, is sent as JSON unless a header says otherwise. */
    public static Reply to(String question, Map<String, String> headers, Optional<String> body) {
        return to(RunningScalepan.uri(question), headers, body);
    }

    /** Sends to another service than the shared one. */
    public static Reply to(URI question, Map<String, String> headers) {
        return to(question, headers, Optional.empty());
    }

    public static Reply to(URI question, Map<String, String> headers, Optional<String> body) {
        return sent(question, headers, body.map(text -> text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Sends bytes that need not be UTF-8. */
    public static Reply to(String question, String mediaType, byte[] body) {
        return sent(RunningScalepan.uri(question), Map.of("Content-Type", mediaType), Optional.of(body));
    }

    private static Reply sent(URI question, Map<String, String> headers, Optional<byte[]> body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(question);
        body.ifPresent(bytes -> request.POST(HttpRequest.BodyPublishers.ofByteArray(bytes)));
        Map<String, String> sent = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        body.ifPresent(bytes -> sent.put("Content-Type", "application/json"));
        sent.putAll(headers);
        sent.forEach(request::header);
        try {
            HttpResponse<byte[]> response = heard(request.build());
            Map<String, String> replied = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
            response.headers().map().forEach((name, values) -> replied.put(name, String.join(", ", values)));
            return new Reply(response.statusCode(), replied, new String(response.body(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError("no reply to " + question, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("no reply to " + question, e);
        }
    }

    /** A body that is too long is refused before it is read; a client that is still writing may lose the response, so this tries again. */
    private static HttpResponse<byte[]> heard(HttpRequest request) throws IOException, InterruptedException {
        for (int attempt = 1; ; attempt++) {
            try {
                return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
            } catch (IOException e) {
                if (attempt == 5) {
                    throw e;
                }
            }
        }
    }

    /** Posts records. */
    public static Reply to(String question, JsonNode body) {
        return to(question, Map.of(), Optional.of(body.toString()));
    }

    public static Reply to(String question) {
        return to(question, Map.of());
    }

    public Optional<String> header(String name) {
        return Optional.ofNullable(headers.get(name));
    }

    /** The media type without its parameters. */
    public String mediaType() {
        return header("Content-Type").orElse("").replaceAll(";.*", "").strip();
    }

    public boolean isJson() {
        return mediaType().equals("application/json") || mediaType().endsWith("+json");
    }

    public JsonNode json() {
        try {
            return JSON.readTree(body);
        } catch (JsonProcessingException e) {
            throw new AssertionError("not JSON: " + body, e);
        }
    }
}
