package org.scalepan.web.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Finds the version of a web jar, so that only the build file names it. */
public final class WebJar {
    private WebJar() {}

    public static String version(String group, String artifact) {
        String resource = "/META-INF/maven/" + group + "/" + artifact + "/pom.properties";
        try (InputStream in = WebJar.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the build left out " + resource);
            }
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
