package gloam.store;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.journal.Opening;
import gloam.journal.SheetLight;
import gloam.light.SkyBrightness;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.annotation.JsonNaming;

/**
 * An opening of the shutter with the luminance of the sky, and with an aim and f-number of its own where
 * they are not those of the sheet; the first form had the light on the film in the sky's place, which
 * hangs on the lens.
 */
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalOpening(Instant open, Instant close,
        @JsonSetter(nulls = Nulls.AS_EMPTY) @JsonInclude(JsonInclude.Include.NON_EMPTY)
        List<Double> filmLx,
        @JsonSetter(nulls = Nulls.AS_EMPTY) @JsonInclude(JsonInclude.Include.NON_EMPTY)
        List<BigDecimal> skyCdM2, Optional<BigDecimal> azimuthDeg, Optional<BigDecimal> altitudeDeg,
        Optional<BigDecimal> fNumber) {

    private static final MathContext SKY_DIGITS = new MathContext(7, RoundingMode.HALF_EVEN);
    private static final double MEASURED_STEPS_MAG = 0.01;

    /** Refuses what does not close after it opens, or has two kinds of light or none. */
    JournalOpening {
        if (!open.isBefore(close)) {
            throw new BadInput("closes at " + close + ", not after it opens. Put the two in order.");
        }
        if (filmLx.isEmpty() == skyCdM2.isEmpty()) {
            throw new BadInput("needs one of sky-cd-m2 and film-lx. Keep one of the two.");
        }
        Opening.SAMPLES.check(Math.max(filmLx.size(), skyCdM2.size()));
        JournalLine.checkAim(azimuthDeg, altitudeDeg);
        fNumber.ifPresent(own -> FNumber.RANGE.check(own.doubleValue()));
    }

    /** An opening through a lens. */
    static JournalOpening of(Opening opening, Lens lens) {
        return new JournalOpening(opening.open().start(), opening.open().endExclusive(),
                List.of(), SheetLight.skyCdM2(opening, lens).stream().map(JournalOpening::digits).toList(),
                opening.aim().map(JournalLine::azimuth), opening.aim().map(JournalLine::altitude),
                opening.fNumber().map(own -> JournalLine.cut(own.marked(), 4)));
    }

    private static BigDecimal digits(double cdM2) {
        return new BigDecimal(cdM2).round(SKY_DIGITS).stripTrailingZeros();
    }

    /** The opening of a sheet with that lens. */
    Opening opening(Lens lens) {
        Interval span = new Interval(open, close);
        Optional<FNumber> own = fNumber.map(marked -> FNumber.marked(marked.doubleValue()));
        return (skyCdM2.isEmpty() ? new Opening(span, filmLx)
                : SheetLight.under(skyCdM2.stream().map(BigDecimal::doubleValue).toList(),
                        own.map(at -> lens.with(List.of(at))).orElse(lens), span))
                .set(JournalLine.aim(azimuthDeg, altitudeDeg), own);
    }

    /** What it says: its computed light follows from the rest. */
    JournalOpening saying(boolean measured) {
        return new JournalOpening(open, close, List.of(), measured
                ? skyCdM2.stream().map(JournalOpening::steps).toList() : List.of(BigDecimal.ONE),
                azimuthDeg, altitudeDeg, fNumber);
    }

    private static BigDecimal steps(BigDecimal cdM2) {
        return BigDecimal.valueOf(Math.round(new SkyBrightness(cdM2.doubleValue()).magArcsec2()
                / MEASURED_STEPS_MAG));
    }
}
