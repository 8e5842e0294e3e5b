package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Colours of text and paper in every view of a page; contrast as WCAG 2.2 defines it. */
class PageColoursTest {

    /** WCAG 2.2, success criterion 1.4.3. */
    private static final double LEAST_CONTRAST = 4.5;
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final Pattern COLOUR = Pattern.compile("--(paper|ink): #([0-9a-f]{6}|[0-9a-f]{3});");

    @Test
    void textCanBeReadInEveryViewAndBrightness() {
        List<Map<String, String>> views = views();
        assertEquals(6, views.size());
        for (Map<String, String> view : views) {
            double contrast = contrast(view.get("ink"), view.get("paper"));
            assertTrue(contrast >= LEAST_CONTRAST, () -> view + " " + contrast);
        }
    }

    @Test
    void theRedViewIsRedOnBlackAndGrowsBrighter() {
        List<Map<String, String>> views = views();
        List<Double> light = new ArrayList<>();
        for (Map<String, String> red : List.of(views.get(3), views.get(2), views.get(4))) {
            assertEquals(0, luminance(red.get("paper")));
            assertEquals("0000", full(red.get("ink")).substring(2));
            light.add(luminance(red.get("ink")));
        }
        assertTrue(light.get(0) < light.get(1) && light.get(1) < light.get(2), light::toString);
    }

    /** Day, dark, red: middle, low and bright, on paper; what one does not say it has from before. */
    private static List<Map<String, String>> views() {
        Map<String, String> colours = new HashMap<>();
        List<Map<String, String>> views = new ArrayList<>();
        for (Matcher rule = RULE.matcher(PagePart.STYLE.text()); rule.find();) {
            Matcher colour = COLOUR.matcher(rule.group(2));
            boolean any = false;
            for (; colour.find(); any = true) {
                colours.put(colour.group(1), colour.group(2));
            }
            if (any) {
                views.add(Map.copyOf(colours));
            }
        }
        return views;
    }

    /** WCAG 2.2, contrast ratio. */
    private static double contrast(String one, String other) {
        double brighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (brighter + 0.05) / (darker + 0.05);
    }

    /** WCAG 2.2, relative luminance. */
    private static double luminance(String colour) {
        int rgb = Integer.parseInt(full(colour), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static String full(String colour) {
        return colour.length() == 6 ? colour : colour.replaceAll("(.)", "$1$1");
    }
}
