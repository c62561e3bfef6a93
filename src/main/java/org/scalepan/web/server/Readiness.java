package org.scalepan.web.server;

import java.util.concurrent.atomic.AtomicBoolean;

/** Whether the service accepts requests: false until it listens, and again once it begins to drain. */
final class Readiness {
    private final AtomicBoolean ready = new AtomicBoolean();

    boolean isReady() {
        return ready.get();
    }

    void set(boolean value) {
        ready.set(value);
    }
}
