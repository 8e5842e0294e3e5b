package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.SkyMap;
import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * How bright the whole sky of a site is at an instant.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param at          the instant
 * @param moon        where the Moon stands
 * @param cells       the sky in cells of 10° of azimuth and 5° of altitude, from north through east, lowest
 *                    first
 * @param skyline     the terrain every 5° of azimuth, from north through east
 */
public record SkyMapReport(OffsetDateTime generatedAt, Site site, OffsetDateTime at, MoonPlace moon,
                           List<CellRow> cells, @JsonIgnore List<Direction> skyline) implements Report {

    private static final List<Integer> AZIMUTHS_DEG = List.of(0, 45, 90, 135, 180, 225, 270, 315);
    private static final List<Integer> ALTITUDES_DEG = List.of(85, 60, 45, 30, 20, 10, 5);
    private static final int SKYLINE_STEP_DEG = 5;

    /** Reports the sky over a site. */
    public static SkyMapReport of(SkyMap map, Instant now) {
        SiteClock clock = new SiteClock(map.site().zone());
        return new SkyMapReport(clock.at(now), map.site(), clock.at(map.at()),
                new MoonPlace(map.moon().apparentDirection().azimuth().degrees(),
                map.moon().apparentDirection().altitude().degrees()),
                map.cells().stream().map(CellRow::of).toList(),
                IntStream.range(0, 360 / SKYLINE_STEP_DEG).mapToObj(step -> {
                    Direction level = Direction.ofDegrees(step * SKYLINE_STEP_DEG, 0);
                    return new Direction(level.azimuth(), map.site().skyline().altitudeAt(level.azimuth()));
                }).toList());
    }

    @Override
    public Document document() {
        Document document = Document.headed("Brightness of the sky, " + Wording.date(at().toLocalDate()) + " "
                + Wording.minute(at()) + " (" + Wording.offset(at()) + ")");
        document.text("at " + SiteText.of(site()));
        document.figure("the whole sky", made -> SkyMapDrawing.of(this, made));
        document.gap();
        Table.Column[] columns = new Table.Column[AZIMUTHS_DEG.size() + 1];
        columns[0] = Table.numbers("altitude", "°");
        for (int i = 0; i < AZIMUTHS_DEG.size(); i++) {
            columns[i + 1] = Table.numbers(Wording.bearing(AZIMUTHS_DEG.get(i)));
        }
        Table table = new Table(columns);
        for (int altitudeDeg : ALTITUDES_DEG) {
            String[] cells = new String[columns.length];
            cells[0] = String.valueOf(altitudeDeg);
            for (int i = 0; i < AZIMUTHS_DEG.size(); i++) {
                cells[i + 1] = words(nearest(AZIMUTHS_DEG.get(i), altitudeDeg));
            }
            table.row(cells);
        }
        document.add(table);
        document.gap();
        document.text("In V mag/arcsec², smaller is brighter; each for the cell of 10° by 5° that lies "
                + "there. A dash is land.");
        document.add(new Block.Hint("The map itself is in svg and html."));
        return document;
    }

    private CellRow nearest(double azimuthDeg, double altitudeDeg) {
        int column = (int) (azimuthDeg / SkyMap.ACROSS_DEG);
        int rows = 90 / SkyMap.UP_DEG;
        return cells().get(column * rows + Math.min(rows - 1, (int) (altitudeDeg / SkyMap.UP_DEG)));
    }

    private static String words(CellRow cell) {
        return cell.magArcsec2().isPresent() ? Wording.number(cell.magArcsec2().getAsDouble(), 1) : "-";
    }

    /** Where the Moon stands, in degrees, with refraction. */
    public record MoonPlace(double azimuthDeg, double altitudeDeg) {
    }

    /**
     * A cell of the sky by its middle.
     *
     * @param azimuthDeg  azimuth
     * @param altitudeDeg altitude
     * @param magArcsec2  brightness of the sky there; absent where land stands before it
     */
    public record CellRow(double azimuthDeg, double altitudeDeg, OptionalDouble magArcsec2) {

        static CellRow of(SkyMap.Cell cell) {
            return new CellRow(cell.direction().azimuth().degrees(), cell.direction().altitude().degrees(),
                    cell.land() ? OptionalDouble.empty()
                    : OptionalDouble.of(cell.light().total().magArcsec2()));
        }
    }
}
