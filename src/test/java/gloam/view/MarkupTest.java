package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MarkupTest {

    @Test
    void wordsAreEscaped() {
        assertEquals("<text>&lt;script&gt; &amp; &quot;x&quot; ✓</text>\n",
                new Markup().words("text", "<script> & \"x\" ✓").toString());
    }

    @Test
    void attributesAreEscapedAndNumbersCut() {
        assertEquals("<rect x=\"1.50\" class=\"a&quot;&lt;\" n=\"3\"/>\n",
                new Markup().empty("rect", "x", 1.499999, "class", "a\"<", "n", 3).toString());
        assertEquals("<text x=\"1.00\" y=\"2.00\" class=\"b\">ink</text>\n",
                new Markup().label(1, 2, "ink", "class", "b").toString());
    }

    @Test
    void whatXmlCannotHoldIsReplaced() {
        assertEquals("a\ufffdb\ufffd", Markup.escaped("a\u0007b\ufffe"));
    }

    @Test
    void wordsOfAPageStayInOnePiece() {
        assertEquals("Sheet\u00a01 on <time>2027-02-08</time>, <span class=\"short\">20:10 – 21:10</span>, "
                + "50\u00a0%",
                Markup.prose("Sheet 1 on 2027-02-08, 20:10 – 21:10, 50 %"));
        assertEquals("8 sheets planned, 21:25 – Sat &lt; <bdi>כוכב</bdi>, <span class=\"short\">--all</span>",
                Markup.prose("8 sheets planned, 21:25 – Sat < כוכב, --all"));
        assertEquals("instant-mono-640, pack\u00a0A, a pack of 8", Markup.prose("instant-mono-640, pack A, "
                + "a pack of 8"));
        assertEquals("<span class=\"short\">--sheet</span> 3", Markup.prose("--sheet 3"));
        assertEquals("<span class=\"short\">--roll</span> 3", Markup.prose("--roll 3"));
        assertEquals("<span class=\"short\">Mon <time>2027-02-08</time></span> 19:50",
                Markup.prose("Mon 2027-02-08 19:50"));
        assertEquals("43\u00a0±\u00a029, +0.4\u00a0stop, −0.5\u00a0stops, 27\u00a0mm, mag\u00a06, "
                + "roll\u00a00.0°, any <span class=\"short\">f-number</span>",
                Markup.prose("43 ± 29, +0.4 stop, −0.5 stops, 27 mm, mag 6, roll 0.0°, any f-number"));
    }

    @Test
    void numbersArePlain() {
        assertEquals("0.00", Markup.number(-0.001));
        assertEquals("-12.35", Markup.number(-12.346));
    }
}
