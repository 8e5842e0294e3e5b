package gloam.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.Main;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is given away says whose it is and under which licence. */
class LicencesTest {

    private static final Path JAR = Path.of("target", "gloam.jar");
    private static final Pattern TOLD = Pattern.compile("META-INF/[^/]*(LICENSE|NOTICE)[^/]*");
    /**
     * Where a library's licence is the Apache one, whose text is there, the sentence that says so may be left
     * out.
     */
    private static final String IS_APACHE = "is licensed under the Apache (Software) License, version 2.0";

    @Test
    void gloamsOwnLicenceAndNoticeGoWithItsClasses() throws Exception {
        assertEquals(Files.readString(Path.of("LICENSE")), packed("META-INF/LICENSE"));
        assertTrue(packed("META-INF/LICENSE").stripLeading().startsWith("Apache License"));
        String notice = packed("META-INF/NOTICE");
        assertEquals(Files.readString(Path.of("src/main/resources/META-INF/NOTICE")), notice);
        assertTrue(notice.startsWith("Gloam\nCopyright 2026 The Gloam authors\n"), notice);
    }

    @Test
    void everyFileOfDataIsAccountedFor() throws Exception {
        String notice = packed("META-INF/NOTICE");
        try (Stream<Path> data = Files.list(Path.of("src/main/resources/gloam/ephemeris"))) {
            assertEquals(List.of(), data.map(file -> file.getFileName().toString())
                    .filter(name -> !name.matches("unxp20[0-5]\\d\\.405") && !notice.contains(name))
                    .toList());
            assertTrue(notice.contains("unxp2000.405 to unxp2059.405"), notice);
        }
        assertTrue(notice.contains("none is claimed in it (17 U.S.C. 403)"));
    }

    /** Whatever licence and notice a library's jar carries stands in Gloam's jar, word for word. */
    @Test
    @Tag("installed")
    void theJarCarriesWhatItsLibrariesCarry() throws IOException {
        Map<String, String> ours = told(JAR);
        List<String> missing = new ArrayList<>();
        for (Path library : libraries()) {
            told(library).forEach((name, text) -> {
                if (!text.contains(IS_APACHE) && ours.values().stream().noneMatch(all ->
                        all.contains(text))) {
                    missing.add(library.getFileName() + ": " + name);
                }
            });
        }
        assertEquals(List.of(), missing);
    }

    @Test
    @Tag("installed")
    void theJarClaimsNoCopyrightOfOthers() throws IOException {
        Map<String, String> ours = told(JAR);
        assertTrue(ours.get("META-INF/NOTICE").startsWith(
                words(Files.readString(Path.of("src/main/resources/META-INF/NOTICE")))));
        assertEquals(words(Files.readString(Path.of("LICENSE"))), ours.get("META-INF/LICENSE"));
        assertFalse(ours.get("META-INF/NOTICE").contains("Apache Software Foundation"));
        for (String from : List.of("Minpack Copyright Notice (1999) University of Chicago",
                "Copyright (c) 2004, Ernst Hairer",
                "Makoto Matsumoto and Takuji Nishimura")) {
            assertTrue(ours.get("META-INF/LICENSE.txt").contains(from), from);
        }
    }

    /** The jars on the class path of which Gloam's own holds classes. */
    private static List<Path> libraries() throws IOException {
        List<Path> libraries = new ArrayList<>();
        try (JarFile gloam = new JarFile(JAR.toFile())) {
            for (String element : System.getProperty("java.class.path").split(File.pathSeparator)) {
                if (element.endsWith(".jar")) {
                    try (JarFile library = new JarFile(element)) {
                        if (library.stream().map(ZipEntry::getName).filter(name ->
                                name.matches("\\w.*/\\w+\\.class"))
                                .findFirst().filter(name -> gloam.getEntry(name) != null).isPresent()) {
                            libraries.add(Path.of(element));
                        }
                    }
                }
            }
        }
        assertTrue(libraries.size() >= 6, () -> "Orekit, Hipparchus, Jackson, SnakeYAML, picocli: "
                + libraries);
        return libraries;
    }

    private static Map<String, String> told(Path jar) throws IOException {
        Map<String, String> told = new HashMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            for (ZipEntry entry : file.stream().filter(any ->
                    TOLD.matcher(any.getName()).matches()).toList()) {
                try (InputStream in = file.getInputStream(entry)) {
                    told.put(entry.getName(), words(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
                }
            }
        }
        return told;
    }

    private static String words(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    /** A file that goes into the jar. */
    private static String packed(String name) throws Exception {
        return Files.readString(Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation()
                .toURI()).resolve(name));
    }
}
