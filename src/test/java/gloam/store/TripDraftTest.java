package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.gear.Camera;
import gloam.gear.Coordinates;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The file to begin with shows every key of the trip file, and each line behind a {@code #} can be used. */
class TripDraftTest {

    private static final int WIDTH = 120;
    private static final Pattern COMMENTED = Pattern.compile("( {0,8})# ((?:- )?[a-z0-9-]+:.*)");
    private static final List<Set<String>> EXCLUSIVE = List.of(
            Set.of("place", "latitude-deg", "longitude-deg", "height-m"), Set.of("transmittance", "t-stop"),
            Set.of("pinhole-mm", "f-numbers", "focus-m"), Set.of("point", "follow", "pole"),
            Set.of("tone-stops", "tone-at-most-stops"), Set.of("camera", "cameras"),
            Set.of("records", "records-at-least"));

    @TempDir
    private Path folder;

    @BeforeEach
    void filesThatItNames() {
        Refusals.file(folder, "skyline.csv", "azimuth_deg,altitude_deg\n0,2\n180,7\n");
        Refusals.file(folder, "clouds.csv",
                "time,cloud_fraction\n2027-02-08T18:00+01:00,0.2\n2027-02-09T06:00+01:00,0.4\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"41.05,-2.15,1080", "2.05,-2.15", "-33,150,10"})
    void showsEveryKeyAndEachCommentedOneReads(String place) {
        List<String> lines = draft(place);
        Set<String> shown = new TreeSet<>(read(lines));
        for (int at = 0; at < lines.size(); at++) {
            if (COMMENTED.matcher(lines.get(at)).matches()) {
                shown.addAll(inUse(lines, at));
            }
        }
        assertEquals(TripKeys.all().stream().map(TripKey::path)
                .collect(Collectors.toCollection(TreeSet::new)), shown);
    }

    @Test
    void staysNarrow() {
        draft("41.05,-2.15,1080").forEach(line -> assertTrue(line.length() <= WIDTH, line));
    }

    private static List<String> draft(String place) {
        Camera camera = new Camera("box",
                new Lens(120, List.of(FNumber.marked(11), FNumber.marked(16)), 0.9, 20, 40, 0,
                Projection.RECTILINEAR, Vignetting.NONE), new Frame(80, 80), Duration.ofMinutes(5));
        return new TripDraft("Meadow", Coordinates.of(place), ZoneId.of("UTC"), LocalDate.of(2027, 2, 3),
                LocalDate.of(2027, 2, 9), camera, true, "instant-mono-640", 8).text().lines().toList();
    }

    /**
     * The keys read when the comment mark of a line is taken away, with those of the lines that belong to it.
     */
    private Set<String> inUse(List<String> lines, int at) {
        Matcher mark = COMMENTED.matcher(lines.get(at));
        assertTrue(mark.matches());
        List<String> used = new ArrayList<>(lines);
        used.set(at, mark.group(1) + mark.group(2));
        Set<String> shown = new TreeSet<>();
        int end = at + 1;
        while (end < lines.size() && lines.get(end).matches("#  .*| {20,}#.*")) {
            used.set(end, lines.get(end).replaceFirst("^# ", ""));
            end++;
        }
        for (int inner = at + 1; inner < end; inner++) {
            if (COMMENTED.matcher(used.get(inner)).matches()) {
                shown.addAll(inUse(withoutRival(used, at), inner));
            }
        }
        shown.addAll(read(withoutRival(used, at)));
        return shown;
    }

    /**
     * The lines without those in the same section whose place a line takes: the same key, or one that it
     * excludes.
     */
    private static List<String> withoutRival(List<String> lines, int at) {
        List<String> kept = new ArrayList<>(lines);
        String line = lines.get(at);
        String indent = line.replaceFirst("\\S.*", "");
        Set<String> rivals = new TreeSet<>(Set.of(key(line)));
        if (key(line).equals("openings")) {
            rivals.addAll(List.of("point", "follow", "pole", "sky", "exposure-min", "f-numbers"));
        }
        EXCLUSIVE.stream().filter(keys -> keys.contains(key(line))).forEach(rivals::addAll);
        for (int step : List.of(-1, 1)) {
            for (int other = at + step; other > 0 && within(kept, other, indent); other += step) {
                if (rivals.contains(key(kept.get(other)))) {
                    kept.set(other, "");
                    for (int below = other + 1; below < kept.size()
                            && kept.get(below).startsWith(indent + "  "); below++) {
                        kept.set(below, "");
                    }
                }
            }
        }
        if (line.contains("{red:")) {
            kept.replaceAll(other -> other.replaceFirst("layers: mono", "layers: three"));
        }
        return kept;
    }

    /** Whether a line stands in the same item of a list or the same section as those around it. */
    private static boolean within(List<String> lines, int at, String indent) {
        return at < lines.size() && (lines.get(at).startsWith(indent) || lines.get(at).startsWith("#")
                || lines.get(at).isEmpty());
    }

    private static String key(String line) {
        return line.matches(" *(- )?[a-z0-9-]+:.*") ? line.strip().replaceFirst("^- ", "")
                .replaceFirst(":.*", "") : "";
    }

    private Path file(List<String> lines) {
        return Refusals.file(folder, "trip.yaml", String.join("\n", lines));
    }

    /** The keys in a file that must be read without a fault. */
    private Set<String> read(List<String> lines) {
        Set<String> there = new TreeSet<>();
        Findings findings = new Findings() {
            @Override
            void asked(String path, OptionalInt line) {
                line.ifPresent(number -> there.add(TripKeys.general(path)));
            }
        };
        Path file = file(lines);
        findings.result(() -> TripFile.reading(Source.of(file, findings)));
        return there;
    }
}
