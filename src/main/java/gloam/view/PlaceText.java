package gloam.view;

/** Text of a place. */
final class PlaceText {

    private PlaceText() {
    }

    static String of(Place place) {
        String coordinates = coordinates(place);
        String name = place.name().equals(coordinates) ? "" : place.name() + ", ";
        return name + coordinates + ", " + Wording.plain(place.heightM()) + " m (times in " + place.zone() + ")";
    }

    private static String coordinates(Place place) {
        return Wording.number(Math.abs(place.latitudeDeg()), 4) + "° " + (place.latitudeDeg() < 0 ? "S" : "N") + " "
                + Wording.number(Math.abs(place.longitudeDeg()), 4) + "° " + (place.longitudeDeg() < 0 ? "W" : "E");
    }
}
