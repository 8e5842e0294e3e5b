package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.trail.Framing;
import gloam.units.Angle;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** What the values of answers become in JSON. */
class CutValuesTest {

    private record Values(Angle separation, Optional<Angle> turn, Optional<Angle> roll,
            List<FNumber> fNumbers,
                          OptionalDouble exposureS, OptionalDouble meteredS, Instant at,
                          Optional<Instant> closeAt, Body body, Direction seen, Framing.Point point) {
    }

    @Test
    void everyValueHasItsOneForm() {
        Values values = new Values(Angle.ofDegrees(1.23456789), Optional.of(Angle.ofDegrees(-0.5)),
                Optional.empty(),
                List.of(FNumber.marked(11), FNumber.marked(16)), OptionalDouble.of(1234.5678),
                OptionalDouble.empty(),
                Instant.parse("2027-02-08T23:59:59.9996Z"), Optional.empty(), Body.MARS,
                Direction.ofDegrees(359.999999, 30), new Framing.Point(-40, 12.34567));
        String json = JsonRenderer.mapper().writer().withAttribute(CutValues.ZONE, ZoneId.of("Asia/Kolkata"))
                .writeValueAsString(values);
        assertEquals(JsonMapper.shared().readTree("""
                {"separationDeg": 1.23457, "turnDeg": -0.5, "rollDeg": null, "fNumbers": [11, 16],
                 "exposureS": 1234.6, "meteredS": null, "at": "2027-02-09T05:30:00.0+05:30", "closeAt": null,
                 "body": "mars", "azimuthDeg": 0, "altitudeDeg": 30, "xMm": -40, "yMm": 12.3457}
                """), JsonMapper.shared().readTree(json));
    }
}
