package org.scalepan.web.site;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.FixedFile;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.http.WebJar;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** The pages, the description and its viewer. */
public final class SiteRoutes {
    private static final Pattern SHARED = Pattern.compile("(?m)^ *<!-- shared (\\w+) -->\\n");
    private static final String READER = "/META-INF/resources/webjars/swagger-ui/";

    private final PageFiles pageFiles = new PageFiles();
    private final Map<String, FixedFile> readerFiles = Map.of(
            "reader.js", new FixedFile("/site/docs.js", "text/javascript; charset=utf-8"),
            "swagger-ui-bundle.js", webjar("swagger-ui-bundle.js", "text/javascript; charset=utf-8"),
            "swagger-ui.css", webjar("swagger-ui.css", "text/css; charset=utf-8"));

    public List<Route> routes() {
        return List.of(
                page("/", "/site/index.html"),
                page("/farm", "/site/farm.html"),
                page("/protein", "/site/protein.html"),
                page("/programme", "/site/programme.html"),
                Route.of("/page/{file}", List.of(), this::pageFile),
                fixed(
                        "/openapi.yaml",
                        new FixedFile("/openapi/openapi.yaml", "application/yaml", DescriptionParts::joined)),
                page("/docs", "/site/docs.html"),
                Route.of("/docs/{file}", List.of(), this::readerFile));
    }

    /** Files that never change while the service runs. */
    static Route fixed(String path, FixedFile file) {
        return Route.of(path, List.of(), request -> file.answer());
    }

    /** A page whose script reads the query; the shared parts of pages are inserted once. */
    static Route page(String path, String resource) {
        FixedFile file = new FixedFile(resource, Answer.HTML, SiteRoutes::withSharedParts);
        return Route.page(path, request -> file.answer());
    }

    static byte[] withSharedParts(byte[] page) {
        return SHARED.matcher(text(page))
                .replaceAll(part ->
                        Matcher.quoteReplacement(text(FixedFile.bytes("/site/shared-" + part.group(1) + ".html"))))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] utf8) {
        return new String(utf8, StandardCharsets.UTF_8);
    }

    private Answer pageFile(Request request) {
        return pageFiles
                .file(request.variable("file"))
                .orElseThrow(() -> new ProblemException(Problem.notFound("there is no such page", List.of())));
    }

    /** The files of the description's viewer: a closed list, so that nothing else on the class path can be requested. */
    private Answer readerFile(Request request) {
        FixedFile file = readerFiles.get(request.variable("file"));
        if (file == null) {
            throw new ProblemException(Problem.notFound("there is no such page", List.of()));
        }
        return file.answer();
    }

    private static FixedFile webjar(String name, String mediaType) {
        return new FixedFile(READER + WebJar.version("org.webjars", "swagger-ui") + "/" + name, mediaType);
    }
}
