package gloam.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * Valid questions at the edges of what may be asked: poles, fisheyes, pinholes, whole nights, skipped days.
 */
final class FuzzEdges {

    static final List<String> ZONES = List.of("UTC", "Europe/Madrid", "Pacific/Apia", "Pacific/Kiritimati",
            "Asia/Kathmandu", "Australia/Lord_Howe", "America/St_Johns", "+18:00", "-18:00",
            "Africa/Casablanca", "America/Santiago");
    /** First and last days covered, a day that a zone left out, changes of clocks, solstices. */
    private static final List<String> DATES = List.of("2000-01-01", "2000-01-02", "2059-12-31", "2059-12-30",
            "2011-12-29", "2011-12-30", "2027-03-28", "2027-03-27", "2027-10-30", "2027-10-31", "2027-06-21",
            "2027-12-20", "2027-02-08");
    private static final List<String> FILMS = List.of("instant-mono-640", "instant-colour-125",
            "negative-slow-25",
            "negative-classic-100", "digital-640");
    private static final List<String> TARGETS = List.of("mars", "moon", "venus", "neptune", "Vega", "Polaris",
            "0,90", "83.6,-5.4");
    private static final List<String> LONG = List.of("5h", "7h", "9h", "12h", "13h", "16h", "23h56m", "24h");

    private final RandomGenerator random;
    private final List<String> args = new ArrayList<>();

    FuzzEdges(RandomGenerator random) {
        this.random = random;
    }

    /** What a question is about. */
    enum Kind { SKY, EXPOSE, TRAIL, PROOF, JOURNAL }

    static FuzzCase of(Kind kind, RandomGenerator random) {
        return new FuzzEdges(random).drawn(kind);
    }

    private FuzzCase drawn(Kind kind) {
        switch (kind) {
            case SKY -> sky();
            case EXPOSE -> expose();
            case TRAIL -> trail();
            case PROOF -> proof();
            default -> journal();
        }
        if (kind != Kind.JOURNAL) {
            output(kind);
        }
        boolean journal = kind == Kind.JOURNAL;
        return new FuzzCase(args, journal ? Map.of("journal.jsonl",
                FuzzFiles.soundTrip().get("journal.jsonl"))
                : Map.of("old.txt", FuzzFiles.bytes("as it was"), "old.json", FuzzFiles.bytes("{}")), false);
    }

    private void sky() {
        String first = date();
        String to = LocalDate.parse(first).plusDays(random.nextInt(4)).toString();
        switch (random.nextInt(5)) {
            case 0 -> add("sky --night " + first);
            case 1 -> add("sky --at " + instant() + " --star 0,90 --star 101.3,-16.7,-546,-1223,379");
            case 2 -> add("sky --above " + one(TARGETS) + " --altitude " + altitude() + " --from " + first
                    + " --to " + to);
            case 3 -> add("sky --approaches " + one("0.1", "5", "180") + " --from " + first + " --to " + to);
            default -> add("nights --from " + first + " --to " + to);
        }
        site();
    }

    private void expose() {
        add("expose --film " + one(FILMS));
        switch (random.nextInt(4)) {
            case 0 -> add("--preview-f-number " + one("0.7", "2", "8", "128", "512") + " --preview-iso "
                    + one("0.1", "640", "1000000")
                    + " --preview-exposure " + one("0.001s", "30s", "24h"));
            case 1 -> add("--sky-mag-arcsec2 " + one("0", "4", "21", "23"));
            default -> {
                add((random.nextBoolean() ? "--at " : "--from ") + instant());
                site();
                add(random.nextInt(3) == 0 ? pole() : "--azimuth " + azimuth() + " --altitude " + altitude());
            }
        }
        maybe("--lasts " + one("0.001s", "0.4s", "0.5s", "1.5s", "59.6s", "2h", "24h", "240h"));
        maybe("--tone " + one("-12", "-1", "0", "6"));
        maybe("--f-number " + one("0.7", "8,11", "f/16", "200", "512"));
        maybe("--focal-length " + one("5", "150", "2000"));
        maybe("--sheets " + one("1", "3", "9"));
        maybe("--ground " + one("0.01", "18%", "1"));
        maybe("--spot " + one("1", "1000"));
        maybe("--filter " + one("0", "20"));
        maybe("--transmittance " + one("0.2", "1"));
        maybe("--least-difference " + one("0.005", "1"));
    }

    private void trail() {
        add("trail");
        site();
        camera();
        if (random.nextInt(6) == 0) {
            add("--level " + one("mars", "moon", "jupiter", "neptune") + " --from " + date() + " --within "
                    + one("1", "30", "90"));
            maybe("--slope " + one("-90", "45", "90"));
        } else if (random.nextInt(3) > 0) {
            shot(LONG);
            add("--every 30m --star " + one("83.8,-1.2", "0,90", "180,-90", "213.9,19.2,-1093,-2000,88.8",
                    "279.2,38.8"));
        } else {
            shot(List.of("0.001s", "1s", "59.6s", "20m", "2h"));
        }
        maybe("--film " + one(FILMS) + " --f-number " + one("0.7", "11", "250", "512"));
        maybe("--airless");
    }

