package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A body that has come whole and waits to be computed. It is read as JSON only when its turn has come, because as a tree it needs
 * many times the memory.
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
     * Waits for the body.
     *
     * @throws ProblemException when it is no JSON by its media type, too long, too slow, or there is no room for it
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

    /** Nothing: the body has been read. */
    @Override
    public InputStream stream() {
        return InputStream.nullInputStream();
    }

    @Override
    public void close() {
        room.giveBack(client, bytes.length);
    }
}
