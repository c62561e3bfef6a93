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
    private final ByteQuota room;
    private final Client client;

    private BufferedBody(String mediaType, byte[] bytes, ByteQuota room, Client client) {
        this.mediaType = mediaType;
        this.bytes = bytes;
        this.room = room;
        this.client = client;
    }

    /**
     * Reads the whole body.
     *
     * @throws ProblemException when its media type is not JSON, it is too long or too slow, or the quota is used up
     */
    public static BufferedBody of(StreamedBody sent, ByteQuota room, Client client) {
        AtomicLong held = new AtomicLong();
        try {
            byte[] bytes = sent.records(block -> {
                room.take(client, block);
                held.addAndGet(block);
            });
            return new BufferedBody(sent.mediaType(), bytes, room, client);
        } catch (RuntimeException | OutOfMemoryError e) {
            room.giveBack(client, held.get());
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
        room.giveBack(client, bytes.length);
    }
}
