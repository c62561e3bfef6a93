package org.scalepan.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/**
 * A file that travels in the jar and never changes while the service runs. It is read and tagged when it is first asked for, so that no
 * start waits for it, and then kept: read anew for each request it would fill the memory. Whether it is there is seen at once.
 */
final class FixedFile {
    private final String resource;
    private final String mediaType;
    private volatile @Nullable Answer answer;

    /** @throws IllegalStateException when the jar has no such file */
    FixedFile(String resource, String mediaType) {
        if (FixedFile.class.getResource(resource) == null) {
            throw new IllegalStateException("the build left out " + resource);
        }
        this.resource = resource;
        this.mediaType = mediaType;
    }

    /** The same answer each time; two who ask first at once may both read it, which does no harm. */
    Answer answer() {
        Answer kept = answer;
        if (kept == null) {
            kept = new Answer(mediaType, bytes());
            answer = kept;
        }
        return kept;
    }

    private byte[] bytes() {
        try (InputStream in = FixedFile.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the jar has changed under the service: no " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
