package org.scalepan.web.site;

import java.util.List;
import java.util.regex.Pattern;
import org.scalepan.sheet.CalcFile;
import org.scalepan.sheet.ExcelFile;
import org.scalepan.sheet.Sheet;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Example spreadsheets with live formulas, and the page with formulas to copy. */
public final class ExampleRoutes {
    /** A name or an address and perhaps a port (RFC 9110, section 7.2), so that it is safe in a formula. */
    private static final Pattern HOST =
            Pattern.compile("([A-Za-z0-9]([A-Za-z0-9.-]{0,251}[A-Za-z0-9])?|\\[[0-9A-Fa-f:.]{2,45}])(:[0-9]{1,5})?");

    private static final String USUAL = "http://127.0.0.1:8080";

    public List<Route> routes() {
        return List.of(
                SiteRoutes.page("/examples", "/site/examples.html"),
                Route.of("/examples/{file}", List.of(), this::file).ofAddress());
    }

    private Answer file(Request request) {
        return switch (request.variable("file")) {
            case "scalepan.ods" -> new Answer(CalcFile.MEDIA_TYPE, CalcFile.of(sheets(request)));
            case "scalepan.xlsx" -> new Answer(ExcelFile.MEDIA_TYPE, ExcelFile.of(sheets(request)));
            default -> throw new ProblemException(Problem.notFound("there is no such example", List.of()));
        };
    }

    private static List<Sheet> sheets(Request request) {
        return new ExampleSheets(address(request)).sheets();
    }

    /**
     * The Host header, so that the file calls the service it came from. It is written into a visible, editable cell; anything but a plain
     * host is ignored.
     */
    private static String address(Request request) {
        String host = request.host();
        return HOST.matcher(host).matches() ? request.scheme() + "://" + host : USUAL;
    }
}
