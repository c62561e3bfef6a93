package org.scalepan;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.FactorFiles;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;

/** The libraries that the tests ask. */
public final class Libraries {
    private static final Library BUNDLED = sound(LibraryLoader.bundled());

    private Libraries() {}

    /** The library that travels with the program, read once for all tests. */
    public static Library bundled() {
        return BUNDLED;
    }

    /** The bundled library read once more, equal to the other but no part of it the same object. */
    public static Library readAgain() {
        return sound(LibraryLoader.bundled());
    }

    /** The bundled library with a user's own folder laid over it. */
    public static Library withOwn(Path folder) {
        return sound(LibraryLoader.load(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(folder))));
    }

    private static Library sound(LibraryLoad load) {
        if (load instanceof LibraryLoad.Loaded loaded) {
            return loaded.library();
        }
        return fail(((LibraryLoad.Broken) load).faults().toString());
    }
}
