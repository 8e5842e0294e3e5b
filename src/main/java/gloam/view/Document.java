package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What an answer shows, block after block, for whatever it is printed on; user text stands in it as it was
 * given, and each printer makes it harmless for its format.
 */
final class Document {

    private final String title;
    private Optional<UnaryOperator<String>> whole = Optional.empty();
    private final List<Block> blocks = new ArrayList<>();

    private final boolean forPrograms;

    private Document(String title, boolean forPrograms) {
        this.title = title;
        this.forPrograms = forPrograms;
    }

    /** A document that begins with its title. */
    static Document headed(String title) {
        return new Document(title, false).heading(1, title);
    }

    /** A document whose title is left out where its first lines say as much. */
    static Document named(String title) {
        return new Document(title, false);
    }

    /** Blocks that become a part of a document. */
    static Document part() {
        return new Document("", false);
    }

    /** A document of tables whose plain text is what other programs read. */
    static Document forPrograms(String title) {
        return new Document(title, true);
    }

    String title() {
        return title;
    }

    boolean forPrograms() {
        return forPrograms;
    }

    List<Block> blocks() {
        return List.copyOf(blocks);
    }

    /** Adds a block. */
    Document add(Block block) {
        blocks.add(block);
        return this;
    }

    /** Adds all blocks of a part. */
    Document add(Document part) {
        blocks.addAll(part.blocks);
        return this;
    }

    /** Adds a heading. */
    Document heading(int level, String text) {
        return add(new Block.Heading(level, text));
    }

    /** Adds a paragraph. */
    Document text(String text) {
        return add(new Block.Paragraph(text, false));
    }

    /** Adds a paragraph that stands under what is before it. */
    Document under(String text) {
        return add(new Block.Paragraph(text, true));
    }

    /** Adds a point of a list. */
    Document item(String text) {
        return add(new Block.Item(text));
    }

    /** Adds space. */
    Document gap() {
        return add(new Block.Gap());
    }

    /** Adds a drawing, made with the line that says what it comes from. */
    Document figure(String name, UnaryOperator<String> drawing) {
        return add(new Block.Figure(name, drawing));
    }

    /** Has all of it as one drawing too, where that is another than its figures. */
    Document drawn(UnaryOperator<String> all) {
        whole = Optional.of(all);
        return this;
    }

    /** What stands for the document where only a drawing can. */
    Optional<UnaryOperator<String>> drawing() {
        return whole.or(() -> blocks.stream().filter(Block.Figure.class::isInstance)
                .map(block -> ((Block.Figure) block).drawing()).findFirst());
    }
}
