package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** External programs that tests drive. Where one is not installed its tests are skipped, unless skipping is forbidden. */
final class RealClients {
    private static final int MOST_SECONDS = 60;

    private RealClients() {}

    /** Skips the running test, saying what to install; fails it with {@code -Dscalepan.noSkip=true}, as CI has it. */
    static void skipUnless(boolean installed, String missing) {
        if (installed) {
            return;
        }
        if (Boolean.getBoolean("scalepan.noSkip")) {
            fail(missing);
        }
        abort(missing);
    }

    /** Whether a command can be run and ends well. */
    static boolean runs(String... command) {
        try {
            Process process = new ProcessBuilder(List.of(command))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(MOST_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
