package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A body that has come whole and waits to be computed. It is read as JSON only when its turn has come, because as a tree it needs
 * many times the memory.
 */
final class TakenIn implements Sent, AutoCloseable {
    private final String mediaType;
    private final byte[] bytes;
    private final WaitingRoom room;
    private final Client client;

    private TakenIn(String mediaType, byte[] bytes, WaitingRoom room, Client client) {
        this.mediaType = mediaType;
        this.bytes = bytes;
        this.room = room;
        this.client = client;
    }

    /**
     * Waits for the body.
     *
     * @throws Refused when it is no JSON by its media type, too long, too slow, or there is no room for it
     */
    static TakenIn of(SentBody sent, WaitingRoom room, Client client) {
        AtomicLong held = new AtomicLong();
        try {
            byte[] bytes = sent.records(block -> {
                room.take(client, block);
                held.addAndGet(block);
            });
            return new TakenIn(sent.mediaType(), bytes, room, client);
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
