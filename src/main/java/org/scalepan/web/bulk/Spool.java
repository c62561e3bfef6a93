package org.scalepan.web.bulk;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.util.concurrent.atomic.AtomicBoolean;
import org.scalepan.web.http.BoundedInput;
import org.scalepan.web.http.ByteQuota;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;

/**
 * Stores a request body of rows in a temporary file until they are computed. Most clients read no response before they have sent the
 * whole body; a response written meanwhile would deadlock both. Closing deletes it.
 */
final class Spool implements AutoCloseable {
    private static final int BLOCK = 65_536;

    private final SpoolFolder.SpoolFile file;
    private final ByteQuota quota;
    private final Client client;
    private long held;
    private boolean handedOn;

    private Spool(SpoolFolder.SpoolFile file, ByteQuota quota, Client client) {
        this.file = file;
        this.quota = quota;
        this.client = client;
    }

    /**
     * Reads a body of at most so many bytes and lines.
     *
     * @throws ProblemException with 413 when the body has more, with 429 or 503 when the quota is used up, with 503 when the folder can
     *     take no file
     */
    static Spool of(SpoolFolder folder, InputStream in, long most, long mostLines, ByteQuota quota, Client client)
            throws IOException {
        Spool spool;
        try {
            spool = new Spool(folder.create(), quota, client);
        } catch (IOException e) {
            throw folder.refused(e);
        }
        try {
            spool.fill(in, most, mostLines);
            folder.worked();
        } catch (IOException e) {
            // What the client does wrong is a problem already, so that this is the file.
            spool.close();
            throw folder.refused(e);
        } catch (RuntimeException e) {
            spool.close();
            throw e;
        }
        return spool;
    }

    private void fill(InputStream in, long most, long mostLines) throws IOException {
        OutputStream out = Channels.newOutputStream(file.channel());
        byte[] block = new byte[BLOCK];
        long taken = 0;
        long lines = 0;
        for (int read = in.read(block); read >= 0; read = in.read(block)) {
            taken += read;
            if (taken > most) {
                throw BoundedInput.tooLong("Too many rows at once", most);
            }
            lines += lineEnds(block, read);
            if (lines > mostLines) {
                throw tooManyLines(mostLines);
            }
            quota.reserve(client, read);
            held += read;
            out.write(block, 0, read);
        }
    }

    private static int lineEnds(byte[] block, int length) {
        int ends = 0;
        for (int i = 0; i < length; i++) {
            if (block[i] == '\n') {
                ends++;
            }
        }
        return ends;
    }

    /** Bounds amplification: a body of line ends alone would otherwise get a response a hundred times its size. */
    private static ProblemException tooManyLines(long most) {
        return new ProblemException(Problem.plain(
                413,
                "refused",
                "Too many rows at once",
                "a body may have at most " + most + " lines; send it in parts"));
    }

    /** Reads the rows from the start; closing the stream deletes the file and releases its bytes of the quota. */
    InputStream read() throws IOException {
        InputStream rows = Channels.newInputStream(file.channel().position(0));
        long bytes = held;
        held = 0;
        handedOn = true;
        return new FilterInputStream(rows) {
            private final AtomicBoolean open = new AtomicBoolean(true);

            @Override
            public void close() throws IOException {
                if (open.getAndSet(false)) {
                    quota.release(client, bytes);
                    file.close();
                }
            }
        };
    }

    @Override
    public void close() throws IOException {
        quota.release(client, held);
        held = 0;
        if (!handedOn) {
            file.close();
        }
    }
}
