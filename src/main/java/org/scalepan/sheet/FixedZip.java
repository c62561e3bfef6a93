package org.scalepan.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A ZIP file whose bytes depend on its entries alone: one fixed date, and stored rather than compressed, because the compressors of
 * two machines need not agree.
 */
public final class FixedZip {
    /** The earliest date that the ZIP format can hold, in local time, because a time zone would shift it. */
    private static final LocalDateTime DAY = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Map<String, byte[]> entries = new LinkedHashMap<>();

    /** Adds an entry; entries keep the order in which they were added. */
    public FixedZip with(String name, byte[] content) {
        if (entries.putIfAbsent(name, content) != null) {
            throw new IllegalArgumentException("two entries are called " + name);
        }
        return this;
    }

    public byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setMethod(ZipOutputStream.STORED);
            for (Map.Entry<String, byte[]> named : entries.entrySet()) {
                byte[] content = named.getValue();
                CRC32 sum = new CRC32();
                sum.update(content);
                ZipEntry entry = new ZipEntry(named.getKey());
                entry.setTimeLocal(DAY);
                entry.setSize(content.length);
                entry.setCrc(sum.getValue());
                zip.putNextEntry(entry);
                zip.write(content);
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return out.toByteArray();
    }
}
