package org.scalepan.web.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.cite.Reference;

/**
 * A text to be quoted or printed, as a list of blocks, rendered by {@link MarkdownRenderer} and {@link HtmlRenderer}.
 *
 * @param title heading of the first level; none where the text goes under a heading of the reader's own
 */
public record Document(Optional<String> title, List<Block> blocks) {
    public Document {
        blocks = List.copyOf(blocks);
    }

    /** Collects blocks from top to bottom. */
    public static final class Builder {
        private final List<Block> blocks = new ArrayList<>();

        public Builder add(Block block) {
            blocks.add(block);
            return this;
        }

        public Builder heading(String text) {
            return add(new Block.Heading(text));
        }

        public Builder paragraph(String text) {
            return add(new Block.Paragraph(TextLine.of(text)));
        }

        /** A paragraph that starts with a label, such as {@code Verdict: fails}. */
        public Builder labelled(String label, String text) {
            return add(new Block.Paragraph(TextLine.labelled(label, text)));
        }

        /** A paragraph that consists of an address. */
        public Builder link(String address) {
            return add(new Block.Paragraph(TextLine.link(address)));
        }

        public Builder references(List<Reference> references) {
            return add(new Block.Bullets(references.stream().map(TextLine::of).toList()));
        }

        /** References with the numbers that texts refer to; what the record of one did not have stands behind it. */
        public Builder numbered(List<Reference> references) {
            List<TextLine> lines = new ArrayList<>();
            for (int i = 0; i < references.size(); i++) {
                lines.add(TextLine.numbered(i + 1, references.get(i)));
            }
            return add(new Block.Bullets(lines));
        }

        public Builder bullets(List<String> items) {
            return add(new Block.Bullets(items.stream().map(TextLine::of).toList()));
        }

        /** A list under an introductory line; nothing where the list is empty. */
        public Builder listed(String name, List<String> items) {
            return items.isEmpty() ? this : paragraph(name).bullets(items);
        }

        public Document titled(String title) {
            return new Document(Optional.of(title), blocks);
        }

        public Document untitled() {
            return new Document(Optional.empty(), blocks);
        }
    }
}
