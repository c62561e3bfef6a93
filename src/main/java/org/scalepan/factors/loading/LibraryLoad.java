package org.scalepan.factors.loading;

import java.util.List;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Fault;

/** What reading a library gives: the library, or every fault in it. */
public sealed interface LibraryLoad {

    /** The library is sound. */
    record Loaded(Library library) implements LibraryLoad {}

    /** The library is broken; the service must not start on it. */
    record Broken(List<Fault> faults) implements LibraryLoad {
        public Broken {
            faults = List.copyOf(faults);
        }
    }
}
