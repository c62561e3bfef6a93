package org.scalepan.web.server;

import java.util.function.BiConsumer;
import org.scalepan.web.site.GuideRoutes;

/** The security headers of responses: content type sniffing, framing, referrer, content security policy. */
final class SecurityHeaders {
    private static final String NOTHING = "default-src 'none'; frame-ancestors 'none'";
    private static final String OWN_PAGE =
            "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; frame-ancestors 'none'";
    /** The API reference sets style attributes while it renders; its scripts are still files only. */
    private static final String READER_PAGE = OWN_PAGE + "; style-src 'self' 'unsafe-inline'";

    /** The pages with the chart build the DOM node by node; creating markup from text is forbidden (trusted types). */
    private static final String DRAWN_PAGE = OWN_PAGE + "; form-action 'self'; require-trusted-types-for 'script'";

    private SecurityHeaders() {}

    static void set(BiConsumer<String, String> header, String mediaType, String path) {
        boolean page = mediaType.startsWith("text/html");
        header.accept("Content-Security-Policy", page ? ofPage(path) : NOTHING);
        header.accept("X-Content-Type-Options", "nosniff");
        header.accept("Referrer-Policy", "no-referrer");
    }

    private static String ofPage(String path) {
        return switch (path) {
            case "/docs" -> READER_PAGE;
            case "/", "/farm", "/protein", "/programme", "/examples", GuideRoutes.PATH, GuideRoutes.PATH + "/{name}" ->
                DRAWN_PAGE;
            default -> OWN_PAGE;
        };
    }
}
