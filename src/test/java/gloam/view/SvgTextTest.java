package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SvgTextTest {

    @Test
    void wordsAreEscaped() {
        assertEquals("<text>&lt;script&gt; &amp; &quot;x&quot; ✓</text>\n",
                new SvgText().words("text", "", "<script> & \"x\" ✓").toString());
    }

    @Test
    void whatXmlCannotHoldIsReplaced() {
        assertEquals("a\ufffdb\ufffd", SvgText.escaped("a\u0007b\ufffe"));
    }

    @Test
    void numbersArePlain() {
        assertEquals("0.00", SvgText.number(-0.001));
        assertEquals("-12.35", SvgText.number(-12.346));
    }
}
