package gloam.view;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Base64;
import java.util.List;

/**
 * One self-contained page, which is sound XML too: it asks for nothing from elsewhere, and no script runs in
 * it but the one that follows the clock through a timetable.
 */
final class HtmlPrinter implements Renderer {

    /** Width in letters of a cell that is not broken, such as a date. */
    private static final int SHORT = 16;
    /** The brightnesses of the red view. */
    private static final String MIDDLE = "middle";
    private static final List<String> LEVELS = List.of("low", MIDDLE, "bright");
    /** Parts from which on a page lists them. */
    private static final int PARTS = 3;

    private final Markup page = new Markup();
    private List<String> parts = List.of();
    private int part;
    private String heading = "";
    private String made = "";
    private final Origin origin;

    /** Names what the page comes from. */
    HtmlPrinter(Origin origin) {
        this.origin = origin;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(new HtmlPrinter(origin).printed(report.document(), report.generatedAt()));
    }

    /** The page of a document made at a time. */
    String printed(Document document, OffsetDateTime at) {
        made = origin.made(at);
        PageScript script = PageScript.of(document.blocks());
        page.add("<!DOCTYPE html>").open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8")
                .empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .empty("meta", "http-equiv", "Content-Security-Policy", "content",
                        "default-src 'none'; img-src data:; style-src 'unsafe-inline'" + script.allowed())
                .empty("link", "rel", "icon", "href", "data:,").words("title", document.title())
                .open("style").add(PagePart.DRAWING_STYLE.text()).add(PagePart.STYLE.text()).close("style")
                .close("head").open("body").open("main")
                .empty("input", "type", "checkbox", "id", "red", "class", "view");
        LEVELS.forEach(level -> page.add(Markup.start("input", "type", "radio", "name", "level", "id",
                level, "class", "view brightness")
                + (level.equals(MIDDLE) ? " checked=\"checked\"/>" : "/>")));
        page.words("label", "red view", "for", "red", "class", "switch");
        LEVELS.forEach(level -> page.words("label", level, "for", level, "class", "switch level"));
        page.open("div", "class", document.forPrograms() ? "data" : "page");
        List<Block> blocks = document.blocks();
        parts = blocks.stream().filter(HtmlPrinter::begins).map(block -> ((Block.Heading) block).text())
                .toList();
        heading = document.title();
        if (blocks.isEmpty() || !(blocks.get(0) instanceof Block.Heading first) || first.level() > 1) {
            words("h1", document.title());
        }
        blocks(blocks);
        words("footer", made, "class", "small");
        page.close("div").close("main");
        script.addTo(page);
        return page.close("body").close("html").toString();
    }

    /** Blocks in order: a heading begins a section, cards stand outside of them, like stands with like. */
    private void blocks(List<Block> blocks) {
        String group = "";
        boolean section = false;
        for (Block block : blocks) {
            String own = group(block);
            boolean begins = begins(block);
            end(own.equals(group) ? "" : group);
            if (section && (begins || block instanceof Block.Card)) {
                end("section");
                section = false;
            }
            if (begins) {
                contents();
                page.open("section", "id", "part-" + ++part);
                section = true;
            }
            if (!own.equals(group) && !own.isEmpty()) {
                page.open(own, "class", own.equals("div") ? "cards" : "points");
            }
            group = own;
            block(block);
        }
        end(group);
        end(section ? "section" : "");
    }

    private static boolean begins(Block block) {
        return block instanceof Block.Heading heading && heading.level() > 1;
    }

    /** Where the parts of a long page are, before the first of them. */
    private void contents() {
        if (part == 0 && parts.size() >= PARTS) {
            page.open("details", "class", "contents");
            words("summary", "contents");
            page.open("nav", "aria-label", "contents").open("ul");
            for (int i = 0; i < parts.size(); i++) {
                link("part-" + (i + 1), parts.get(i));
            }
            page.close("ul").close("nav").close("details");
        }
    }

    private void link(String id, String words) {
        page.add("<li>" + Markup.start("a", "href", "#" + id) + ">" + Markup.prose(words) + "</a></li>");
    }

    private void end(String element) {
        if (!element.isEmpty()) {
            page.close(element);
        }
    }

    /** The element in which blocks like this one stand together. */
    private static String group(Block block) {
        if (block instanceof Block.Item) {
            return "ul";
        }
        return block instanceof Block.Term ? "dl" : block instanceof Block.Card ? "div" : "";
    }

