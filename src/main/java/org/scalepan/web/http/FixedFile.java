package org.scalepan.web.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A file that travels in the jar and never changes while the service runs. It is read and tagged at the first request, which keeps the
 * start short, and then cached, because reading it for each request would fill the memory. Its presence is checked at once.
 */
public final class FixedFile {
    private final String resource;
    private final String mediaType;
    private final UnaryOperator<byte[]> finishing;
    private volatile @Nullable Answer answer;

    /** @throws IllegalStateException when the jar has no such file */
    public FixedFile(String resource, String mediaType) {
        this(resource, mediaType, bytes -> bytes);
    }

    /** A file with a transformation that is applied when it is read. */
    public FixedFile(String resource, String mediaType, UnaryOperator<byte[]> finishing) {
        if (FixedFile.class.getResource(resource) == null) {
            throw new IllegalStateException("the build left out " + resource);
        }
        this.resource = resource;
        this.mediaType = mediaType;
        this.finishing = finishing;
    }

    /** The same answer each time. Two concurrent first requests may both read the file, which is harmless. */
    public Answer answer() {
        Answer cached = answer;
        if (cached == null) {
            cached = new Answer(mediaType, finishing.apply(bytes(resource)));
            answer = cached;
        }
        return cached;
    }

    public static byte[] bytes(String resource) {
        try (InputStream in = FixedFile.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the build left out " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
