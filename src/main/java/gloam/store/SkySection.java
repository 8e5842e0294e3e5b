package gloam.store;

import gloam.gear.LightDome;
import gloam.gear.LightDome.Measured;
import gloam.gear.LightDome.Town;
import gloam.gear.SkyReading;
import gloam.gear.Skyline;
import gloam.units.Angle;
import gloam.units.Range;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Supplier;

/** Reads what is known of the sky over a site: the towns around it and measurements. */
final class SkySection {

    private static final Range READINGS = new Range("number of measurements", 0, 100, "");
    private static final Range DOMES = new Range("number of towns", 0, 30, "");

    private SkySection() {
    }

    /** The towns in a list. */
    static List<LightDome> domes(Item item) {
        return item.list(DOMES, SkySection::dome);
    }

    /** The measurements in a list, their times by the clocks of a zone. */
    static List<SkyReading> readings(Item item, Value<ZoneId> zone) {
        return item.list(READINGS, reading -> reading(reading, zone));
    }

    private static SkyReading reading(Item item, Value<ZoneId> zone) {
        Fields fields = item.fields();
        Value<Instant> at = fields.required("at", value -> ItemTimes.instant(value, zone.get()));
        Value<Double> azimuthDeg = fields.numberOr("azimuth-deg", 0, Skyline.AZIMUTH);
        Value<Double> altitudeDeg = fields.numberOr("altitude-deg", 90, SkyReading.ALTITUDE);
        Value<Double> magArcsec2 = fields.number("mag-arcsec2", SkyReading.BRIGHTNESS);
        Value<Double> spreadMag = fields.numberOr("error-mag",
                SkyReading.USUAL_SPREAD_MAG, SkyReading.SPREAD);
        fields.noOthers();
        return new SkyReading(at.get(), Angle.ofDegrees(azimuthDeg.get()), Angle.ofDegrees(altitudeDeg.get()),
                magArcsec2.get(), spreadMag.get());
    }

    private static LightDome dome(Item item) {
        Fields fields = item.fields();
        Value<Double> azimuthDeg = fields.number("azimuth-deg", Skyline.AZIMUTH);
        boolean measured = fields.has("altitude-deg") || fields.has("mag-arcsec2");
        Supplier<LightDome.Known> known = measured ? measured(fields) : town(fields);
        Value<Double> colourK = fields.numberOr("colour-k", LightDome.USUAL_COLOUR_K, LightDome.COLOUR);
        fields.noOthers();
        return new LightDome(Angle.ofDegrees(azimuthDeg.get()), known.get(), colourK.get());
    }

    private static Supplier<LightDome.Known> town(Fields fields) {
        Value<Double> people = fields.number("people", Town.PEOPLE);
        Value<Double> distanceKm = fields.number("distance-km", Town.DISTANCE);
        return () -> new Town(people.get(), distanceKm.get());
    }

    private static Supplier<LightDome.Known> measured(Fields fields) {
        Value<Double> altitudeDeg = fields.number("altitude-deg", Measured.ALTITUDE);
        Value<Double> magArcsec2 = fields.number("mag-arcsec2", Measured.BRIGHTNESS);
        List.of("people", "distance-km").forEach(key -> fields.refuse(key,
                "stands beside a measured glow; keep one of the two"));
        return () -> new Measured(Angle.ofDegrees(altitudeDeg.get()), magArcsec2.get());
    }
}
