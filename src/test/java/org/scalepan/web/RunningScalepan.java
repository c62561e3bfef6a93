package org.scalepan.web;

import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.net.URI;
import java.util.List;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.web.route.Route;
import org.scalepan.web.server.WebServer;

/** The service shared by all HTTP tests: it starts on a free port at the first request and stops with the JVM. */
public final class RunningScalepan {
    private static final Library LIBRARY = ((LibraryLoad.Loaded) LibraryLoader.bundled()).library();
    private static final String HOST = "127.0.0.1";
    private static final WebServer SERVER = new WebServer(LIBRARY).start(HOST, 0);

    private RunningScalepan() {}

    public static Library library() {
        return LIBRARY;
    }

    public static String digest() {
        return LIBRARY.version().digest();
    }

    public static List<Route> routes() {
        return SERVER.routes();
    }

    public static int port() {
        return SERVER.port();
    }

    public static URI uri(String question) {
        return URI.create("http://" + HOST + ":" + SERVER.port() + question);
    }

    /** A request that sends the target literally, so that the tests control percent-encoding. */
    public static RequestSpecification given() {
        return RestAssured.given().baseUri("http://" + HOST).port(SERVER.port()).urlEncodingEnabled(false);
    }
}
