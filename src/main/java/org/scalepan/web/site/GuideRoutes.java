package org.scalepan.web.site;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.FixedFile;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.render.Markup;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * The guides as pages. They are written in Markdown, are in the jar, and are rendered at the first request. The list is closed, so that
 * nothing else on the class path can be requested.
 */
public final class GuideRoutes {
    public static final String PATH = "/guide";

    /** In reading order for newcomers. */
    static final List<String> NAMES = List.of(
            "tour", "questions", "clients", "operating", "many-rows", "methods", "interpretation", "testing", "speed");

    private static final Pattern PLACE = Pattern.compile("<!-- guide (\\w+) -->");
    private static final String TEMPLATE = "/site/guide.html";

    private final Map<String, FixedFile> pages = new LinkedHashMap<>();
    private final FixedFile list = page(TEMPLATE, template -> listed());

    public GuideRoutes() {
        NAMES.forEach(name -> pages.put(name, page(source(name), markdown -> one(name, GuideText.of(markdown)))));
    }

    public List<Route> routes() {
        return List.of(
                Route.page(PATH, request -> list.answer()), Route.page(PATH + "/{name}", request -> page(request)));
    }

    private Answer page(Request request) {
        FixedFile page = pages.get(request.variable("name"));
        if (page == null) {
            throw new ProblemException(Problem.notFound("there is no such guide; " + PATH + " lists them", List.of()));
        }
        return page.answer();
    }

    private static String source(String name) {
        return PATH + "/" + name + ".md";
    }

    private static FixedFile page(String resource, UnaryOperator<String> making) {
        return new FixedFile(
                resource, Answer.HTML, bytes -> making.apply(text(bytes)).getBytes(StandardCharsets.UTF_8));
    }

    private static String one(String name, GuideText guide) {
        return filled(guide.title(), guide.html(), navigation(name, guide));
    }

    private static String listed() {
        StringBuilder body = new StringBuilder("<h1>Guides</h1>\n<dl class=\"guide-list\">\n");
        for (String name : NAMES) {
            GuideText guide = read(name);
            body.append("<dt>").append(link(name, guide.title(), false)).append("</dt>\n");
            body.append("<dd>").append(guide.lead()).append("</dd>\n");
        }
        return filled("Guides", body.append("</dl>\n").toString(), "");
    }

    /** All guides, and the sections of the one shown. */
    private static String navigation(String shown, GuideText guide) {
        StringBuilder items = new StringBuilder("<ul>\n");
        for (String name : NAMES) {
            boolean here = name.equals(shown);
            items.append("<li>")
                    .append(link(name, here ? guide.title() : read(name).title(), here));
            if (here && !guide.sections().isEmpty()) {
                items.append("\n<ul>\n");
                guide.sections()
                        .forEach(section -> items.append("<li><a href=\"#")
                                .append(section.id())
                                .append("\">")
                                .append(Markup.text(section.title()))
                                .append("</a></li>\n"));
                items.append("</ul>\n");
            }
            items.append("</li>\n");
        }
        return items.append("</ul>\n").toString();
    }

    private static String link(String name, String title, boolean here) {
        return "<a href=\"" + PATH + "/" + name + "\" data-carry" + (here ? " aria-current=\"page\"" : "") + ">"
                + Markup.text(title) + "</a>";
    }

    private static GuideText read(String name) {
        return GuideText.of(text(FixedFile.bytes(source(name))));
    }

    private static String filled(String title, String body, String navigation) {
        Map<String, String> parts = Map.of("title", Markup.text(title), "body", body, "navigation", navigation);
        String template = text(SiteRoutes.withSharedParts(FixedFile.bytes(TEMPLATE)));
        return PLACE.matcher(template)
                .replaceAll(place -> Matcher.quoteReplacement(parts.getOrDefault(place.group(1), "")));
    }

    private static String text(byte[] utf8) {
        return new String(utf8, StandardCharsets.UTF_8);
    }
}
