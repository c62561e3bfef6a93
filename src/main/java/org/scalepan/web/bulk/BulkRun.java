package org.scalepan.web.bulk;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.exchange.rows.BulkRows;
import org.scalepan.exchange.rows.BulkRows.SentRow;
import org.scalepan.exchange.rows.BulkView;
import org.scalepan.web.http.Answer;

/**
 * Answers the rows of a run in blocks on several processors. The output does not depend on their number.
 *
 * @param most rows per block
 * @param processors how many blocks are computed in parallel
 */
record BulkRun(BulkRows rows, BulkView view, int most, int processors) implements Answer.Rows {
    private static final int ENOUGH_CHARACTERS = 65_536;
    private static final long FLUSH_NANOSECONDS = 250_000_000;

    @Override
    public void writeTo(OutputStream out) throws IOException {
        out.write(view.head().getBytes(StandardCharsets.UTF_8));
        Written written = new Written(out);
        OrderedParallel.run(processors, this::block, this::answered, written);
        out.flush();
    }

    private Optional<List<SentRow>> block() throws IOException {
        List<SentRow> block = new ArrayList<>();
        int size = 0;
        while (block.size() < most && size < ENOUGH_CHARACTERS) {
            Optional<SentRow> row = rows.next();
            if (row.isEmpty()) {
                break;
            }
            block.add(row.get());
            size += row.get().size();
        }
        return block.isEmpty() ? Optional.empty() : Optional.of(block);
    }

    private byte[] answered(List<SentRow> block) {
        return view.lines(block.stream().map(row -> row.answer().get()).toList())
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Flushes from time to time, so that a waiting client sees rows arrive. */
    private static final class Written implements OrderedParallel.Sink<byte[]> {
        private final OutputStream out;
        private long flushed = System.nanoTime();

        Written(OutputStream out) {
            this.out = out;
        }

        @Override
        public void take(byte[] lines) throws IOException {
            out.write(lines);
            long now = System.nanoTime();
            if (now - flushed > FLUSH_NANOSECONDS) {
                out.flush();
                flushed = now;
            }
        }
    }
}
