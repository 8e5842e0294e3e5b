package gloam.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Cases whose options are damaged: a sound command line of each command with options changed, added and left
 * out. The options are those the program itself knows, so that a new one is tried as soon as it is there.
 */
final class FuzzOptions {

    private static final String SITE = "--lat 41 --lon -2 --height 300 --zone Europe/Madrid";
    private static final String SHOT = SITE
            + " --focal-length 120 --frame 80x80 --f-number 11 --azimuth 10 --altitude 41"
            + " --from 2027-02-08T21:00 --lasts 20m";
    private static final String SHEET = SITE
            + " --film instant-mono-640 --f-number 11 --azimuth 0 --altitude 41"
            + " --open 2027-02-08T21:00/2027-02-08T22:00 --journal @/journal.jsonl";

    /** Answered in about a millisecond. */
    private static final List<String> CHEAP = List.of(
            "check --trip @/trip.yaml",
            "expose --preview-f-number 2 --preview-iso 640 --preview-exposure 30s --film instant-mono-640 "
            + "--f-number 11",
            "expose --sky-mag-arcsec2 21 --iso 100 --reciprocity power:1.3,1 --f-number 11,16 --lasts 2h",
            "expose --trip @/trip.yaml --sheets 3",
            "journal list --journal @/journal.jsonl",
            "journal stats --journal @/journal.jsonl --film instant-mono-640",
            "journal export --journal @/journal.jsonl",
            "journal add --sky-mag-arcsec2 21 --tone dark --kept --note hm " + SHEET,
            "journal add --journal @/journal.jsonl --corrects 1 --withdraw",
            "journal guide",
            "sky --at 2027-02-08T22:30 --star 10,20 " + SITE,
            "sky --at 2027-02-08T22:30 --place 41.05,-2.15,1080 --zone Europe/Madrid",
            "init --from 2027-02-08 --place +41.05-002.15+1080/ --zone Europe/Madrid",
            "init --from 2027-02-08 --place 41.05N,2.15W --zone UTC --focal-length 114mm --frame 4x5in "
            + "--f-number f/8,f/11", "trail --star 83.8,-1.2 " + SHOT,
            "measure @/trip.yaml " + SITE,
            "", "journal", "--version", "plan", "nights", "measure", "trail", "proof");

    /** Answered in a hundredth to a half of a second. */
    private static final List<String> DEAR = List.of(
            "expose --at 2027-02-08T22:30 --film instant-mono-640 " + SITE,
            "expose --from 2027-02-08T22:30 --film instant-mono-640 " + SITE,
            "sky --night 2027-02-08 " + SITE,
            "init --place 33.45S,70.55W,2400 --zone America/Santiago",
            "help plan", "help journal add --man", "help --man --into @/folder.txt", "completion",
            "sky --approaches 5 --from 2027-02-08 --to 2027-02-10 " + SITE,
            "sky --above mars --altitude 20 --from 2027-02-08 --to 2027-02-10 " + SITE,
            "nights --from 2027-02-08 --to 2027-02-10 " + SITE,
            "nights --trip @/trip.yaml --stay 1",
            "trail --film instant-mono-640 " + SHOT,
            "trail --level mars --from 2027-02-08 --to 2027-02-09 --focal-length 120 --frame 80x80 " + SITE,
            "proof --size 64 --film instant-mono-640 " + SHOT,
            "plan --trip @/trip.yaml",
            "journal add " + SHEET,
            "journal fit --journal @/journal.jsonl --film instant-mono-640",
            "journal next --journal @/journal.jsonl --film instant-mono-640 --sky-mag-arcsec2 21.5 "
            + "--f-number 8,11");

