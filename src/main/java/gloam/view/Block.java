package gloam.view;

import java.util.function.Supplier;

/** A part of a document: it says what it is, and nothing of a width, a format or how it is printed. */
sealed interface Block permits Block.Heading, Block.Paragraph, Block.Item, Block.Term, Block.Gap, Block.Figure, Table {

    /**
     * A heading.
     *
     * @param level 1 for the document's own, more for its parts
     */
    record Heading(int level, String text) implements Block {
    }

    /**
     * Prose.
     *
     * @param under whether it stands under what is before it
     */
    record Paragraph(String text, boolean under) implements Block {
    }

    /** A point of a list. */
    record Item(String text) implements Block {
    }

    /**
     * A name and what is said of it.
     *
     * @param column letters from the name's start to where the text stands, for all terms of a list
     * @param under  whether it stands under what is before it
     */
    record Term(String name, String text, int column, boolean under) implements Block {
    }

    /** Space between parts. */
    record Gap() implements Block {
    }

    /**
     * A picture, which plain text leaves out.
     *
     * @param name    what it shows
     * @param drawing the picture as SVG, made when it is printed
     */
    record Figure(String name, Supplier<String> drawing) implements Block {
    }
}
