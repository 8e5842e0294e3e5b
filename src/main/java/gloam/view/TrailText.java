package gloam.view;

import gloam.answer.Trails;
import gloam.answer.TripodView;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Text of what runs across a framing. */
final class TrailText {

    /** Beyond so many of the frame's longer sides from its centre a place says nothing to anybody. */
    private static final double FAR_SIDES = 5;

    private static final int MOST_TRACKS = 20;

    private TrailText() {
    }

    static Document document(TrailReport report) {
        Document document = Document.named("Trails")
                .figure("the framing", made -> TrailDrawing.of(report, made))
                .figure("from behind the camera", made -> TripodDrawing.of(report, made)).add(part(report));
        return report.fromTripod() ? document.drawn(made -> TripodDrawing.of(report, made)) : document;
    }

    /** What of the sheet runs across it, as a part of other documents too. */
    static Document part(TrailReport report) {
        Document document = heading(report);
        document.gap();
        report.records().ifPresent(records -> {
            document.text(recorded(records, report.tracks().isEmpty()));
            document.gap();
        });
        if (!report.tracks().isEmpty()) {
            document.add(tracks(report));
            sayLeftOut(document, report.tracks());
            document.gap();
        } else if (report.records().isEmpty()) {
            document.under("nothing asked for comes into the frame").gap();
        }
        document.add(here(report));
        document.gap();
        document.text("mm on the sheet from the frame's centre, x to the right and y up as seen in "
                + "the scene; share of the frame's longer side; directions of motion at mid exposure from "
                + "right (0°) "
                + "through up (90°); sagitta: how far a trail bends from straight, in mm. A star that stands "
                + "in a corner half-way through draws there what falls on the sheet, or only touches it "
                + "(–).");
        return document;
    }

    /** Where, when and on what, as one paragraph. */
    static String circumstances(TrailReport report) {
        return heading(report).blocks().stream().map(block -> ((Block.Paragraph) block).text())
                .collect(Collectors.joining(" "));
    }

    private static Document heading(TrailReport report) {
        TrailReport.FrameRow frame = report.frame();
        Document document = Document.part();
        document.text("Azimuth " + Wording.plain(frame.azimuthDeg()) + "° "
                + Wording.bearing(frame.azimuthDeg())
                + ", altitude " + Wording.plain(frame.altitudeDeg()) + "°, roll "
                + Wording.plain(frame.rollDeg())
                + "°; " + Wording.plain(frame.focalLengthMm()) + " mm on "
                + Wording.size(frame.widthMm(), frame.heightMm())
                + (frame.projection().equals("rectilinear") ? "" : ", " + frame.projection())
                + (frame.airless() ? "; without refraction" : ""));
        document.text(times(frame) + " (" + Wording.lasting(frame.lastsS()) + ")");
        document.text("at " + SiteText.of(report.site()));
        report.sheet().ifPresent(sheet -> document.text(sheet(sheet)));
        document.text(pole(report.pole(), report.frame()));
        document.text(moon(report));
        report.view().aimStar().ifPresent(star -> document.text(aimStar(report, star)));
        return document;
    }

    /** When the shutter is open, each date given once. */
    private static String times(TrailReport.FrameRow frame) {
        List<Situation.Opening> openings = frame.openings().isEmpty()
                ? List.of(new Situation.Opening(frame.openAt(), frame.closeAt())) : frame.openings();
        StringJoiner times = new StringJoiner(", ");
        LocalDate told = LocalDate.MIN;
        for (Situation.Opening opening : openings) {
            LocalDate opened = Wording.secondDate(opening.openAt());
            LocalDate closed = Wording.secondDate(opening.closeAt());
            times.add((opened.equals(told) ? "" : Wording.date(opened) + " ")
                    + Wording.second(opening.openAt()) + " to "
                    + (closed.equals(opened) ? "" : Wording.date(closed) + " ")
                    + Wording.second(opening.closeAt()));
            told = closed;
        }
        return times.toString();
    }

