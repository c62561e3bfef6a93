package org.scalepan.web.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.IdGenerator;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.DefaultUrlSanitizer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A guide rendered from Markdown (CommonMark 0.31 with the tables of GitHub Flavored Markdown) to the content of a page. Raw HTML is
 * shown as text, and links cannot run scripts.
 *
 * @param title its first heading, as plain text
 * @param lead the paragraph below it, as HTML without its own tags
 * @param sections its headings of the second level, in order
 * @param html the whole guide
 */
record GuideText(String title, String lead, List<Section> sections, String html) {
    private static final List<Extension> TABLES = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
    private static final String SERVICE = "http://127.0.0.1:8080";
    /** The relative link of another guide in the same folder. */
    private static final Pattern BESIDE = Pattern.compile("([a-z]+)\\.md(#.*)?");

    GuideText {
        sections = List.copyOf(sections);
    }

    /**
     * A part of a guide.
     *
     * @param id the fragment of its address
     * @param title as plain text
     */
    record Section(String id, String title) {}

    /** A table in a box, so that on a narrow screen the box scrolls and not the page. */
    private static final class TableBox extends CustomBlock {}

    static GuideText of(String markdown) {
        Node document = PARSER.parse(markdown);
        document.accept(new Served());
        Marks marks = new Marks();
        String html = renderer(marks).render(document);
        Node heading = document.getFirstChild();
        String title = heading instanceof Heading ? plain(heading) : "";
        Node below = heading == null ? null : heading.getNext();
        String lead = below instanceof Paragraph
                ? renderer(new Marks()).render(below).strip().replaceAll("^<p>|</p>$", "")
                : "";
        return new GuideText(title, lead, marks.sections, html);
    }

    private static HtmlRenderer renderer(Marks marks) {
        return HtmlRenderer.builder()
                .extensions(TABLES)
                .escapeHtml(true)
                .sanitizeUrls(true)
                .urlSanitizer(new DefaultUrlSanitizer(List.of("http", "https")))
                .attributeProviderFactory(context -> marks)
                .nodeRendererFactory(TableBoxes::new)
                .build();
    }

    private static String plain(Node node) {
        StringBuilder text = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text part) {
                text.append(part.getLiteral());
            }

            @Override
            public void visit(Code part) {
                text.append(part.getLiteral());
            }
        });
        return text.toString();
    }

    /** Rewrites links and tables from files on disk to served pages. */
    private static final class Served extends AbstractVisitor {
        @Override
        public void visit(Link link) {
            link.setDestination(address(link.getDestination()));
            visitChildren(link);
        }

        @Override
        public void visit(Image picture) {
            picture.setDestination(address(picture.getDestination()));
            visitChildren(picture);
        }

        @Override
        public void visit(CustomBlock block) {
            if (block instanceof TableBlock) {
                TableBox box = new TableBox();
                block.insertBefore(box);
                box.appendChild(block);
            }
            visitChildren(block);
        }

        private static String address(String destination) {
            Matcher beside = BESIDE.matcher(destination);
            if (beside.matches()) {
                return GuideRoutes.PATH + "/" + beside.group(1) + (beside.group(2) == null ? "" : beside.group(2));
            }
            return destination.startsWith(SERVICE + "/") ? destination.substring(SERVICE.length()) : destination;
        }
    }

    /** Gives headings an id, makes scrolling boxes focusable, and marks links between pages that keep language and theme. */
    private static final class Marks implements AttributeProvider {
        private final IdGenerator ids = IdGenerator.builder().build();
        private final List<Section> sections = new ArrayList<>();

        @Override
        public void setAttributes(Node node, String tagName, Map<String, String> attributes) {
            if (node instanceof Heading heading) {
                String title = plain(heading);
                String id = ids.generateId(title);
                attributes.put("id", id);
                if (heading.getLevel() == 2) {
                    sections.add(new Section(id, title));
                }
            } else if (tagName.equals("pre")) {
                attributes.put("tabindex", "0");
            } else if (node instanceof Link link && link.getDestination().matches("/(guide(/.*)?|farm|)")) {
                attributes.put("data-carry", "");
            }
        }
    }

    /** Writes the boxes of tables. */
    private static final class TableBoxes implements NodeRenderer {
        /** In a fixed order, so that every process renders the same bytes. */
        private static final Map<String, String> ATTRIBUTES =
                Collections.unmodifiableSortedMap(new TreeMap<>(Map.of("class", "scrolls", "tabindex", "0")));

        private final HtmlNodeRendererContext context;

        private TableBoxes(HtmlNodeRendererContext context) {
            this.context = context;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(TableBox.class);
        }

        @Override
        public void render(Node box) {
            context.getWriter().line();
            context.getWriter().tag("div", ATTRIBUTES);
            for (Node child = box.getFirstChild(); child != null; child = child.getNext()) {
                context.render(child);
            }
            context.getWriter().tag("/div");
            context.getWriter().line();
        }
    }
}
