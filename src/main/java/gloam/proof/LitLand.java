package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.light.GroundLight;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Land that shows what it throws back of the light of Moon, twilight and sky, evenly and white. */
final class LitLand implements WideLight {

    private final GroundLight ground;
    private final double reflectance;
    private final Map<Instant, Glow> moments = new ConcurrentHashMap<>();

    LitLand(GroundLight ground, double reflectance) {
        this.ground = ground;
        this.reflectance = reflectance;
    }

    @Override
    public Function<Instant, Glow> from(Direction direction) {
        return at -> moments.computeIfAbsent(at, moment ->
                new Glow(ground.landscape(reflectance, moment).cdM2(), Double.NaN));
    }
}
