package org.scalepan.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/**
 * Reads a ZIP file held in memory by the central directory at its end (APPNOTE.TXT, section 4.3). The JDK reads one from a file, or as a
 * stream; as a stream it cannot read stored entries whose length follows them in a data descriptor.
 */
final class ZipDirectory {
    private static final int END_BYTES = 22;
    private static final int DEFLATED = 8;

    private ZipDirectory() {}

    /** Every entry by its name. */
    static Map<String, byte[]> read(byte[] file) {
        ByteBuffer zip = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        int end = file.length - END_BYTES;
        int count = Short.toUnsignedInt(zip.getShort(end + 10));
        int at = zip.getInt(end + 16);
        Map<String, byte[]> entries = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            int nameLength = Short.toUnsignedInt(zip.getShort(at + 28));
            String name = new String(file, at + 46, nameLength, StandardCharsets.UTF_8);
            entries.put(name, content(file, zip, zip.getShort(at + 10), zip.getInt(at + 20), zip.getInt(at + 42)));
            at += 46
                    + nameLength
                    + Short.toUnsignedInt(zip.getShort(at + 30))
                    + Short.toUnsignedInt(zip.getShort(at + 32));
        }
        return entries;
    }

    private static byte[] content(byte[] file, ByteBuffer zip, int method, int length, int head) {
        int start =
                head + 30 + Short.toUnsignedInt(zip.getShort(head + 26)) + Short.toUnsignedInt(zip.getShort(head + 28));
        ByteArrayInputStream packed = new ByteArrayInputStream(file, start, length);
        if (method != DEFLATED) {
            return packed.readAllBytes();
        }
        Inflater inflater = new Inflater(true);
        try (InflaterInputStream in = new InflaterInputStream(packed, inflater)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the file is broken", e);
        } finally {
            inflater.end();
        }
    }
}
