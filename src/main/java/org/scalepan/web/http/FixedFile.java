package org.scalepan.web.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A file that travels in the jar and never changes while the service runs. It is read and tagged when it is first asked for, so that no
 * start waits for it, and then kept: read anew for each request it would fill the memory. Whether it is there is seen at once.
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

    /** A file that is finished in the same way each time it is read. */
    public FixedFile(String resource, String mediaType, UnaryOperator<byte[]> finishing) {
        if (FixedFile.class.getResource(resource) == null) {
            throw new IllegalStateException("the build left out " + resource);
        }
        this.resource = resource;
        this.mediaType = mediaType;
        this.finishing = finishing;
    }

    /** The same answer each time; two who ask first at once may both read it, which does no harm. */
    public Answer answer() {
        Answer kept = answer;
        if (kept == null) {
            kept = new Answer(mediaType, finishing.apply(bytes(resource)));
            answer = kept;
        }
        return kept;
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
