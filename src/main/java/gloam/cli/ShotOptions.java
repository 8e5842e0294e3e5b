package gloam.cli;

import gloam.answer.Pointing;
import gloam.ephemeris.Direction;
import gloam.ephemeris.NamedTarget;
import gloam.ephemeris.Target;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the camera points and when its shutter is open. */
final class ShotOptions extends OptionGroup {

    /** Allowed turns of a camera about its axis. */
    static final Range ROLL = new Range("roll", -360, 360, "deg");
    private static final Duration LONGEST = Duration.ofDays(10);

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "Where the camera points, from north through east.");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "How high the camera points.");

    private final Option<String> aim = option("--aim", "TARGET", String.class,
            "Point at this body, star or RA,DEC instead; it lands on --at-frame at mid-exposure.");

    private final Option<Framing.Point> place = option("--at-frame", "X,Y", Framing.Point.class,
            "Where on the frame, in mm right of and above the centre (default: 0,0).");

    private final Option<Quantity> rollDeg = option("--roll", "DEG", Quantity.class,
            "Camera turned clockwise, as seen from behind (default: ${DEFAULT-VALUE}).").byDefault("0");

    private final Option<String> from = option("--from", "INSTANT", String.class,
            "When the shutter opens, such as 2027-02-08T21:00 (local time at the site).");

    private final Option<Duration> lasts = option("--lasts", "DURATION", Duration.class,
            "Exposure time, such as 30s, 18m or 1h50m.");

    private final Option<List<TimedOpening>> openings = repeated("--open", "OPENING", TimedOpening.class,
            "An opening, such as 2027-02-08T21:00/10m, besides --from or instead. Repeatable.");

    private final Option<Quantity> lengthMm = option("--length", "MM", Quantity.class,
            "Instead of --lasts: expose until the target's trail is this long.");

    /**
     * The setting of a camera at its widest f-number; an aim stands at its place as it is seen with or
     * without air.
     */
    Setting setting(Site site, Camera camera, boolean airless, Session session) {
        List<Interval> said = lengthMm.given() ? List.of() : openings(site);
        Pointing pointing = new Pointing(camera, roll(), aimed(session));
        Pointing.Standpoint from = new Pointing.Standpoint(session.ephemeris(), site, airless);
        List<Interval> openings = lengthMm.given() ? List.of(forLength(pointing, from)) : said;
        return new Setting(FromOption.of("--at-frame", () ->
                pointing.framing(from, Interval.span(openings).middle())), camera.lens().fNumbers().get(0),
                openings);
    }

    private Pointing.Aimed aimed(Session session) {
        Optional<Target> target = aim.value()
                .map(text -> FromOption.of("--aim", () -> NamedTarget.of(text, session::stars).target()));
        if (target.isPresent() == (azimuthDeg.given() && altitudeDeg.given())
                || target.isPresent() && (azimuthDeg.given() || altitudeDeg.given())) {
            throw new BadInput("the aim is " + (target.isPresent() ? "given twice" : "not given")
                    + "; give --azimuth DEG and --altitude DEG, or --aim TARGET");
        }
        return target.<Pointing.Aimed>map(one -> new Pointing.Keeping(one, place()))
                .orElseGet(() -> new Pointing.Towards(Direction.ofDegrees(
                        FromOption.checked("--azimuth", Direction.AZIMUTH, azimuthDeg.get()),
                        FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg.get()))));
    }

    private Interval forLength(Pointing pointing, Pointing.Standpoint from) {
        if (lasts.given() || !openings.get().isEmpty()) {
            throw new BadInput("--length sets the exposure time; leave out --lasts and --open");
        }
        double wantedMm = FromOption.checked("--length", Pointing.LENGTH, lengthMm.get());
        Instant opens = opens(from.site());
        return FromOption.of("--at-frame", () -> pointing.untilLength(from, opens, wantedMm))
                .orElseThrow(() ->
                new BadInput("no trail gets this long in 16 h; give a shorter length (--length)"));
    }

    private Instant opens(Site site) {
        return FromOption.of("--from", () -> from.value().map(Moment::parse).orElseThrow(() ->
                new BadInput("no opening given; use --from INSTANT")).in(site.zone()));
    }

    private List<Interval> openings(Site site) {
        List<Interval> all = new ArrayList<>(openings.get().stream()
                .map(opening -> FromOption.of("--open", () -> opening.in(site.zone()))).toList());
        if (from.given() != lasts.given() || all.isEmpty() && !from.given()) {
            throw new BadInput("no exposure given; use --from INSTANT and --lasts DURATION, or "
                    + "--open INSTANT/DURATION");
        }
        lasts.value().ifPresent(open -> all.add(Interval.lasting(opens(site), open)));
        List<Interval> inOrder = Interval.sorted(all);
        if (Interval.overlapping(inOrder).isPresent()) {
            throw new BadInput("two openings overlap; let each close before the next opens (--open)");
        }
        if (Interval.span(inOrder).lasts().compareTo(LONGEST) > 0) {
            throw new BadInput("first opening and last closing are more than ten days apart; give openings "
                    + "of one sheet (--open)");
        }
        return inOrder;
    }

    /** The text of --from, where it is to be a date. */
    Optional<String> from() {
        return from.value();
    }

    /** The camera's turn about its axis. */
    Angle roll() {
        return Angle.ofDegrees(FromOption.checked("--roll", ROLL, rollDeg.get()));
    }

    /** Where on the frame what is aimed at stands. */
    Framing.Point place() {
        return place.value().orElse(new Framing.Point(0, 0));
    }
}
