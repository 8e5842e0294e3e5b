package gloam.view;

import gloam.gear.FNumber;
import gloam.planner.Plan;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;

/** One of the openings of a sheet: when the shutter is open and how the camera is set. */
public record SheetOpeningRow(OffsetDateTime openAt, OffsetDateTime closeAt, double azimuthDeg,
        double altitudeDeg, double rollDeg, double fNumber) {

    /** The openings of a window, in order of time. */
    static List<SheetOpeningRow> of(Plan.Window window, SiteClock clock) {
        Stream<SheetOpeningRow> later = window.later().stream().map(setting -> of(setting, clock));
        return Stream.concat(Stream.of(new SheetOpeningRow(clock.at(window.open().start()),
                clock.at(window.open().endExclusive()), window.aim().azimuth().degrees(),
                window.aim().altitude().degrees(), window.wish().aim().roll().degrees(),
                window.fNumber().marked())), later).toList();
    }

    private static SheetOpeningRow of(Setting setting, SiteClock clock) {
        Framing framing = setting.framing();
        Interval open = setting.whole();
        FNumber fNumber = setting.fNumber();
        return new SheetOpeningRow(clock.at(open.start()), clock.at(open.endExclusive()),
                framing.aim().azimuth().degrees(), framing.aim().altitude().degrees(),
                framing.roll().degrees(), fNumber.marked());
    }

    /** Such as "20:30–21:30 at f/8, N 0.0°, 41.0° high, roll 0.0°". */
    private String words(NightTimes times) {
        return times.opens(openAt.toInstant()) + "–" + times.closes(closeAt.toInstant()) + " at "
                + Wording.fNumber(fNumber) + ", " + Wording.bearing(azimuthDeg) + " "
                + Wording.direction(azimuthDeg) + "°, " + Wording.number(altitudeDeg, 1) + "° high, roll "
                + Wording.number(rollDeg, 1) + "°";
    }

    /** How the times of a window are to be kept, in sentences without their full stops. */
    static List<String> times(PlanReport.WindowRow window, NightTimes times) {
        return window.openings().size() == 1
                ? List.of(window.slack().words(times), window.slack().lateWords(times))
                : Stream.concat(Stream.of(window.openings().size()
                + " openings on this sheet, keep all times"),
                window.openings().stream().map(opening -> opening.words(times))).toList();
    }
}
