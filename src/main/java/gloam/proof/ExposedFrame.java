package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.Band;
import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import gloam.light.SkyLight;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Passage;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What the sky makes of an exposed sheet wherever a trail runs over it. */
public final class ExposedFrame {

    /** A stop seen from 90° and more lets nothing through; what little is kept saves the logarithm. */
    private static final double LEAST_SHARE = 1e-9;

    private final Ephemeris ephemeris;
    private final Sheet sheet;
    private final Setting setting;
    private final SkyMoments sky;
    private final Layer layer;
    private final Map<Setting, Duration> panels;

    /** The frame of a sheet under the sky of its site, trails drawn at its first setting. */
    public ExposedFrame(Ephemeris ephemeris, Sheet sheet) {
        this(ephemeris, sheet, sheet.first());
    }

    /** The same, trails drawn at one of its settings over what all of them make of the sky. */
    public ExposedFrame(Ephemeris ephemeris, Sheet sheet, Setting setting) {
        this.ephemeris = ephemeris;
        this.sheet = sheet;
        this.setting = setting;
        this.sky = new SkyMoments(new SkyLight(ephemeris, sheet.site()));
        this.layer = new Layer(sheet.film(), Band.ALL);
        TrailEstimator estimator = new TrailEstimator(ephemeris, sheet.site());
        this.panels = sheet.settings().stream().distinct().collect(
                Collectors.toMap(set -> set, set -> Fineness.of(set, estimator).panel()));
    }

    /** The sheet at the frame's centre. */
    public ExposedSheet centre() {
        return at(setting.framing().aim());
    }

    /**
     * The sheet that the picture is judged by, if the Moon is in it: away from the Moon, at the settings at
     * which it is in the frame.
     */
    public Optional<ExposedSheet> awayFromMoon() {
        Map<Setting, WideLight> away = new HashMap<>();
        sheet.settings().forEach(set -> AwayFromMoon.light(ephemeris, sheet.site(), set)
                .ifPresent(light -> away.put(set, light)));
        return away.isEmpty() ? Optional.empty() : Optional.of(under(setting.framing().aim(),
                away.getOrDefault(setting, sky), other -> away.getOrDefault(other, sky)));
    }

    /** The sheet where a direction falls on it, the lens's fall-off included. */
    public ExposedSheet at(Direction direction) {
        return under(direction, sky, other -> sky);
    }

    /** The same without the light of the Moon, which marks the sheet as glow and trail in one. */
    public ExposedSheet withoutMoonlight(Direction direction) {
        return under(direction, sky.moonless(), other -> sky);
    }

    private ExposedSheet under(Direction direction, WideLight light, Function<Setting, WideLight> elsewhere) {
        Interval longest = Interval.longest(setting.openings());
        double skyLx = setting.fallOff(direction) * PointProgress.illuminanceLx(setting, layer,
                light.from(direction).apply(longest.middle()));
        return new ExposedSheet(sheet.film(), setting.lens(), setting.fNumber(), longest.seconds(),
                progress(setting, direction, light) + progressElsewhere(direction, elsewhere), skyLx);
    }

    /**
     * What the other settings make of the sky at a point of the sheet; nothing where land stands before it.
     */
    private double progressElsewhere(Direction direction, Function<Setting, WideLight> light) {
        if (sheet.settings().size() == 1) {
            return 0;
        }
        return setting.framing().toFrame(direction).map(point -> sheet.settings().stream()
                .filter(other -> !other.equals(setting)).mapToDouble(other -> {
            Direction seen = other.framing().toSky(point.xMm(), point.yMm());
            boolean land = seen.altitude().compareTo(sheet.site().skyline().altitudeAt(seen.azimuth())) < 0;
            return land ? 0 : progress(other, seen, light.apply(other));
        }).sum()).orElse(0.0);
    }

    private double progress(Setting set, Direction direction, WideLight light) {
        return new PointProgress(set, List.of(layer), light, panels.get(set)).at(direction)[0];
    }

    /**
     * What something leaves on the sheet.
     *
     * @param records      whether its trail shows
     * @param stopsOverSky how many stops it stands over the sky around it, 0 or more
     * @param limitMag     faintest V magnitude of a star that leaves a visible trail there
     */
    public record Mark(boolean records, double stopsOverSky, double limitMag) {
    }

    /**
     * The mark of something, by the light and the losses half-way along its trail: the Moon's against a sky
     * without its own light.
     */
    public Mark mark(Passage passage, double magnitude, Angle semidiameter) {
        Direction there = halfWay(passage);
        ExposedSheet under = passage.target() == Body.MOON ? withoutMoonlight(there) : at(there);
        TrailLimit.Passing on = new TrailLimit.Passing(under, passage.speedMmS(), lossMag(there));
        return new Mark(TrailLimit.records(on, magnitude, semidiameter),
                TrailLimit.stopsOverSky(on, magnitude, semidiameter), TrailLimit.magnitude(on));
    }

    /** Faintest V magnitude of a star that leaves a visible trail on that way; negative infinity if none. */
    public double limitMag(Passage passage) {
        Direction there = halfWay(passage);
        return TrailLimit.magnitude(new TrailLimit.Passing(at(there), passage.speedMmS(), lossMag(there)));
    }

    private Direction halfWay(Passage passage) {
        return setting.framing().toSky(passage.middle().xMm(), passage.middle().yMm());
    }

    /** Light that something in a direction loses to the air and to the lens's fall-off, in magnitudes. */
    public double lossMag(Direction direction) {
        return lossMag(sheet.site(), setting, direction);
    }

    static double lossMag(Site site, Setting setting, Direction direction) {
        Angle offAxis = direction.to(setting.framing().aim());
        return Atmosphere.lossMag(site.extinctionMag(), direction.altitude())
                - 2.5 * Math.log10(Math.max(LEAST_SHARE,
                        offAxis.cos() * setting.lens().mountShare(offAxis, setting.fNumber())));
    }
}
