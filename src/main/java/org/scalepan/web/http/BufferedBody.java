package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A request body held in memory while it waits for a permit. It is parsed only when its turn comes, because the parsed tree needs many
 * times the memory.
 */
public final class BufferedBody implements RequestBody, AutoCloseable {
    private final String mediaType;
    private final byte[] bytes;
    private final ByteQuota quota;
    private final Client client;

    private BufferedBody(String mediaType, byte[] bytes, ByteQuota quota, Client client) {
        this.mediaType = mediaType;
        this.bytes = bytes;
        this.quota = quota;
        this.client = client;
    }

    /**
     * Reads the whole body.
     *
     * @throws ProblemException when its media type is not JSON, it is too long or too slow, or the quota is used up
     */
    public static BufferedBody of(StreamedBody sent, ByteQuota quota, Client client) {
        AtomicLong held = new AtomicLong();
        try {
            byte[] bytes = sent.records(block -> {
                quota.reserve(client, block);
                held.addAndGet(block);
            });
            return new BufferedBody(sent.mediaType(), bytes, quota, client);
        } catch (RuntimeException | OutOfMemoryError e) {
            quota.release(client, held.get());
            throw e;
        }
    }

    @Override
    public String mediaType() {
        return mediaType;
    }

    @Override
    public JsonNode json() {
        return JsonBody.parse(bytes);
    }

    /** Empty: the body has been read. */
    @Override
    public InputStream stream() {
        return InputStream.nullInputStream();
    }

    @Override
    public void close() {
        quota.release(client, bytes.length);
    }
}
