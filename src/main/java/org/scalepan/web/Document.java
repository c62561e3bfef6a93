package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.cite.Reference;

/**
 * A text to be pasted or printed, as the blocks it is made of: written down once, rendered by {@link MarkdownRenderer} and
 * {@link HtmlRenderer}.
 *
 * @param title heading of the first level; none where the text is to be pasted under a heading of the reader's own
 */
record Document(Optional<String> title, List<Block> blocks) {
    Document {
        blocks = List.copyOf(blocks);
    }

    /** Collects blocks from top to bottom. */
    static final class Builder {
        private final List<Block> blocks = new ArrayList<>();

        Builder add(Block block) {
            blocks.add(block);
            return this;
        }

        Builder heading(String text) {
            return add(new Block.Heading(text));
        }

        Builder paragraph(String text) {
            return add(new Block.Paragraph(TextLine.of(text)));
        }

        /** A paragraph led by a label, such as {@code Verdict: fails}. */
        Builder labelled(String label, String text) {
            return add(new Block.Paragraph(TextLine.labelled(label, text)));
        }

        /** An address that stands alone. */
        Builder link(String address) {
            return add(new Block.Paragraph(TextLine.link(address)));
        }

        Builder references(List<Reference> references) {
            return add(new Block.Bullets(references.stream().map(TextLine::of).toList()));
        }

        Builder bullets(List<String> items) {
            return add(new Block.Bullets(items.stream().map(TextLine::of).toList()));
        }

        /** A list under a line that names it; nothing where the list is empty. */
        Builder listed(String name, List<String> items) {
            return items.isEmpty() ? this : paragraph(name).bullets(items);
        }

        Document titled(String title) {
            return new Document(Optional.of(title), blocks);
        }

        Document untitled() {
            return new Document(Optional.empty(), blocks);
        }
    }
}
