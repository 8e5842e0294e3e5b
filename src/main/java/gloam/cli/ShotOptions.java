package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.trail.LengthSearch;
import gloam.trail.TrailEstimator;
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

    private static final Range ROLL = new Range("roll", -360, 360, "deg");
    private static final Range LENGTH = new Range("trail length", 0.01, 1000, "mm");
    private static final Duration LONGEST = Duration.ofDays(10);

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "Where the camera points, from north through east.");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "How high the camera points.");

    private final Option<String> aim = option("--aim", "TARGET", String.class,
            "Instead: the body, star or RA,DEC in degrees at --at-frame at mid exposure.");

    private final Option<Framing.Point> place = option("--at-frame", "X,Y", Framing.Point.class,
            "Where on the frame, in mm from the centre to the right and up (default: 0,0).");

    private final Option<Quantity> rollDeg = option("--roll", "DEG", Quantity.class,
            "Turned clockwise as seen from behind (default: ${DEFAULT-VALUE}).").byDefault("0");

    private final Option<String> from = option("--from", "INSTANT", String.class,
            "When it opens, such as 2027-02-08T21:00 by the site's clocks.");

    private final Option<Duration> lasts = option("--lasts", "DURATION", Duration.class,
            "How long it is open, such as 30s, 18m or 1h50m.");

    private final Option<List<TimedOpening>> openings = repeated("--open", "OPENING", TimedOpening.class,
            "An opening, such as 2027-02-08T21:00/10m, besides --from or instead. Repeatable.");

    private final Option<Quantity> lengthMm = option("--length", "MM", Quantity.class,
            "Instead of --lasts: until the trail of what is aimed at is so long.");

    /** The setting of a camera at its widest f-number; an aim stands at its place as the estimator sees it. */
    Setting setting(Site site, Camera camera, TrailEstimator estimator, Session session) {
        Optional<Target> aimed = aim.value().map(text -> FromOption.of("--aim", () -> Targets.target(text, session::stars)));
        List<Interval> openings = lengthMm.given() ? List.of(forLength(site, camera, estimator, aimed))
                : openings(site);
        return new Setting(framing(camera, estimator, aimed, Interval.span(openings).middle()),
                camera.lens().fNumbers().get(0), openings);
    }

    private Framing framing(Camera camera, TrailEstimator estimator, Optional<Target> aimed, Instant middle) {
        if (aimed.isPresent() == (azimuthDeg.given() && altitudeDeg.given())
                || aimed.isPresent() && (azimuthDeg.given() || altitudeDeg.given())) {
            throw new BadInput("where the camera points is " + (aimed.isPresent() ? "said twice" : "not said")
                    + "; give --azimuth DEG and --altitude DEG, or --aim TARGET");
        }
        if (aimed.isEmpty()) {
            return new Framing(Direction.ofDegrees(
                    FromOption.checked("--azimuth", Direction.AZIMUTH, azimuthDeg.get()),
                    FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg.get())), roll(), camera);
        }
        return new Framing(Direction.ofDegrees(0, 0), roll(), camera)
                .placing(estimator.direction(aimed.get(), middle), place().xMm(), place().yMm())
                .orElseThrow(() -> new BadInput("no aim puts it there: it stands too near the zenith for that place "
                        + "of the frame. Choose another (--at-frame)"));
    }

    private Interval forLength(Site site, Camera camera, TrailEstimator estimator, Optional<Target> aimed) {
        if (lasts.given() || !openings.get().isEmpty()) {
            throw new BadInput("--length tells how long the shutter is open; leave out --lasts and --open");
        }
        double wantedMm = FromOption.checked("--length", LENGTH, lengthMm.get());
        return new LengthSearch(estimator, opens(site), wantedMm).find(open -> {
            Framing framing = framing(camera, estimator, aimed, open.middle());
            return new LengthSearch.Shot(framing, aimed.orElseGet(() -> estimator.starAt(framing, 0, 0, open)));
        }).orElseThrow(() -> new BadInput("no trail gets so long in 16 h; ask for a shorter one (--length)"));
    }

    private Instant opens(Site site) {
        return FromOption.of("--from", () -> from.value().map(Moment::parse).orElseThrow(() ->
                new BadInput("when the shutter opens is not said; give --from INSTANT")).in(site.zone()));
    }

    private List<Interval> openings(Site site) {
        List<Interval> all = new ArrayList<>(openings.get().stream()
                .map(opening -> FromOption.of("--open", () -> opening.in(site.zone()))).toList());
        if (from.given() != lasts.given() || all.isEmpty() && !from.given()) {
            throw new BadInput("when the shutter is open is not said; give --from INSTANT and --lasts DURATION, or "
                    + "--open INSTANT/DURATION");
        }
        lasts.value().ifPresent(open -> all.add(Interval.lasting(opens(site), open)));
        List<Interval> inOrder = Interval.sorted(all);
        if (Interval.overlapping(inOrder).isPresent()) {
            throw new BadInput("two openings overlap; let each close before the next opens (--open)");
        }
        if (Interval.span(inOrder).lasts().compareTo(LONGEST) > 0) {
            throw new BadInput("first opening and last closing are more than ten days apart; give openings of one sheet (--open)");
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
