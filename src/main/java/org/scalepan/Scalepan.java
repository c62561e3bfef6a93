package org.scalepan;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.scalepan.factors.loading.FactorFiles;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.web.server.JsonLogProvider;
import org.scalepan.web.server.Settings;
import org.scalepan.web.server.WebServer;

/** Starts the service. */
public final class Scalepan {
    private static final int MOST_FAULTS = 100;
    private static final int USAGE_ERROR = 2;
    private static final int BROKEN_LIBRARY = 3;
    private static final int CANNOT_LISTEN = 4;

    private Scalepan() {}

    public static void main(String[] arguments) throws InterruptedException {
        // Numbers in answers must not depend on the locale of the machine.
        Locale.setDefault(Locale.ROOT);
        Settings.SettingsReading reading = Settings.read(List.of(arguments), System.getenv());
        if (reading instanceof Settings.SettingsReading.Help help) {
            System.out.println(help.usage());
        } else if (reading instanceof Settings.SettingsReading.InvalidSettings wrong) {
            wrong.faults().forEach(System.err::println);
            System.exit(USAGE_ERROR);
        } else if (reading instanceof Settings.SettingsReading.Ready ready) {
            serve(ready.settings());
        }
    }

    private static void serve(Settings settings) throws InterruptedException {
        if (settings.jsonLog()) {
            JsonLogProvider.use(System.err);
        }
        Optional<FactorFiles> own = settings.factors().map(FactorFiles.Folder::new);
        LibraryLoad load = load(own);
        if (load instanceof LibraryLoad.Broken broken) {
            refuse(broken.faults());
        } else if (load instanceof LibraryLoad.Loaded loaded) {
            // Those of the bundled library were computed when it was built.
            List<String> farms = own.isEmpty()
                    ? List.of()
                    : ModelledFarms.of(loaded.library()).faults();
            if (!farms.isEmpty()) {
                refuse(farms);
            }
            WebServer server = new WebServer(loaded.library(), settings.deployment());
            settings.accessLog().ifPresent(log -> server.logging(log, System.out));
            server.findings().forEach(System.err::println);
            try {
                server.start(settings.host(), settings.port());
            } catch (RuntimeException e) {
                System.err.println(
                        "cannot listen on " + settings.host() + ":" + settings.port() + ": " + why(settings.host(), e));
                System.exit(CANNOT_LISTEN);
            }
            Runtime.getRuntime().addShutdownHook(new Thread(() -> leave(server), "leaving"));
            int ownRows = loaded.library().version().ownRows();
            System.out.println("Scalepan listens on " + address(settings.host(), server.port()) + "  (version "
                    + version() + ", library " + loaded.library().version().version() + ", "
                    + loaded.library().version().digest() + (ownRows == 0 ? "" : ", " + counted(ownRows, "own row"))
                    + "; " + server.limitsInWords() + ")");
            // The main thread waits, because some tools stop the service when it ends.
            new CountDownLatch(1).await();
        }
    }

    private static LibraryLoad load(Optional<FactorFiles> own) {
        try {
            return LibraryLoader.load(new FactorFiles.Bundled(), own);
        } catch (OutOfMemoryError e) {
            // What was read so far is free again by now.
            System.err.println("the heap of " + Runtime.getRuntime().maxMemory() / 1_048_576
                    + " MB is too small for the factor library; start Java with a larger one (-Xmx); not started");
            System.exit(BROKEN_LIBRARY);
            throw e;
        }
    }

    /** The address to open in a browser; one of IPv6 stands in brackets (RFC 3986, 3.2.2). */
    static String address(String host, int port) {
        boolean bare = host.indexOf(':') >= 0 && !host.startsWith("[");
        return "http://" + (bare ? "[" + host + "]" : host) + ":" + port;
    }

    private static String version() {
        String version = Scalepan.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }

    private static void refuse(List<?> faults) {
        faults.stream().limit(MOST_FAULTS).forEach(System.err::println);
        if (faults.size() > MOST_FAULTS) {
            System.err.println("... and " + (faults.size() - MOST_FAULTS) + " more");
        }
        System.err.println(counted(faults.size(), "fault") + " in the factor library; not started");
        System.exit(BROKEN_LIBRARY);
    }

    private static void leave(WebServer server) {
        try {
            server.leave();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static String counted(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    private static boolean isTold(Throwable failure, String words) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (String.valueOf(cause.getMessage()).contains(words)) {
                return true;
            }
        }
        return false;
    }

    /** Why the address cannot be bound. The host is checked first, because the framework reports every failure as "in use". */
    static String why(String host, Throwable failure) {
        try {
            InetAddress address = InetAddress.getByName(host);
            boolean here = address.isAnyLocalAddress()
                    || address.isLoopbackAddress()
                    || NetworkInterface.getByInetAddress(address) != null;
            if (!here) {
                return host + " is not an address of this machine";
            }
        } catch (UnknownHostException e) {
            return "the host " + host + " is not known";
        } catch (SocketException e) {
            return String.valueOf(failure.getMessage());
        }
        // The framework's own exception, which comes first, says "in use" of a missing right too.
        if (isTold(failure, "Permission denied") || isTold(failure, "elevated privileges")) {
            return "this user has no right to that port; those below 1024 are mostly for administrators: try --port 8080";
        }
        if (isTold(failure, "in use")) {
            return "something else listens there; try --port";
        }
        return String.valueOf(failure.getMessage());
    }
}
