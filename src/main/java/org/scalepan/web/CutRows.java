package org.scalepan.web;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.Reader;
import java.util.Iterator;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a table, one after the other, cut into cells. Of a table that is longer than a block the rows are cut by a thread of its
 * own while those before them are answered: reading is a third of the work, and two processors share it. The blocks go round between
 * the two, so the memory does not grow with the rows, and who answers slowly is not run away from.
 */
final class CutRows implements Closeable {
    private static final int BLOCKS = 4;

    private final CsvReader<Boolean> reader;
    private final Iterator<Boolean> records;
    private final CellBlock.Filler filler = new CellBlock.Filler();
    private final BlockingQueue<CellBlock> cut = new ArrayBlockingQueue<>(BLOCKS);
    private final BlockingQueue<CellBlock> free = new ArrayBlockingQueue<>(BLOCKS);
    private CellBlock block = new CellBlock();
    private int row;
    private @Nullable Thread ahead;

    CutRows(Reader text, char delimiter) {
        this.reader = CsvReader.builder()
                .fieldSeparator(delimiter)
                .commentStrategy(CommentStrategy.NONE)
                .maxBufferSize(Limits.CELL_CHARACTERS)
                // A row of another length is told in its place, and does not end the run.
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .build(filler, text);
        this.records = reader.iterator();
        fill(block);
    }

    /**
     * Goes to the next row.
     *
     * @param cells are moved to it
     * @return whether there is one
     * @throws de.siegmar.fastcsv.reader.CsvParseException when it cannot be cut, and none after it
     * @throws java.io.UncheckedIOException when it cannot be read, and none after it
     */
    boolean next(Cells cells) throws IOException {
        while (row == block.rows()) {
            if (block.isLast()) {
                rethrow(block.fault());
                return false;
            }
            block = nextBlock();
            row = 0;
        }
        cells.moveTo(block, row++);
        return true;
    }

    private static void rethrow(@Nullable Throwable fault) {
        if (fault instanceof RuntimeException exception) {
            throw exception;
        }
        if (fault instanceof Error error) {
            throw error;
        }
    }

    private CellBlock nextBlock() throws IOException {
        if (ahead == null) {
            for (int i = 1; i < BLOCKS; i++) {
                free.add(new CellBlock());
            }
            ahead = new Thread(this::cutAhead, "rows-ahead");
            ahead.setDaemon(true);
            ahead.start();
        }
        free.add(block);
        try {
            return cut.take();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted while rows were cut");
        }
    }

    private void cutAhead() {
        try {
            boolean more = true;
            while (more) {
                CellBlock next = free.take();
                fill(next);
                more = !next.isLast();
                cut.add(next);
            }
        } catch (InterruptedException e) {
            // Nobody wants the rest.
            Thread.currentThread().interrupt();
        }
    }

    /** Whatever goes wrong is told in its place, behind the rows before it. */
    private void fill(CellBlock next) {
        next.clear();
        filler.into(next);
        try {
            while (!next.isFull()) {
                if (!records.hasNext()) {
                    next.end();
                    return;
                }
                records.next();
            }
        } catch (RuntimeException | Error e) {
            next.end(e);
        }
    }

    @Override
    public void close() throws IOException {
        Thread cutting = ahead;
        if (cutting != null) {
            cutting.interrupt();
            try {
                cutting.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        reader.close();
    }
}
