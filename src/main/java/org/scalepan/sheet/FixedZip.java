package org.scalepan.sheet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;

/**
 * A ZIP file whose bytes depend on its entries alone: one fixed date, and stored rather than compressed, because the compressors of
 * two machines need not agree. It is written here because the JDK's writer marks entries differently from version to version.
 *
 * @see <a href="https://pkware.cachefly.net/webdocs/casestudies/APPNOTE.TXT">APPNOTE.TXT, sections 4.3 and 4.4</a>
 */
public final class FixedZip {
    private static final int LOCAL_HEADER = 0x04034b50;
    private static final int CENTRAL_HEADER = 0x02014b50;
    private static final int END = 0x06054b50;
    /** Version 2.0 of the format; as the writer of an entry, on MS-DOS. */
    private static final short VERSION = 20;
    /** Names are UTF-8. */
    private static final short FLAGS = 1 << 11;

    private static final short STORED = 0;
    private static final short MIDNIGHT = 0;
    /** 1 January 1980, the earliest date that the format can hold: year 0, month 1, day 1. */
    private static final short DAY = 1 << 5 | 1;

    private static final int MOST_ENTRIES = 0xFFFE;

    private final Map<String, byte[]> entries = new LinkedHashMap<>();

    /** Adds an entry; entries keep the order in which they were added. */
    public FixedZip with(String name, byte[] content) {
        if (entries.putIfAbsent(name, content) != null) {
            throw new IllegalArgumentException("two entries are called " + name);
        }
        if (entries.size() > MOST_ENTRIES) {
            throw new IllegalArgumentException("more entries than the format can count");
        }
        return this;
    }

    public byte[] bytes() {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        ByteArrayOutputStream directory = new ByteArrayOutputStream();
        entries.forEach((name, content) -> {
            byte[] called = name.getBytes(StandardCharsets.UTF_8);
            int at = file.size();
            file.writeBytes(fields(30)
                    .putInt(LOCAL_HEADER)
                    .putShort(VERSION)
                    .put(described(called, content))
                    .array());
            file.writeBytes(called);
            file.writeBytes(content);
            // After the description: no comment, disk 0, no attributes.
            directory.writeBytes(fields(46)
                    .putInt(CENTRAL_HEADER)
                    .putShort(VERSION)
                    .putShort(VERSION)
                    .put(described(called, content))
                    .position(42)
                    .putInt(at)
                    .array());
            directory.writeBytes(called);
        });
        int start = file.size();
        file.writeBytes(directory.toByteArray());
        file.writeBytes(fields(22)
                .putInt(END)
                .position(8)
                .putShort((short) entries.size())
                .putShort((short) entries.size())
                .putInt(directory.size())
                .putInt(start)
                .array());
        return file.toByteArray();
    }

    /** What both headers of an entry say: method, time, sum, lengths. */
    private static byte[] described(byte[] name, byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        return fields(24)
                .putShort(FLAGS)
                .putShort(STORED)
                .putShort(MIDNIGHT)
                .putShort(DAY)
                .putInt((int) sum.getValue())
                .putInt(content.length)
                .putInt(content.length)
                .putShort((short) name.length)
                .putShort((short) 0)
                .array();
    }

    /** ByteBuffer of a header; what is not set stays 0. */
    private static ByteBuffer fields(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }
}
