package org.scalepan.spark;

import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.spark.SparkFiles;
import org.scalepan.AnswerLibrary;

/**
 * Names a library. Only the name travels; each process reads the library once, for all its tasks, and refuses one of another content.
 *
 * @param file the file of one's own rows, as the engine ships it to every executor
 */
record ExecutorLibrary(Optional<String> file, String digest) {
    private static final Map<ExecutorLibrary, AnswerLibrary> READ = new ConcurrentHashMap<>();

    /** Optional cannot be sent, so this is what travels. */
    record Name(String file, String digest) implements Serializable {
        ExecutorLibrary library() {
            return new ExecutorLibrary(file.isEmpty() ? Optional.empty() : Optional.of(file), digest);
        }
    }

    Name name() {
        return new Name(file.orElse(""), digest);
    }

    /** The library of this process. */
    AnswerLibrary read() {
        return READ.computeIfAbsent(this, ExecutorLibrary::readAnew);
    }

    private AnswerLibrary readAnew() {
        AnswerLibrary library = read(file.map(SparkFiles::get));
        if (!library.digest().equals(digest)) {
            throw new IllegalStateException("the library of this executor is " + library.digest() + ", not " + digest
                    + ": its jar or its rows are others than those of the driver");
        }
        return library;
    }

    /** Reads a library with rows of one's own from a local path. */
    static AnswerLibrary read(Optional<String> own) {
        try {
            return own.isPresent() ? AnswerLibrary.with(Path.of(own.get())) : AnswerLibrary.bundled();
        } catch (IOException e) {
            throw new UncheckedIOException("the rows of one's own cannot be read", e);
        }
    }
}
