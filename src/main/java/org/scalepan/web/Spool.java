package org.scalepan.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Rows on their way in, laid down in a temporary file until they are computed. Most clients read nothing of an answer before they have
 * sent everything; answering into them while they still send would leave both waiting for the other. The file can be read by nobody
 * else and is deleted when it is closed.
 */
final class Spool implements AutoCloseable {
    private static final int BLOCK = 65_536;

    private final Path file;

    private Spool(Path file) {
        this.file = file;
    }

    /** Takes in a body of at most so many bytes. */
    static Spool of(InputStream in, long most) throws IOException {
        Spool spool = new Spool(Files.createTempFile("scalepan-rows", null));
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
                    throw new Refused(Problem.plain(
                            413,
                            "refused",
                            "Too many rows at once",
                            "a body may have at most " + most / 1_048_576 + " MB; send the rows in parts"));
                }
                out.write(block, 0, read);
            }
        }
    }

    /** Reads the rows from the start; the file is gone when the stream is closed. */
    InputStream read() throws IOException {
        return Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(file);
    }
}
