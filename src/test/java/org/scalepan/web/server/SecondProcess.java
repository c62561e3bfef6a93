package org.scalepan.web.server;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The service in a process of its own, started as a user starts it. */
final class SecondProcess implements AutoCloseable {
    private final Process process;
    private final String address;

    /** @param options options of the virtual machine, such as {@code -Duser.language=de} */
    SecondProcess(String... options) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-Dorg.slf4j.simpleLogger.defaultLogLevel=warn"));
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.scalepan.Scalepan", "--port", "0"));
        try {
            process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            BufferedReader out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            String listens = out.readLine();
            if (listens == null) {
                throw new AssertionError("the service did not start with " + List.of(options));
            }
            address = listens.replaceAll(".*(http://[0-9.:]+).*", "$1");
        } catch (IOException e) {
            throw new AssertionError("the service cannot be started", e);
        }
    }

    URI uri(String question) {
        return URI.create(address + question);
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