    private static String minute(TrailReport.FrameRow frame, OffsetDateTime at) {
        return date(frame, at) + Wording.minute(at);
    }

    private static String date(TrailReport.FrameRow frame, OffsetDateTime at) {
        return frame.severalNights() ? Wording.date(Wording.secondDate(at)) + " " : "";
    }

    private static String sheet(TrailReport.TrailSheetRow sheet) {
        return FilmWords.name(sheet.film(), sheet.fittedToSheets()) + " at "
                + Wording.fNumber(sheet.fNumber()) + ": sky tone "
                + Wording.signed(sheet.skyToneStops(), 1) + " stops from the mid-tone"
                + (sheet.awayFromMoon() ? ", away from the Moon; " : "; ")
                + (sheet.trailLimitMag().isPresent() ? faintest(sheet) + ": magnitude "
                        + Wording.number(sheet.trailLimitMag().getAsDouble(), 1) : "no star leaves a trail");
    }

    private static String faintest(TrailReport.TrailSheetRow sheet) {
        String where = sheet.awayFromMoon() ? "there" : "at the centre";
        return sheet.starDeclinationDeg().isEmpty() ? "faintest star to leave a trail " + where
                : "stars at the centre, next to the pole, draw little more than points; faintest of "
                + "declination "
                        + Wording.number(sheet.starDeclinationDeg().getAsDouble(), 0) + "° to leave a trail";
    }

    private static String pole(TrailReport.PoleRow pole, TrailReport.FrameRow frame) {
        String name = "the " + pole.name() + " pole of the sky, altitude "
                + Wording.number(pole.altitudeDeg(), 1) + "°, ";
        if (pole.xMm().isEmpty()) {
            return name + "is behind the camera";
        }
        if (Math.hypot(pole.xMm().getAsDouble(), pole.yMm().orElseThrow())
                > FAR_SIDES * Math.max(frame.widthMm(), frame.heightMm())) {
            return name + "is far outside the frame";
        }
        return name + (pole.inFrame() ? "stands in the frame at x " : "falls beside the frame at x ")
                + Wording.number(pole.xMm().getAsDouble(), 1) + " mm, y "
                + Wording.number(pole.yMm().orElseThrow(), 1) + " mm" + (pole.longestArcMm().isEmpty() ? ""
                        : "; trails turn by " + Wording.number(pole.turnDeg(), 1)
                        + "° round it, the longest over "
                                + Wording.number(pole.longestArcMm().getAsDouble(), 1) + " mm");
    }

    private static String moon(TrailReport report) {
        return report.moon().inFrameAt().map(at -> at.isAfter(report.frame().openAt())
                        ? "the Moon enters the frame at " + minute(report.frame(), at)
                        : "the Moon stands in the frame when the shutter opens")
                .orElse("the Moon does not enter the frame before "
                        + minute(report.frame(), report.moon().lookedUntil().orElseThrow()));
    }

    /** Such as: at 21:00 the frame's centre is 6.2° of azimuth left of Alnilam and 2.0° above it. */
    static String aimStar(TrailReport report, TripodView.AimStar star) {
        String aside = Wording.number(Math.abs(star.centreAzimuthDeg()), 1);
        String higher = Wording.number(Math.abs(star.centreAltitudeDeg()), 1);
        return "to aim by: at " + Wording.minute(report.frame().openAt()) + " the frame's centre is " + aside
                + "° of azimuth " + (star.centreAzimuthDeg() < 0 ? "left" : "right") + " of " + star.name()
                + " and " + higher + "° " + (star.centreAltitudeDeg() < 0 ? "below" : "above") + " it";
    }

    /** Those of trails, the clearest first, that a table has room for. */
    static <T> List<T> listed(List<T> trails) {
        return trails.subList(0, Math.min(MOST_TRACKS, trails.size()));
    }

    /** Says under such a table how many it leaves out, if any. */
    static void sayLeftOut(Document document, List<?> trails) {
        if (trails.size() > MOST_TRACKS) {
            document.under("… and " + (trails.size() - MOST_TRACKS) + " fainter; ask for json to see all");
        }
    }

