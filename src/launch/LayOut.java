import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;

/**
 * Lays out the folder in which Gloam starts quickest: launchers, jar, a static class-data archive, man pages.
 *
 * <p>Run by the build as {@code java src/launch/LayOut.java TARGET}. The archive holds what the commands below load.
 * Where Java cannot make one the folder works without.
 */
class LayOut {

    private static final String TRIP = "--trip demo-data/trip.yaml ";
    private static final String SHEET = "--azimuth 0 --altitude 41 --from 2027-02-08T21:00 --lasts 2h ";
    private static final String JOURNAL = "--journal demo-data/journal.jsonl ";
    private static final List<String> COMMANDS = List.of(
            "--help",
            "plan " + TRIP + "--out OUT/plan.html --out OUT/plan.ics --out OUT/plan.svg --out OUT/plan.json",
            "nights " + TRIP + "--out OUT/nights.svg",
            "nights --lat 41.05 --lon -2.15 --height 1080 --zone Europe/Madrid --from 2027-02-05 --to 2027-03-05",
            "nights --place 41.05,-2.15,1080 --zone Europe/Madrid --from 2027-02-05 --to 2027-02-07 --stay 2",
            "sky " + TRIP + "--night 2027-02-10",
            "sky " + TRIP + "--at 2027-02-08T22:30 --format json",
            "expose " + TRIP + "--sky-mag-arcsec2 21.4",
            "trail " + TRIP + SHEET,
            "proof " + TRIP + SHEET + "--out OUT/proof.png --out OUT/proof.svg",
            "journal list " + JOURNAL + "--format json",
            "journal next " + JOURNAL + "--film instant-mono-640 --sky-mag-arcsec2 21.4");

    private final Path jar;
    private final Path scratch;

    private LayOut(Path jar, Path scratch) {
        this.jar = jar;
        this.scratch = scratch;
    }

    public static void main(String[] args) throws IOException {
        Path target = Path.of(args[0]).toRealPath();
        Path home = target.resolve("gloam");
        Path bin = Files.createDirectories(home.resolve("bin"));
        for (String launcher : List.of("gloam", "gloam.bat")) {
            Path copy = copy(Path.of("src", "launch", launcher), bin.resolve(launcher));
            if (!copy.toFile().setExecutable(true, false)) {
                throw new IOException("cannot make " + copy + " executable");
            }
        }
        Path jar = unpacked(target.resolve("gloam.jar"), home.resolve("gloam.jar"));
        LayOut layOut = new LayOut(jar, Files.createDirectories(target.resolve("class-lists")));
        layOut.documents(home.resolve("share"));
        layOut.archive(home.resolve("gloam.jsa"));
    }

    private static Path copy(Path from, Path to) throws IOException {
        return Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
    }

    /** The same jar with nothing in it compressed: twice as large, and the sky's data are read three times as fast. */
    private static Path unpacked(Path from, Path to) throws IOException {
        try (JarFile jar = new JarFile(from.toFile()); JarOutputStream out = new JarOutputStream(Files.newOutputStream(to))) {
            for (JarEntry entry : Collections.list(jar.entries())) {
                byte[] content = jar.getInputStream(entry).readAllBytes();
                JarEntry stored = new JarEntry(entry.getName());
                stored.setTime(entry.getTime());
                stored.setMethod(ZipEntry.STORED);
                stored.setSize(content.length);
                stored.setCrc(entry.getCrc());
                out.putNextEntry(stored);
                out.write(content);
            }
        }
        return to;
    }

    /** Pages for man and the completion for bash, where both are looked for beside a {@code bin} on the path. */
    private void documents(Path share) throws IOException {
        Path pages = Files.createDirectories(share.resolve("man/man1"));
        Path completions = Files.createDirectories(share.resolve("bash-completion/completions"));
        if (!java("pages", List.of("-jar", jar.toString(), "help", "--man", "--into", pages.toString()))
                || !java("completion", List.of("-jar", jar.toString(), "completion"))) {
            throw new IllegalStateException("gloam cannot tell of itself; see " + scratch);
        }
        copy(scratch.resolve("completion.txt"), completions.resolve("gloam"));
    }

    private void archive(Path archive) throws IOException {
        Set<String> classes = new LinkedHashSet<>();
        IntStream.range(0, COMMANDS.size()).parallel().mapToObj(this::classesOf).forEachOrdered(classes::addAll);
        Path list = Files.write(scratch.resolve("all.lst"), classes);
        Files.deleteIfExists(archive);
        boolean made = java("dump", List.of("-Xshare:dump", "-XX:SharedClassListFile=" + list,
                "-XX:SharedArchiveFile=" + archive, "-cp", jar.toString()));
        if (!made) {
            System.out.println("this Java makes no class-data archive; gloam starts more slowly without");
        }
    }

    /** The classes that a command loads. */
    private List<String> classesOf(int number) {
        Path list = scratch.resolve(number + ".lst");
        List<String> arguments = new ArrayList<>(List.of("-XX:DumpLoadedClassList=" + list, "-jar", jar.toString()));
        arguments.addAll(List.of(COMMANDS.get(number).replace("OUT", scratch.toString()).split(" ")));
        try {
            if (!java(String.valueOf(number), arguments)) {
                throw new IllegalStateException("gloam " + COMMANDS.get(number) + " failed; see " + scratch);
            }
            return Files.readAllLines(list).stream().map(LayOut::unnumbered).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A class without the number that newer Javas give it, under which another list has another class. */
    private static String unnumbered(String line) {
        return line.replaceFirst(" id: \\d+$", "");
    }

    /** Runs Java, what it says kept beside the class lists; whether it went well. */
    private boolean java(String name, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xlog:disable",
                "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        command.addAll(arguments);
        return new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(scratch.resolve(name + ".txt").toFile()).start().onExit().join().exitValue() == 0;
    }
}