    private void proof() {
        add("proof --size " + one("16", "24", "32") + " --film " + one(FILMS) + " --f-number " + one("1.4",
                "11", "250"));
        site();
        camera();
        shot(List.of("1s", "20m", "1h", "2h", "5h", "9h"));
        maybe("--ground " + one("0.01", "0.8", "1"));
    }

    /** Numbers that each are allowed, but not always together. */
    private void journal() {
        add("journal add --journal @/journal.jsonl --film " + one(FILMS) + " --f-number " + one("0.7", "11",
                "f/512")
                + " --open " + instant() + "/" + one("0.001s", "1h", "24h"));
        site();
        maybe("--azimuth " + azimuth() + " --altitude " + one("0", "0.5", "90", "41"));
        maybe("--sky-mag-arcsec2 " + one("0", "21", "23"));
        maybe("--extinction " + one("0", "1", "2"));
        maybe("--focal-length " + one("5", "150", "2000"));
        maybe("--focus " + one("0.1", "0.15015", "0.1512", "2.0001", "infinity"));
        maybe("--tone " + one("black", "middle", "white"));
        maybe("--faintest " + one("-14", "4", "20"));
        maybe("--note " + one("mañana", "\u05d0\u05d1", "a,b;\"c\"", "=1+1", "\u4e2d\u6587"));
        maybe("--spot " + one("1", "1000"));
    }

    private void output(Kind kind) {
        List<String> formats = kind == Kind.TRAIL ? List.of("text", "json", "svg") : kind == Kind.PROOF
                ? List.of("text", "json", "svg") : args.get(0).equals("nights") ? List.of("text", "json",
                "svg", "html")
                : List.of("text", "json");
        String format = one(formats);
        add("--format " + format);
        maybe("--out @/new." + (format.equals("text") ? "txt" : format));
        maybe("--out @/" + one("old.txt", "old.json", "n".repeat(240) + ".json", "new.txt"));
        if (kind == Kind.PROOF) {
            maybe("--out @/new.png");
        }
    }

    void site() {
        String latitude = one("90", "-90", "89.99999", "66.56", "0", "78.2", number(-90, 90), number(-90, 90),
                number(-60, 60), number(-60, 60));
        add("--place " + latitude + "," + one("0", "180", "-180", "-2", number(-180, 180)) + ","
                + one("-430", "0", "1080", "9000") + " --zone " + (args.toString().contains("2011-12")
                ? one("Pacific/Apia", "UTC") : one(ZONES)));
        maybe("--dark-sky " + one("14", "22.5"));
        maybe("--sea-horizon");
    }

    private void camera() {
        add("--focal-length " + one("5", "15", "40", "75", "90", "110", "120", "2000") + " --frame "
                + one("80x80", "36x24", "4x5in", "8x10in", "11x14in", "400x400", "203x254", "5x1000"));
        maybe("--projection " + one("equidistant", "equisolid", "rectilinear"));
        maybe("--corner-stops " + one("0", "4"));
        maybe("--roll " + one("90", "-360", "33.3"));
    }

    private void shot(List<String> lasting) {
        if (random.nextInt(4) == 0) {
            add("--aim " + one(TARGETS));
            maybe("--at-frame " + one("0,0", "30,-30", "-2.5,2.5"));
        } else {
            add(random.nextInt(4) == 0 ? pole() : "--azimuth " + azimuth() + " --altitude " + altitude());
        }
        if (random.nextInt(8) == 0) {
            LocalDate evening = LocalDate.parse(date());
            add("--open " + evening + "T22:30/20m --open " + evening.plusDays(random.nextInt(1, 4))
                    + "T05:40/20m");
        } else {
            add("--from " + instant() + " --lasts " + one(lasting));
        }
    }

    private String azimuth() {
        return one("0", "180", "360", "90", number(0, 360));
    }

    private String altitude() {
        return one("0", "90", "49", number(0, 90), number(-90, 90));
    }

    /** The aim at the pole over the site that was drawn. */
    private String pole() {
        String latitude = args.get(args.indexOf("--place") + 1).split(",")[0];
        return "--azimuth " + (latitude.startsWith("-") ? "180" : one("0", "360")) + " --altitude "
                + latitude.replace("-", "");
    }

    private String instant() {
        return date() + "T" + one("00:00", "02:30", "03:10", "12:00", "17:30", "18:20", "20:00", "22:30",
                "23:59:59.9")
                + one("", "Z", "+01:00");
    }

    String date() {
        return random.nextInt(3) == 0 ? LocalDate.of(2000, 1, 1).plusDays(random.nextInt(21_900)).toString()
                : one(DATES);
    }

    private String number(double least, double most) {
        return String.format(Locale.ROOT, "%.2f", least + random.nextDouble() * (most - least));
    }

    private String one(String... of) {
        return of[random.nextInt(of.length)];
    }

    private String one(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }

    private void maybe(String words) {
        if (random.nextInt(4) == 0) {
            add(words);
        }
    }

    private void add(String words) {
        args.addAll(List.of(words.split(" ")));
    }
}
