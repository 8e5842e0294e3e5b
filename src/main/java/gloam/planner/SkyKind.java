package gloam.planner;

import gloam.ephemeris.Night;
import gloam.light.SkyLight;
import gloam.planner.Condition.When;
import gloam.planner.Preference.Light;
import gloam.units.Interval;
import java.util.List;
import java.util.function.Function;

/** The kind of sky a picture wants: what it requires and when, the light preferred, how long it lasts. */
public enum SkyKind {
    /** Sun below -18° and moonlight adding less than 0.2 mag at the aim. */
    DARK(List.of(Part.DARK, Part.NO_MOONLIGHT), When.AT_MIDDLE, Light.LESS, Night::darkness),
    /** Sun below -18° and the Moon up. */
    MOONLIT(List.of(Part.DARK, Part.MOON_UP), When.AT_MIDDLE, Light.MORE, Night::darkness),
    /** Opens in evening twilight, Sun between -3° and -18°, and may run on into the night. */
    DUSK(List.of(Part.DUSK), When.AT_OPENING, Light.ANY, Night::sunDown),
    /** Closes in morning twilight, Sun between -18° and -3°, and may have begun in the night. */
    DAWN(List.of(Part.DAWN), When.AT_CLOSING, Light.ANY, Night::sunDown),
    /** Anything while the Sun is down. */
    ANY(List.of(), When.AT_MIDDLE, Light.ANY, Night::sunDown);

    private final List<Part> parts;
    private final When moment;
    private final Light light;
    private final Function<Night, List<Interval>> spans;

    SkyKind(List<Part> parts, When moment, Light light, Function<Night, List<Interval>> spans) {
        this.parts = parts;
        this.moment = moment;
        this.light = light;
        this.spans = spans;
    }

    /** The conditions that it makes for what the camera looks at in a night. */
    List<Condition> conditions(NightSky sky, Aiming aiming) {
        return parts.stream().map(part -> part.making.of(new Requirement.OfSky(part), sky, aiming)).toList();
    }

    /** The moment of an exposure at which its twilight counts. */
    When moment() {
        return moment;
    }

    /** The light preferred under it. */
    Light light() {
        return light;
    }

    /** When it is there in a night, of which a window shows the one it stands in. */
    List<Interval> spans(Night night) {
        return spans.apply(night);
    }

    /** Whether it asks for one end of an exposure, by which the exposure is then limited. */
    public boolean limits(DurationLimit end) {
        return !parts.isEmpty() && DurationLimit.of(moment) == end;
    }

    /** What kinds of sky require. */
    public enum Part {
        /** The Sun is below -18°. */
        DARK((what, sky, aiming) -> Condition.during(what, sky.clock(), sky.night().darkness())),
        /** Moonlight adds less than 0.2 mag at the aim. */
        NO_MOONLIGHT((what, sky, aiming) -> Condition.where(what, When.THROUGHOUT, sky.clock(),
                minute -> SkyLight.DARK_MOONLIGHT_MAG - aiming.light(minute).moonlightMag())),
        /** The Moon is above the horizon. */
        MOON_UP((what, sky, aiming) -> Condition.during(what, sky.clock(), sky.night().moonUp())),
        /** Evening twilight, Sun between -3° and -18°. */
        DUSK((what, sky, aiming) -> Condition.at(what, When.AT_OPENING, sky.dusk())),
        /** Morning twilight, Sun between -18° and -3°. */
        DAWN((what, sky, aiming) -> Condition.at(what, When.AT_CLOSING, sky.dawn()));

        private final Making making;

        Part(Making making) {
            this.making = making;
        }
    }

    /** Makes a requirement's condition. */
    private interface Making {

        Condition of(Requirement what, NightSky sky, Aiming aiming);
    }
}