    /** What an option's place-holder may well be given. */
    private static final Map<String, List<String>> USUAL = Map.ofEntries(
            Map.entry("DEG", List.of("0", "41.5", "-2", "90", "359.9", "-90")),
            Map.entry("M", List.of("0", "1080", "3", "9000", "infinity")),
            Map.entry("MM", List.of("50", "120", "0.1", "5000")),
            Map.entry("PLACE", List.of("41.05,-2.15,1080", "40°24'36\"N 1°13'48\"W", "+40.41-001.23+1320/",
            "-90,180,-430",
                    "41,2,1,0", "91,0,0", "+4024-00113CRSWGS_84/", "N41 E2", ",,")),
            Map.entry("ZONE", List.of("Europe/Madrid", "UTC", "+18:00", "Pacific/Apia", "Africa/Monrovia")),
            Map.entry("DATE", List.of("2027-02-08", "2027-02-09", "1700-01-01", "9999-12-31", "0000-01-01")),
            Map.entry("INSTANT", List.of("2027-02-08T21:00", "2027-02-08T21:00:00Z", "2027-03-28T02:30",
            "1582-10-10T12:00Z",
                    "9999-12-31T23:59:59+18:00", "2027-02-08T21:00+19:00")),
            Map.entry("INSTANT/DURATION",
            List.of("2027-02-08T21:00/10m", "2027-02-08T21:20/10m", "/", "2027-02-08T21:00/",
                    "2027-02-08T21:00/240h")),
            Map.entry("DURATION", List.of("30s", "18m", "1h50m", "PT18M", "1ms", "0.001s", "240h",
            "PT99999999999999H",
                    "P1Y", "999999999999999999999h", "PT-1S")),
            Map.entry("N", List.of("1", "8", "0", "-1", "11", "f/11", "400", "2147483647")),
            Map.entry("N[,N...]", List.of("11", "11,16", "f/8", ",", "11,", "0.7,512")),
            Map.entry("FILE", List.of("@/old.txt", "@/new.json", "@/new.svg", "@/new.png", "@/new.html",
            "@/new.ics",
                    "@/old.csv", "@/none/new.txt", "@/folder.txt", "@/trip.yaml", "@/journal.jsonl",
                    "@/plan.json", "", "/")),
            Map.entry("FORMAT", List.of("text", "json", "ics", "svg", "html", "csv", "png", "TEXT")),
            Map.entry("NAME|FILE", List.of("instant-mono-640", "digital-640", "instant-mono-64",
            "@/film.yaml", "@/trip.yaml")),
            Map.entry("LAW", List.of("none", "power:1.3", "power:1.3,1", "power:", "table:@/none.csv",
            "power:1e300,1e300")),
            Map.entry("TARGET", List.of("mars", "Vega", "galactic-centre", "Ori", "10,20", "sun", "nowhere")),
            Map.entry("PIXELS", List.of("64", "16", "1", "100000", "-5")),
            Map.entry("WxH", List.of("80x80", "60x90", "0x0", "5x1000", "1e3x1", ".x.")));
    private static final String SENTINEL = "as it was";

    private final RandomGenerator random;

    private final CommandLine gloam;

    private FuzzOptions(CommandLine gloam, RandomGenerator random) {
        this.gloam = gloam;
        this.random = random;
    }

    /** A case with damaged options for a command line; a dear one takes longer to answer. */
    static FuzzCase of(CommandLine gloam, boolean dear, RandomGenerator random) {
        return new FuzzOptions(gloam, random).damaged(dear ? DEAR : CHEAP);
    }

    private FuzzCase damaged(List<String> lines) {
        String line = lines.get(random.nextInt(lines.size()));
        List<String> args = new ArrayList<>(line.isEmpty() ? List.of() : List.of(line.split(" ")));
        List<OptionSpec> known = known(args);
        int changes = random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            change(args, known);
        }
        keepInFolder(args);
        return new FuzzCase(args, files(String.join(" ", args)));
    }

    /** Sends what is written without {@code --out} to the folder of the case. */
    private static void keepInFolder(List<String> args) {
        if (!args.isEmpty() && args.get(0).equals("init")) {
            args.add(1, "@/new.yaml");
        }
        for (int i = 1; i < args.size(); i++) {
            if (args.get(i - 1).equals("--into") && !args.get(i).startsWith(FuzzCase.FOLDER)) {
                args.set(i, "@/folder.txt");
            }
        }
    }

    private void change(List<String> args, List<OptionSpec> known) {
        switch (random.nextInt(8)) {
            case 0, 1, 2, 3 -> {
                OptionSpec option = known.get(random.nextInt(known.size()));
                String name = option.names()[random.nextInt(option.names().length)];
                args.add(name);
                if (option.arity().max() > 0 && random.nextInt(20) > 0) {
                    args.add(value(option.paramLabel()));
                }
            }
            case 4, 5 -> args.replaceAll(arg -> !arg.startsWith("--") && random.nextInt(args.size()) == 0
                    ? strange() : arg);
            case 6 -> {
                if (!args.isEmpty()) {
                    args.remove(random.nextInt(args.size()));
                }
            }
            default -> args.add(random.nextInt(args.size() + 1), strange());
        }
    }

    private String value(String label) {
        List<String> usual = USUAL.getOrDefault(label, List.of("1", "0.5", "name"));
        return random.nextInt(3) == 0 ? strange() : usual.get(random.nextInt(usual.size()));
    }

    private String strange() {
        String value = Mutation.VALUES.get(random.nextInt(Mutation.VALUES.size()));
        return value.matches("[a-z]+\\.(yaml|csv)") ? FuzzCase.FOLDER + value : value;
    }

    private List<OptionSpec> known(List<String> args) {
        CommandLine command = gloam;
        for (String arg : args) {
            command = command.getSubcommands().getOrDefault(arg, command);
        }
        return command.getCommandSpec().options();
    }

    /** The files that arguments name, and for a trip those it names. */
    private static Map<String, byte[]> files(String args) {
        Map<String, byte[]> files = new HashMap<>(FuzzFiles.soundTrip());
        if (!args.contains("trip.yaml")) {
            files.keySet().removeIf(name -> !args.contains(name));
        }
        files.put("old.txt", FuzzFiles.bytes(SENTINEL));
        files.put("old.csv", FuzzFiles.bytes(SENTINEL));
        return files;
    }
}
