package gloam.view;

/** Text of a place. */
final class SiteText {

    private SiteText() {
    }

    static String of(SiteRow place) {
        String coordinates = coordinates(place);
        String name = place.name().equals(coordinates) ? "" : place.name() + ", ";
        return name + coordinates + ", " + Wording.plain(place.heightM()) + " m (times in " + place.zone() + ")";
    }

    private static String coordinates(SiteRow place) {
        return Wording.number(Math.abs(place.latitudeDeg()), 4) + "° " + (place.latitudeDeg() < 0 ? "S" : "N") + " "
                + Wording.number(Math.abs(place.longitudeDeg()), 4) + "° " + (place.longitudeDeg() < 0 ? "W" : "E");
    }
}
