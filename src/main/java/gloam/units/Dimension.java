package gloam.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Kinds of quantity that do not mix, each with its units as people write them. */
enum Dimension {

    /** Lengths; inch and foot are the international ones of 1959. */
    LENGTH("mm", "um 0.001, µm 0.001, μm 0.001, mm 1, cm 10, in 25.4, ft 304.8, m 1000, km 1000000"),
    /** Lengths of time. */
    TIME("s", "s 1, sec 1, m 60, min 60, h 3600, d 86400"),
    /** Angles. */
    ANGLE("deg", "″ 1, '' 1, \" 1, s 1, arcsec 1, ′ 60, ' 60, m 60, arcmin 60, ° 3600, d 3600, deg 3600"),
    /** Ratios of light. */
    LIGHT("stops", "stops 1, stop 1"),
    /** Brightness and extinction of stars. */
    MAGNITUDE("mag", "mag 1"),
    /** Brightness of the sky. */
    SKY("mag/arcsec2", "mag/arcsec² 1, mag/arcsec2 1"),
    /** Temperatures. */
    TEMPERATURE("°C", "°C 1, C 1"),
    /** Plain numbers. */
    NUMBER("", "% 0.01");

    private final String usual;
    private final Map<String, BigDecimal> sizes;

    Dimension(String usual, String units) {
        this.usual = usual;
        this.sizes = Arrays.stream(units.split(", ")).filter(unit -> !unit.isEmpty())
                .map(unit -> unit.split(" "))
                .collect(Collectors.toMap(unit -> unit[0].toLowerCase(Locale.ROOT),
                unit -> new BigDecimal(unit[1]),
                        (one, other) -> one, LinkedHashMap::new));
    }

    /** The kind of quantity a unit measures; that of plain numbers where the unit only counts something. */
    static Dimension of(String unit) {
        return Arrays.stream(values()).filter(kind -> kind.usual.equals(unit)).findFirst().orElseGet(() ->
                Arrays.stream(values()).filter(kind -> kind.size(unit).isPresent()).findFirst()
                .orElse(NUMBER));
    }

    /** How large a unit is, in the smallest unit of this kind; empty for a unit of another kind. */
    Optional<BigDecimal> size(String unit) {
        return Optional.ofNullable(sizes.get(unit.toLowerCase(Locale.ROOT)));
    }

    /** The units, largest first, one name for each size. */
    List<String> units() {
        Map<BigDecimal, String> names = new LinkedHashMap<>();
        sizes.forEach((name, size) -> names.putIfAbsent(size, name));
        return names.entrySet().stream().sorted((one, other) -> other.getKey().compareTo(one.getKey()))
                .map(Map.Entry::getValue).toList();
    }
}
