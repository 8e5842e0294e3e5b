package gloam.view;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** A part of a document: it says what it is, and nothing of a width, a format or how it is printed. */
sealed interface Block permits Block.Heading, Block.Paragraph, Block.Item, Block.Term, Block.Hint,
        Block.Gap, Block.Figure, Block.Picture, Block.Link, Block.Aside, Block.Card, Block.Live, Table {

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

    /** What plain text says of what it leaves out. */
    record Hint(String text) implements Block {
    }

    /** Space between parts. */
    record Gap() implements Block {
    }

    /**
     * A drawing, which plain text leaves out.
     *
     * @param name    what it shows
     * @param drawing the drawing as SVG, made when it is printed, with the line that says what it comes from
     * @param legend  what is drawn how, where the drawing itself does not say so; else empty
     */
    record Figure(String name, UnaryOperator<String> drawing, String legend) implements Block {

        /** A drawing that says itself what is drawn how. */
        Figure(String name, UnaryOperator<String> drawing) {
            this(name, drawing, "");
        }
    }

    /**
     * A picture of pixels, which plain text leaves out.
     *
     * @param name what it shows, for who does not see it
     * @param png  the picture as PNG, made when it is printed
     */
    record Picture(String name, Supplier<byte[]> png) implements Block {
    }

    /**
     * A file beside the page, which plain text leaves out.
     *
     * @param name what it is
     * @param path its path from the page's folder
     */
    record Link(String name, String path) implements Block {

        /** The address of the file, which can be nothing but a path. */
        String address() {
            try {
                return new URI(path.startsWith("/") ? "file" : null, null, path.startsWith("/") ? path
                        : "./" + path, null).toASCIIString();
            } catch (URISyntaxException cannotHappen) {
                throw new IllegalStateException(cannotHappen);
            }
        }
    }

    /** What few want to read; plain text leaves it out. */
    record Aside(String title, Document part) implements Block {
    }

    /**
     * A card to take along and fill in; plain text leaves it out, since its figures stand elsewhere in the
     * document.
     *
     * @param id     its name within the document
     * @param time   what is read from afar
     * @param part   what else stands on it
     * @param steps  what is ticked off
     * @param blanks what is filled in
     */
    record Card(String id, String title, String time, Document part, List<String> steps, List<String> blanks)
            implements Block {
    }

    /**
     * What comes next and when, for a page that follows the clock; plain text leaves it out.
     *
     * @param evenings the evenings, for who cannot be shown the next act alone
     * @param data     the timetable as JSON, made when it is printed
     */
    record Live(List<Evening> evenings, Supplier<String> data) implements Block {
    }

    /**
     * The cards of an evening.
     *
     * @param title which evening
     * @param cards what is said of each card, by the card's name within the document
     */
    record Evening(String title, Map<String, String> cards) {
    }
}