    private void block(Block block) {
        if (block instanceof Block.Heading title) {
            heading = title.text();
            words("h" + title.level(), heading);
        } else if (block instanceof Block.Paragraph paragraph) {
            words("p", paragraph.text(), "class", paragraph.under() ? "under" : "prose");
        } else if (block instanceof Block.Item item) {
            words("li", item.text());
        } else if (block instanceof Block.Term term) {
            words("dt", term.name());
            words("dd", term.text());
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Block.Figure figure) {
            String drawing = figure.drawing().apply(made);
            page.open("div", "class", "strip", "tabindex", 0, "role", "group", "aria-label", figure.name(),
                    "style", Drawing.least(drawing));
            words("p", "Wider than this screen: swipe sideways.", "class", "more", "aria-hidden", "true");
            page.add(drawing).close("div");
            if (!figure.legend().isEmpty()) {
                words("p", figure.legend(), "class", "legend");
            }
        } else if (block instanceof Block.Picture picture) {
            page.open("div", "class", "proof").empty("img", "alt", picture.name(), "src",
                    "data:image/png;base64," + Base64.getEncoder().encodeToString(picture.png().get()))
                    .close("div");
        } else if (block instanceof Block.Link link) {
            page.open("p", "class", "prose").add(Markup.start("a", "href", link.address()) + ">"
                    + Markup.prose(link.name()) + "</a>").close("p");
        } else if (block instanceof Block.Aside aside) {
            page.open("details");
            words("summary", aside.title());
            blocks(aside.part().blocks());
            page.close("details");
        } else if (block instanceof Block.Card card) {
            card(card);
        } else if (block instanceof Block.Live live) {
            live(live);
        }
    }

    /** All evenings, for who has no script; the script puts the next act before them. */
    private void live(Block.Live live) {
        page.open("section", "id", "live", "class", "live", "aria-label", "what comes next")
                .open("details", "class", "evenings", "open", "open");
        words("summary", "evenings and sheets");
        page.open("nav", "aria-label", "evenings and sheets");
        for (Block.Evening evening : live.evenings()) {
            words("p", evening.title());
            page.open("ul");
            evening.cards().forEach(this::link);
            page.close("ul");
        }
        page.close("nav").close("details").close("section");
    }

    private void table(Table table) {
        page.open("div", "class", "wide", "tabindex", 0, "role", "group", "aria-label", heading)
                .open("table");
        words("caption", heading, "class", "spoken");
        page.open("thead").open("tr");
        for (Table.Column column : table.columns()) {
            String kind = column.numbers() ? "number" : "words";
            if (column.heading().isEmpty()) {
                words("td", "", "class", kind);
            } else {
                words("th", column.heading(), "scope", "col", "class", kind);
            }
        }
        page.close("tr").close("thead").open("tbody");
        for (Table.Row row : table.rows()) {
            page.open("tr", "class", "row");
            for (int i = 0; i < row.cells().size(); i++) {
                Table.Column column = table.columns().get(i);
                String cell = row.cells().get(i);
                String kind = column.numbers() ? "number"
                        : TextWidth.of(cell) > SHORT ? "words" : "words short";
                String before = column.before(cell);
                String after = column.after(cell);
                if (i == 0) {
                    words("th", cell, "scope", "row", "data-before", before, "data-after", after, "class",
                            kind);
                } else {
                    words("td", cell, "data-before", before, "data-after", after, "class", kind);
                }
            }
            page.close("tr");
            for (String note : row.notes()) {
                page.open("tr", "class", "note");
                words("td", note, "colspan", table.columns().size());
                page.close("tr");
            }
        }
        page.close("tbody").close("table").close("div");
    }

    private void card(Block.Card card) {
        page.open("article", "class", "card", "id", card.id());
        words("h3", card.title());
        words("p", card.time(), "class", "time");
        blocks(card.part().blocks());
        page.open("ul", "class", "ticks");
        for (String step : card.steps()) {
            page.add("<li><label>" + Markup.start("input", "type", "checkbox", "name", step) + "/> <span>"
                    + Markup.prose(step) + "</span></label></li>");
        }
        page.close("ul");
        for (String blank : card.blanks()) {
            page.add("<label class=\"blank\">" + Markup.prose(blank) + " "
                    + Markup.start("input", "type", "text", "name", blank) + "/></label>");
        }
        page.close("article");
    }

    private void words(String name, String words, Object... attributes) {
        page.add(Markup.start(name, attributes) + ">" + Markup.prose(words) + "</" + name + ">");
    }
}
