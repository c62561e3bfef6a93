package org.scalepan.web.render;

import java.util.List;
import java.util.Optional;

/** One part of a {@link Document}. All texts are plain and never parsed as markup. */
public sealed interface Block {
    /** A heading of the second level. */
    record Heading(String text) implements Block {}

    /**
     * A paragraph.
     *
     * @param lines run together where they are shown; each line is one line of the plain file
     */
    record Paragraph(List<TextLine> lines) implements Block {
        public Paragraph {
            lines = List.copyOf(lines);
        }

        Paragraph(TextLine line) {
            this(List.of(line));
        }
    }

    record Bullets(List<TextLine> items) implements Block {
        public Bullets {
            items = List.copyOf(items);
        }
    }

    /**
     * A table whose first column names the rows.
     *
     * @param rows each as long as the header
     */
    record TextTable(List<String> header, List<List<String>> rows) implements Block {
        public TextTable {
            header = List.copyOf(header);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A picture.
     *
     * @param svg made by this service, which escapes every text in it
     * @param words text alternative of the picture
     * @param address where the picture stands alone; none for what has no address
     */
    record Picture(String svg, String words, Optional<String> address) implements Block {}

    /** Preformatted text, such as BibTeX. */
    record Code(String text) implements Block {}
}
