package gloam.store;

import gloam.gear.Skyline;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads the terrain around a site from a CSV file of {@code azimuth_deg,altitude_deg} points in degrees, in
 * any order.
 */
public final class SkylineFile {

    private static final List<String> HEADER = List.of("azimuth_deg", "altitude_deg");

    private SkylineFile() {
    }

    /** Reads a skyline; throws one {@link gloam.units.BadInput} with all its errors. */
    public static Skyline read(Path file) {
        Findings findings = new Findings();
        return findings.result(() -> skyline(Source.of(file, findings)));
    }

    /** The skyline in a file named at an item. */
    static Skyline named(Item item) {
        return skyline(Source.named(item));
    }

    private static Skyline skyline(Source source) {
        return new Skyline(Csv.read(source, HEADER, SkylineFile::point));
    }

    private static Skyline.Point point(List<Item> cells) {
        Value<Double> azimuthDeg = cells.get(0).value(cell -> cell.number(Skyline.AZIMUTH));
        Value<Double> altitudeDeg = cells.get(1).value(cell -> cell.number(Skyline.ALTITUDE));
        return new Skyline.Point(azimuthDeg.get(), altitudeDeg.get());
    }
}
