package gloam.store;

import gloam.gear.Skyline;
import java.util.List;

/**
 * Reads the terrain around a site from a CSV file of {@code azimuth_deg,altitude_deg} points in degrees, in
 * any order.
 */
final class SkylineFile {

    private static final List<String> HEADER = List.of("azimuth_deg", "altitude_deg");

    private SkylineFile() {
    }

    /** The skyline in a file named at an item. */
    static Skyline named(Item item) {
        return new Skyline(Csv.read(Source.named(item), HEADER, SkylineFile::point));
    }

    private static Skyline.Point point(List<Item> cells) {
        Value<Double> azimuthDeg = cells.get(0).value(cell -> cell.number(Skyline.AZIMUTH));
        Value<Double> altitudeDeg = cells.get(1).value(cell -> cell.number(Skyline.ALTITUDE));
        return new Skyline.Point(azimuthDeg.get(), altitudeDeg.get());
    }
}