    static String recorded(Trails.Recorded records, boolean nothingInFrame) {
        String bodies = records.bodies().stream()
                .map(RequirementWords::name).collect(Collectors.joining(" and "));
        if (records.stars() == 0) {
            return records.bodies().isEmpty()
                    ? "Nothing will show: no trail" + (nothingInFrame ? "" : " in the frame")
                    + " marks this sheet."
                    : "Only " + bodies + " will show: no star in the frame marks this sheet.";
        }
        boolean one = records.stars() == 1
                && records.catalogue().filter(catalogue -> catalogue.fainterStars() > 0).isEmpty();
        String among = records.catalogue().map(catalogue -> StarWords.of(records.stars(),
                catalogue.starsSpread(), catalogue.crossingStars(), "stars", catalogue.toMag(),
                catalogue.fainterStars())).orElseGet(() -> Wording.count(records.stars(), "star"));
        return among + (one ? " marks this sheet: " : " mark this sheet, the brightest ")
                + records.brightestStar().orElseThrow()
                + (records.bodies().isEmpty() ? "" : "; so will " + bodies) + ".";
    }

    private static Table tracks(TrailReport report) {
        Table table = new Table(Table.words("trail of"), Table.numbers("", "mag"), Table.words("shows"),
                Table.numbers("", "stops").leaving(5), Table.words("from").leaving(6),
                Table.words("to").leaving(6),
                Table.numbers("", "mm"), Table.numbers("", "°").leaving(3), Table.numbers("share").leaving(2),
                Table.numbers("runs").leaving(7), Table.numbers("sagitta", "mm").leaving(1),
                Table.words("enters").leaving(4), Table.words("leaves").leaving(4));
        for (TrackRow track : listed(report.tracks())) {
            TrackRow.PointRow first = track.points().get(0);
            TrackRow.PointRow last = track.points().get(track.points().size() - 1);
            table.row(track.title(),
                    Wording.number(track.magnitude(), 1, ""),
                    track.records().map(Wording::yes).orElse(""),
                    track.stopsOverSky().isPresent() ? Wording.signed(track.stopsOverSky().getAsDouble(), 1)
                    : "", minute(report.frame(), first.at()), minute(report.frame(), last.at()),
                    Wording.number(track.lengthMm(), 2),
                    Wording.number(track.lengthDeg(), 1), Wording.number(track.frameShare(), 2),
                    Wording.direction(track.directionDeg()) + "°", Wording.number(track.sagittaMm(), 2),
                    track.entersOver().orElse(""), track.leavesOver().orElse(""));
            if (!track.gapsMm().isEmpty() && !report.frame().openings().isEmpty()) {
                table.note("gaps of " + track.gapsMm().stream().map(mm -> Wording.number(mm, 2))
                        .collect(Collectors.joining(", ")) + " mm");
            }
        }
        return table;
    }

    private static Table here(TrailReport report) {
        Table table = new Table(Table.words("a star here"), Table.numbers("x", "mm"),
                Table.numbers("y", "mm"),
                Table.numbers("length", "mm"), Table.numbers("", "mm an hour").leaving(3),
                Table.numbers("direction").leaving(2), Table.numbers("sagitta", "mm").leaving(1),
                Table.numbers("faintest", "mag").leaving(4));
        for (TrailReport.StarHereRow here : report.starsHere()) {
            table.row(Stream.of(here.where().replace('-', ' '), Wording.number(here.xMm(), 1),
                    Wording.number(here.yMm(), 1), here.point() ? "a point"
                    : Wording.number(here.lengthMm(), 2, "–"), Wording.number(here.speedMmH(), 2),
                    Wording.direction(here.directionDeg()) + "°", Wording.number(here.sagittaMm(), 2, "–"),
                    Wording.number(here.trailLimitMag(), 1, report.sheet().isEmpty() ? "" : "–"))
                    .toArray(String[]::new));
        }
        return table;
    }
}
