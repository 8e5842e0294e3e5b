package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.light.LightSource;
import gloam.light.SkyLight;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** The sky's light, Sun and Moon looked up once for each instant. */
final class SkyMoments implements WideLight {

    private static final long NEAREST_S = 60;

    private final SkyLight sky;
    private final Map<Instant, SkyLight.Moment> moments = new ConcurrentHashMap<>();

    SkyMoments(SkyLight sky) {
        this.sky = sky;
    }

    @Override
    public Function<Instant, Glow> from(Direction direction) {
        SkyLight.Patch patch = sky.patch(direction);
        return at -> glow(moment(at).at(patch));
    }

    static Glow glow(SkyLight.Sample sample) {
        return new Glow(sample.total().cdM2(), sample.colourBv());
    }

    /** The same light without that of the Moon, its colour left open. */
    WideLight moonless() {
        return direction -> {
            SkyLight.Patch patch = sky.patch(direction);
            return at -> new Glow(moment(at).at(patch).without(LightSource.MOON).cdM2(), Double.NaN);
        };
    }

    private SkyLight.Moment moment(Instant at) {
        SkyLight.Moment known = moments.get(at);
        return known != null ? known : moments.computeIfAbsent(at, sky::moment);
    }

    /** The same at the full minute nearest to an instant. */
    Glow near(Direction direction, Instant at) {
        return from(direction).apply(Instant.ofEpochSecond(
                Math.floorDiv(at.getEpochSecond() + NEAREST_S / 2, NEAREST_S) * NEAREST_S));
    }
}
