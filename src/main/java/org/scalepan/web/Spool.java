package org.scalepan.web;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Rows on their way in, laid down in a temporary file until they are computed. Most clients read nothing of an answer before they have
 * sent everything; answering into them while they still send would leave both waiting for the other. The file can be read by nobody
 * else and is deleted when it is closed.
 */
final class Spool implements AutoCloseable {
    private static final int BLOCK = 65_536;

    private final Path file;
    private final SpoolRoom room;
    private long held;

    private Spool(Path file, SpoolRoom room) {
        this.file = file;
        this.room = room;
    }

    /**
     * Takes in a body of at most so many bytes.
     *
     * @throws Refused when the body is longer, or the room is full
     */
    static Spool of(InputStream in, long most, SpoolRoom room) throws IOException {
        Spool spool = new Spool(Files.createTempFile("scalepan-rows", null), room);
        try {
            spool.fill(in, most);
        } catch (IOException | RuntimeException e) {
            spool.close();
            throw e;
        }
        return spool;
    }

    private void fill(InputStream in, long most) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            byte[] block = new byte[BLOCK];
            long taken = 0;
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                taken += read;
                if (taken > most) {
                    throw ArrivingBody.tooLong("Too many rows at once", most);
                }
                room.take(read);
                held += read;
                out.write(block, 0, read);
            }
        }
    }

    /** Reads the rows from the start; the file is gone, and its room free, when the stream is closed. */
    InputStream read() throws IOException {
        InputStream rows = Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
        long bytes = held;
        held = 0;
        return new FilterInputStream(rows) {
            private final AtomicBoolean open = new AtomicBoolean(true);

            @Override
            public void close() throws IOException {
                super.close();
                if (open.getAndSet(false)) {
                    room.giveBack(bytes);
                }
            }
        };
    }

    @Override
    public void close() throws IOException {
        room.giveBack(held);
        held = 0;
        Files.deleteIfExists(file);
    }
}
