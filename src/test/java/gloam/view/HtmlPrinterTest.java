package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** A document as a page: what stands in it, and where. */
class HtmlPrinterTest {

    private static org.jsoup.nodes.Document page(Document document) {
        return Jsoup.parse(new HtmlPrinter(new Origin("gloam 1.0", List.of("a.yaml", "b.jsonl")))
                .printed(document, OffsetDateTime.parse("2027-01-15T11:00:59+01:00")));
    }

    private static List<String> texts(Element in, String selector) {
        return in.select(selector).eachText();
    }

    @Test
    void blocksStandInTheirElementsInOrder() {
        Document document = Document.headed("Title").text("prose").under("beneath").item("one").item("two")
                .add(new Block.Term("name", "meaning", 8, false)).heading(2, "Section").text("inside");
        org.jsoup.nodes.Document page = page(document);
        Element main = page.selectFirst("main > div");
        assertEquals(List.of("Title"), texts(page, "h1"));
        assertEquals(List.of("h1", "p", "p", "ul", "dl", "section", "footer"),
                main.children().stream().map(Element::tagName).toList());
        assertEquals(List.of("prose"), texts(main, "> p.prose"));
        assertEquals(List.of("beneath"), texts(main, "p.under"));
        assertEquals(List.of("one", "two"), texts(main, "ul.points > li"));
        assertEquals(List.of("name"), texts(main, "dl > dt"));
        assertEquals(List.of("meaning"), texts(main, "dl > dd"));
        assertEquals(List.of("Section"), texts(main, "section > h2"));
        assertEquals(List.of("inside"), texts(main, "section > p"));
        assertEquals("Gloam 1.0, a.yaml, b.jsonl, made Fri 2027-01-15 11:00 (UTC+01:00)",
                main.selectFirst("footer").text());
    }

    @Test
    void aPageHasOneTitle() {
        assertEquals(List.of("Named"), texts(page(Document.named("Named").text("prose")), "h1"));
        assertEquals(List.of("Named"), texts(page(Document.named("Named").heading(2, "Part")), "h1"));
        assertEquals(List.of("Title"), texts(page(Document.headed("Title")), "h1"));
        assertEquals("page", page(Document.headed("Title")).selectFirst("main > div").className());
        assertEquals("data", page(Document.forPrograms("Title")).selectFirst("main > div").className());
    }

    @Test
    void aTableNamesItsColumnsAndRows() {
        Table table = new Table(Table.words("wish"), Table.numbers("trail", "mm")).row("pole", "7")
                .note("because")
                .row("Mars", "128");
        Element main = page(Document.headed("Title").add(table)).selectFirst("main > div");
        assertEquals(List.of("wish", "trail mm"), texts(main, "thead th[scope=col]"));
        assertEquals(List.of("pole", "Mars"), texts(main, "tbody th[scope=row]"));
        assertEquals(List.of("7", "128"), texts(main, "tbody td.number"));
        assertEquals(List.of("trail ", " mm"), List.of(main.selectFirst("td.number").attr("data-before"),
                main.selectFirst("td.number").attr("data-after")));
        assertEquals(List.of("row", "note", "row"), main.select("tbody tr").eachAttr("class"));
        assertEquals("2", main.selectFirst("tr.note td").attr("colspan"));
        assertEquals("because", main.selectFirst("tr.note td").text());
    }

    /** Every table says of what it is (WCAG 2.2, technique H39): of the part in which it stands. */
    @Test
    void aTableHasACaption() {
        Document document = Document.headed("Title").add(new Table(Table.words("a")).row("1"))
                .heading(2, "Part")
                .add(new Table(Table.words("b")).row("2"));
        assertEquals(List.of("Title", "Part"), texts(page(document), "table > caption"));
    }

    @Test
    void aPageOfSeveralPartsListsThem() {
        Document document = Document.headed("Title").text("first").heading(2, "One").heading(2, "Two");
        assertTrue(page(document).select("nav").isEmpty());
        org.jsoup.nodes.Document page = page(document.heading(2, "Three"));
        assertEquals(List.of("One", "Two", "Three"), texts(page, "nav li > a"));
        assertEquals(texts(page, "nav a"), page.select("nav a").eachAttr("href").stream()
                .map(link -> page.selectFirst(link + " > h2").text()).toList());
    }

    /** What stands outside of landmarks is passed over by who goes from one to the next. */
    @Test
    void nothingStandsOutsideOfTheMainPart() {
        assertEquals(List.of("main"), page(Document.headed("Title").text("prose")).body().children().stream()
                .map(Element::tagName).toList());
    }

    @Test
    void cardsStandOutsideOfSections() {
        Block.Card card = new Block.Card("sheet-1", "Sheet 1", "20:00", Document.part().text("on it"),
                List.of("set up", "open"), List.of("note"));
        Element main = page(Document.headed("Title").heading(2, "Night").text("dark").add(card).add(card)
                .heading(2, "Next")).selectFirst("main > div");
        assertEquals(List.of("h1", "section", "div", "section", "footer"),
                main.children().stream().map(Element::tagName).toList());
        assertEquals(2, main.select("div.cards > article#sheet-1").size());
        Element first = main.selectFirst("article");
        assertEquals("Sheet 1", first.selectFirst("h3").text());
        assertEquals("20:00", first.selectFirst("p.time").text());
        assertEquals(List.of("set up", "open"), texts(first, "ul.ticks > li"));
        assertEquals(2, first.select("input[type=checkbox]").size());
        assertEquals(List.of("note"), texts(first, "label.blank"));
        assertEquals(List.of("on it"), texts(first, "> p.prose"));
    }

    @Test
    void picturesAndAsidesAreInThePage() {
        Element main = page(Document.headed("Title")
                .figure("a drawing", made -> "<svg><title>drawn</title><text>" + made + "</text></svg>")
                .add(new Block.Picture("a proof", () -> new byte[] {1, 2, 3}))
                .add(new Block.Aside("more", Document.part().text("hidden")))).selectFirst("main > div");
        assertEquals(main.selectFirst("footer").text(), main.selectFirst("div.strip > svg > text").text());
        assertEquals("data:image/png;base64,AQID", main.selectFirst("div.proof > img").attr("src"));
        assertEquals("a proof", main.selectFirst("img").attr("alt"));
        assertEquals("more", main.selectFirst("details > summary").text());
        assertEquals("hidden", main.selectFirst("details > p").text());
    }

    /** What users write is never markup; what runs from right to left stands apart. */
    @Test
    void wordsAreWords() {
        Element main = page(Document.headed("<b>&\"' \u05d0")).selectFirst("main > div");
        assertEquals("<b>&\"' \u05d0", main.selectFirst("h1").text());
        assertEquals("\u05d0", main.selectFirst("h1 bdi").text());
        assertTrue(main.select("b").isEmpty());
    }
}
