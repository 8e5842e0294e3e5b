package gloam.view;

import gloam.gear.Lens;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Place;
import gloam.units.Label;
import gloam.units.Finite;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One thing that an entry of the journal says differently from the last word before it.
 *
 * @param what   the thing
 * @param before what was said of it, if anything
 * @param now    what is said now, if anything
 */
record EntryChange(String what, Optional<String> before, Optional<String> now) {

    private static final int LATITUDE_DECIMALS = 4;

    /** All changes from one word on a sheet to the next. */
    static List<EntryChange> between(Entry before, Entry now) {
        ZoneId zone = now.exposed().place().map(Place::zone).orElse(ZoneOffset.UTC);
        Map<String, String> was = sayings(before, zone);
        Map<String, String> is = sayings(now, zone);
        return is.keySet().stream().filter(what -> !is.get(what).equals(was.get(what)))
                .map(what -> new EntryChange(what, said(was.get(what)), said(is.get(what)))).toList();
    }

    /** The change in words. */
    String text() {
        return what + ": " + before.orElse("nothing") + " → " + now.orElse("nothing");
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(some -> !some.isEmpty());
    }

    private static Map<String, String> sayings(Entry entry, ZoneId zone) {
        Exposed exposed = entry.exposed();
        Lens lens = exposed.lens();
        SheetRow row = SheetRow.of(entry);
        Map<String, String> sayings = new LinkedHashMap<>();
        sayings.put("withdrawn", entry.withdrawn() ? "yes" : "");
        sayings.put("film", exposed.film());
        sayings.put("batch", exposed.batch());
        sayings.put("site", row.site().orElse(""));
        sayings.put("latitude", exposed.place().map(place ->
                Wording.number(place.latitude().degrees(), LATITUDE_DECIMALS) + "°").orElse(""));
        sayings.put("zone", exposed.place().map(place -> place.zone().getId()).orElse(""));
        sayings.put("open", exposed.openings().stream().map(opening -> open(opening, zone))
                .collect(Collectors.joining(", ")));
        sayings.put("azimuth", exposed.aim().map(aim -> Wording.plain(aim.azimuth().degrees()) + "°")
                .orElse(""));
        sayings.put("altitude", exposed.aim().map(aim -> Wording.plain(aim.altitude().degrees()) + "°")
                .orElse(""));
        sayings.put("f-number", Wording.fNumber(exposed.fNumber().marked()));
        sayings.put("focal length", Wording.plain(lens.focalLengthMm()) + " mm");
        sayings.put("focus", Wording.focus(Finite.of(lens.focusM())));
        sayings.put("transmittance", Wording.number(lens.transmittance(), 4));
        sayings.put("spot", Wording.plain(lens.spotUm()) + " µm");
        sayings.put("filter", Wording.plain(lens.filterStops()) + " stops");
        sayings.put("projection", Label.of(lens.projection()));
        sayings.put("light", row.light());
        sayings.put("light on the film", String.format(Locale.ROOT, "%.3e lx", exposed.middleLx()));
        sayings.putAll(row.noted());
        return sayings;
    }

    private static String open(Opening opening, ZoneId zone) {
        OffsetDateTime opens = new SiteClock(zone).at(opening.open().start());
        return opens.toLocalDate() + " " + Wording.second(opens) + " for "
                + Wording.lasting(opening.open().seconds());
    }
}
