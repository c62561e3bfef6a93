package org.scalepan.cite;

import java.util.List;

/** A reference that breaks rules; keeps them apart so that a file's reader can list each as a fault of its own. */
final class UnsoundReference extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> broken;

    UnsoundReference(List<String> broken) {
        super(String.join("; ", broken));
        this.broken = List.copyOf(broken);
    }

    List<String> broken() {
        return broken;
    }
}
