package org.scalepan.web.server;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.web.http.DeploymentSettings;

/**
 * Start-up settings: options on the command line, or the environment variable of the same name; the option takes precedence.
 *
 * @param host address to listen on; 127.0.0.1 by default, so that the service is not exposed by accident
 * @param port 0 to 65535; 0 takes any free port
 * @param factors a folder with a user's own rows
 * @param deployment the proxy and the allowed origins
 * @param jsonLog whether log lines are JSON
 * @param accessLog where a line for each request is written; nowhere by default
 */
public record Settings(
        String host,
        int port,
        Optional<Path> factors,
        DeploymentSettings deployment,
        boolean jsonLog,
        Optional<AccessLog> accessLog) {
    private static final String USAGE = """
            usage: scalepan [--port N] [--host ADDRESS] [--factors DIR] [--client-header NAME] [--origins LIST]
                            [--access-log FILE] [--access-log-queries yes] [--log-format json]
              --port N         port to listen on (default 8080; environment SCALEPAN_PORT)
              --host ADDRESS   address to listen on (default 127.0.0.1; environment SCALEPAN_HOST)
              --factors DIR    folder with your own rows, laid over the bundled ones (environment SCALEPAN_FACTORS)
              --client-header NAME  behind a proxy of yours, the header in which it names the client (SCALEPAN_CLIENT_HEADER)
              --origins LIST   of whose pages scripts may read answers, with commas between (SCALEPAN_ORIGINS)
              --access-log FILE  a line for each request, in the Common Log Format; - is standard output (SCALEPAN_ACCESS_LOG)
              --access-log-queries yes  with the values of queries, which may tell of a farm (SCALEPAN_ACCESS_LOG_QUERIES)
              --log-format json  warnings and errors as JSON, one object a line; text by default (SCALEPAN_LOG_FORMAT)""";

    private static final List<String> OPTIONS = List.of(
            "--port",
            "--host",
            "--factors",
            "--client-header",
            "--origins",
            "--access-log",
            "--access-log-queries",
            "--log-format");
    /** A field name of HTTP (RFC 9110, 5.1). */
    private static final Pattern HEADER = Pattern.compile("[A-Za-z0-9!#$%&'*+.^_`|~-]{1,100}");
    /** An origin as browsers send it (RFC 6454, 6.2), or any. */
    private static final Pattern ORIGIN = Pattern.compile("\\*|https?://[a-z0-9.-]+(:[0-9]{1,5})?");

    /** The result of reading the command line. */
    public sealed interface SettingsReading {
        record Ready(Settings settings) implements SettingsReading {}

        record InvalidSettings(List<String> faults) implements SettingsReading {}

        record Help(String usage) implements SettingsReading {}
    }

    /** Reads options, then the environment, then defaults. */
    public static SettingsReading read(List<String> arguments, Map<String, String> environment) {
        List<String> faults = new ArrayList<>();
        String host = environment.getOrDefault("SCALEPAN_HOST", "127.0.0.1");
        String port = environment.getOrDefault("SCALEPAN_PORT", "8080");
        String factors = environment.getOrDefault("SCALEPAN_FACTORS", "");
        String clientHeader = environment.getOrDefault("SCALEPAN_CLIENT_HEADER", "");
        String origins = environment.getOrDefault("SCALEPAN_ORIGINS", "");
        String accessLog = environment.getOrDefault("SCALEPAN_ACCESS_LOG", "");
        String queries = environment.getOrDefault("SCALEPAN_ACCESS_LOG_QUERIES", "no");
        String logFormat = environment.getOrDefault("SCALEPAN_LOG_FORMAT", "text");
        for (int i = 0; i < arguments.size(); i++) {
            String option = arguments.get(i);
            if (option.equals("--help") || option.equals("-h")) {
                return new SettingsReading.Help(USAGE);
            }
            int equals = option.indexOf('=');
            String name = equals < 0 ? option : option.substring(0, equals);
            boolean known = OPTIONS.contains(name);
            if (!known) {
                faults.add("unknown option " + option);
                continue;
            }
            if (equals < 0 && (i + 1 >= arguments.size() || arguments.get(i + 1).startsWith("--"))) {
                faults.add(name + " needs a value");
                continue;
            }
            String value = equals < 0 ? arguments.get(++i) : option.substring(equals + 1);
            if (name.equals("--factors") && value.isBlank()) {
                faults.add(name + " needs a folder");
                continue;
            }
            switch (name) {
                case "--port" -> port = value;
                case "--host" -> host = value;
                case "--client-header" -> clientHeader = value;
                case "--origins" -> origins = value;
                case "--log-format" -> logFormat = value;
                case "--access-log" -> accessLog = value;
                case "--access-log-queries" -> queries = value;
                default -> factors = value;
            }
        }
        int number = port(port, faults);
        Optional<Path> folder = factors.isBlank() ? Optional.empty() : Optional.of(Path.of(factors));
        folder.filter(path -> !Files.isDirectory(path))
                .ifPresent(path -> faults.add("--factors " + path + " is not a folder"));
        if (host.isBlank()) {
            faults.add("--host needs an address");
        }
        DeploymentSettings deployment = deployment(clientHeader.strip(), origins, faults);
        if (!List.of("text", "json").contains(logFormat)) {
            faults.add("--log-format must be text or json");
        }
        Optional<AccessLog> log = accessLog(accessLog.strip(), queries, faults);
        if (!faults.isEmpty()) {
            faults.add(USAGE);
            return new SettingsReading.InvalidSettings(faults);
        }
        return new SettingsReading.Ready(new Settings(host, number, folder, deployment, logFormat.equals("json"), log));
    }

    private static DeploymentSettings deployment(String header, String origins, List<String> faults) {
        if (!header.isEmpty() && !HEADER.matcher(header).matches()) {
            faults.add("--client-header must be the name of a header, such as X-Forwarded-For");
        }
        List<String> named = Stream.of(origins.split(","))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
        named.stream()
                .filter(origin -> !ORIGIN.matcher(origin).matches())
                .forEach(origin -> faults.add("--origins: \"" + origin
                        + "\" is no origin; one is scheme, host and port, such as https://example.org, or * for all"));
        return new DeploymentSettings(Optional.of(header).filter(name -> !name.isEmpty()), named);
    }

    private static Optional<AccessLog> accessLog(String file, String queries, List<String> faults) {
        if (!List.of("yes", "no").contains(queries)) {
            faults.add("--access-log-queries must be yes or no");
        }
        if (file.isEmpty()) {
            return Optional.empty();
        }
        boolean with = queries.equals("yes");
        if (file.equals("-")) {
            return Optional.of(new AccessLog(Optional.empty(), with));
        }
        Path path = Path.of(file).toAbsolutePath();
        Path folder = path.getParent();
        boolean writable = Files.exists(path)
                ? Files.isRegularFile(path) && Files.isWritable(path)
                : folder != null && Files.isDirectory(folder) && Files.isWritable(folder);
        if (!writable) {
            faults.add("--access-log " + file + " cannot be written to; name a file in a folder that can, or - for"
                    + " standard output");
        }
        return Optional.of(new AccessLog(Optional.of(path), with));
    }

    private static int port(String text, List<String> faults) {
        // Parsing alone would accept digits of other scripts and a plus sign.
        if (text.matches("[0-9]{1,5}") && Integer.parseInt(text) <= 65_535) {
            return Integer.parseInt(text);
        }
        faults.add("--port must be a whole number from 0 to 65535, not \"" + text + "\"");
        return 0;
    }
}
