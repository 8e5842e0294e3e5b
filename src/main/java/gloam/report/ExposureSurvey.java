package gloam.report;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.exposure.ExposureTable;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.FilmPlane;
import gloam.exposure.SkyOnFilm;
import gloam.film.FilmStock;
import gloam.gear.FNumbers;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.planner.Preview;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;

/** Sets all f-numbers of a lens side by side under one sky. */
public final class ExposureSurvey {

    /** Where nothing is said of the aim, stars are taken half-way up, on the equator, through clear air at sea level. */
    private static final Angle USUAL_ALTITUDE = Angle.ofDegrees(45);
    private static final double USUAL_DECLINATION_DEG = 0;

    private final Supplier<Ephemeris> ephemeris;
    private final FilmStock film;
    private final Lens lens;
    private final KnownSky sky;

    /** A survey; the ephemeris is asked for only when the sky is to be computed. */
    public ExposureSurvey(Supplier<Ephemeris> ephemeris, FilmStock film, Lens lens, KnownSky sky) {
        this.ephemeris = ephemeris;
        this.film = film;
        this.lens = lens;
        this.sky = sky;
    }

    /** The times to a tone of the sky in stops from the mid-tone. */
    public ExposureReport toTone(double toneStops, Instant now) {
        ExposureTable table = table();
        return report(now, OptionalDouble.of(toneStops), OptionalDouble.empty(),
                lens.fNumbers().stream().map(fNumber -> table.toTone(fNumber, toneStops)).toList());
    }

    /**
     * The tones after a time.
     *
     * @throws BadInput when the shutter would still be open at dawn
     */
    public ExposureReport after(Duration lasts, Instant now) {
        ExposureTable table = table();
        table.sky().usable().filter(usable -> lasts.compareTo(usable.lasts()) > 0).ifPresent(usable -> {
            throw new BadInput("the shutter would still be open at dawn; the night lasts another "
                    + Wording.lasting(usable.seconds()) + ". Shorten the exposure (--lasts)");
        });
        return report(now, OptionalDouble.empty(), OptionalDouble.of(lasts.toNanos() * 1e-9),
                lens.fNumbers().stream().map(fNumber -> table.after(fNumber, lasts)).toList());
    }

    private ExposureTable table() {
        return new ExposureTable(film, lens, onFilm(), PassingStars.of(lens, declinationDeg(), lossMag()));
    }

    private SkyOnFilm onFilm() {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return SkyOnFilm.ofFrame(film, lens, frame.fNumber(), frame.iso(), frame.exposure());
        }
        if (sky instanceof KnownSky.Computed computed && !computed.steady()) {
            return SkyOnFilm.changing(lens, light(computed), usable(computed));
        }
        return SkyOnFilm.steady(lens, atOpening());
    }

    private SkyBrightness atOpening() {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return FilmPlane.luminanceOfFrame(frame.fNumber(), frame.iso(), frame.exposure().toNanos() * 1e-9);
        }
        if (sky instanceof KnownSky.Computed computed) {
            return light(computed).apply(computed.openAt());
        }
        return ((KnownSky.Measured) sky).brightness();
    }

    private Function<Instant, SkyBrightness> light(KnownSky.Computed computed) {
        SkyLight light = new SkyLight(ephemeris.get(), computed.site());
        return at -> light.at(computed.aim(), at).total();
    }

    /** From opening to the end of the night's darkness; to sunrise when that is over or never comes. */
    private Interval usable(KnownSky.Computed computed) {
        Instant openAt = computed.openAt();
        Site site = computed.site();
        LocalDate evening = openAt.minus(Duration.ofHours(12)).atZone(site.zone()).toLocalDate();
        Night night = Night.of(ephemeris.get(), site, evening);
        Interval down = night.sunDown().stream().filter(span -> span.contains(openAt)).findFirst()
                .orElseThrow(() -> new BadInput("the Sun is up at " + openAt.atZone(site.zone()).toLocalDateTime()
                        + "; open the shutter after sunset"));
        Instant until = night.darkness().stream().map(Interval::endExclusive).filter(openAt::isBefore)
                .reduce((first, second) -> second).orElse(down.endExclusive());
        return new Interval(openAt, until);
    }

    /** Declination of the star at the frame's centre: spherical triangle of pole, zenith and star. */
    private double declinationDeg() {
        return computed().map(known -> {
            Direction aim = known.aim();
            Angle latitude = known.site().latitude();
            return Math.toDegrees(Math.asin(latitude.sin() * aim.altitude().sin()
                    + latitude.cos() * aim.altitude().cos() * aim.azimuth().cos()));
        }).orElse(USUAL_DECLINATION_DEG);
    }

    private double lossMag() {
        return computed().map(known -> known.site().extinctionMag() * Atmosphere.airmass(known.aim().altitude()))
                .orElse(Atmosphere.clearExtinctionMag(0) * Atmosphere.airmass(USUAL_ALTITUDE));
    }

    private Optional<KnownSky.Computed> computed() {
        return sky instanceof KnownSky.Computed known ? Optional.of(known) : Optional.empty();
    }

    private ExposureReport report(Instant now, OptionalDouble toneStops, OptionalDouble lastsS,
                                  List<ExposureTable.Row> rows) {
        ZoneId zone = computed().map(known -> known.site().zone()).orElse(ZoneOffset.UTC);
        SiteClock clock = new SiteClock(zone);
        SkyBrightness opening = atOpening();
        Situation situation = new Situation(source(), Rounding.mag(opening.magArcsec2()),
                Rounding.light(opening.cdM2()), film.name(), film.iso(), lens.focalLengthMm(),
                toneStops, lastsS, computed().map(known -> Place.of(known.site())),
                computed().map(known -> clock.asked(known.openAt())),
                optional(known -> Rounding.azimuthDeg(known.aim().azimuth())),
                optional(known -> Rounding.positionDeg(known.aim().altitude())),
                Rounding.decimals(declinationDeg(), 2), Rounding.mag(lossMag()));
        return ExposureReport.of(clock.asked(now), situation, rows);
    }

    private OptionalDouble optional(Function<KnownSky.Computed, Double> value) {
        return computed().map(known -> OptionalDouble.of(value.apply(known))).orElse(OptionalDouble.empty());
    }

    private String source() {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return "preview frame " + Wording.fNumber(FNumbers.marking(frame.fNumber())) + ", ISO "
                    + Wording.plain(frame.iso()) + ", " + Wording.plain(frame.exposure().toNanos() * 1e-9) + " s";
        }
        return computed().map(known -> known.steady() ? "computed sky, taken as steady" : "computed sky as it changes")
                .orElse("measured sky");
    }
}
