package gloam.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import gloam.ephemeris.Ephemeris;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The layers of Gloam and the walls between them, as DEVELOPERS.md draws them. */
class ArchitectureTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("gloam");

    /** Fewer than this means that the classes were not found, not that the code is small. */
    private static final int LEAST_CLASSES = 40;

    /** For each package those it may use, lowest first; what is not listed is forbidden. */
    private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("units", List.of());
        MAY_USE.put("gear", List.of("units"));
        MAY_USE.put("film", List.of("units"));
        MAY_USE.put("ephemeris", List.of("units", "gear"));
        MAY_USE.put("ephemeris.orekit", List.of("units", "gear", "ephemeris"));
        MAY_USE.put("light", List.of("units", "gear", "ephemeris"));
        MAY_USE.put("exposure", List.of("units", "gear", "film", "ephemeris", "light"));
        MAY_USE.put("trail", List.of("units", "gear", "ephemeris"));
        MAY_USE.put("sheet", List.of("units", "gear", "film", "ephemeris", "light", "trail"));
        MAY_USE.put("proof",
                List.of("units", "gear", "film", "ephemeris", "light", "exposure", "trail", "sheet"));
        MAY_USE.put("frame", List.of("units", "gear", "ephemeris", "light", "exposure", "trail"));
        MAY_USE.put("field", List.of("units"));
        MAY_USE.put("planner", List.of("units", "gear", "film", "ephemeris", "light", "exposure", "trail",
                "sheet", "proof", "field"));
        MAY_USE.put("journal", List.of("units", "gear", "film", "ephemeris", "light", "exposure", "trail"));
        MAY_USE.put("answer", List.of("units", "gear", "film", "ephemeris", "light", "exposure", "trail",
                "sheet", "proof", "frame", "planner", "journal"));
        MAY_USE.put("store", List.of("units", "gear", "film", "ephemeris", "light", "frame", "planner",
                "journal", "field"));
        MAY_USE.put("view", List.of("units", "gear", "film", "ephemeris", "light", "exposure", "trail",
                "sheet", "proof", "frame", "planner", "journal", "answer"));
        List<String> everything = new ArrayList<>(MAY_USE.keySet());
        MAY_USE.put("cli", everything);
    }

    /** The package {@code gloam} itself, where {@code Main} stands. */
    private static final String TOP = "Main";

    /** What the view may know of those who compute: what their answers are made of. */
    private static final Set<String> VALUES = Set.of("gloam.ephemeris.Appearance", "gloam.ephemeris.Approach",
            "gloam.ephemeris.Body", "gloam.ephemeris.Direction", "gloam.ephemeris.Event",
            "gloam.ephemeris.HighStand", "gloam.ephemeris.MoonPhase", "gloam.ephemeris.Night",
            "gloam.ephemeris.SkyPosition", "gloam.ephemeris.SkylinePassage", "gloam.ephemeris.Star",
            "gloam.ephemeris.Target",
            "gloam.light.SkyBrightness", "gloam.light.SkyLight$Sample", "gloam.exposure.Bracket",
            "gloam.exposure.ColourShift", "gloam.exposure.CorrectionFilter",
            "gloam.exposure.ExposedSheet", "gloam.exposure.Exposure",
            "gloam.exposure.ExposureTable$PassingStars", "gloam.exposure.ExposureTable$Row",
            "gloam.exposure.Shutter", "gloam.exposure.Trade", "gloam.trail.CelestialPole",
            "gloam.trail.Framing", "gloam.trail.LevelSearch", "gloam.trail.Motion",
            "gloam.trail.StarHere", "gloam.trail.Trail", "gloam.proof.Picture", "gloam.proof.StarCount",
            "gloam.light.LightSource", "gloam.frame.Comparison", "gloam.frame.FrameSky", "gloam.frame.Patch",
            "gloam.frame.StarAim", "gloam.frame.Taken", "gloam.frame.Calibration", "gloam.frame.OpeningEnds");

    /** Packages of those who compute, and classes of others that do. */
    private static final Set<String> COMPUTING = Set.of("gloam.ephemeris", "gloam.light", "gloam.exposure",
            "gloam.trail", "gloam.proof", "gloam.frame", "gloam.planner.Planner",
            "gloam.planner.NightRanking",
            "gloam.journal.FitOfSheets", "gloam.journal.Laplace", "gloam.journal.SheetLight");

    /** What commands make of options though it belongs to those who compute. */
    private static final Set<String> MADE_OF_OPTIONS = Set.of("gloam.light.Atmosphere", "gloam.proof.Raster",
            "gloam.sheet.Sheet", "gloam.sheet.Setting", "gloam.frame.FrameSettings",
            "gloam.journal.SheetLight");

    @Test
    void packagesUseOnlyThoseListed() {
        LayeredArchitecture rule = layeredArchitecture().consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer(TOP).definedBy("gloam");
        for (String name : MAY_USE.keySet()) {
            rule = rule.layer(name).definedBy("gloam." + name);
        }
        for (Map.Entry<String, List<String>> row : MAY_USE.entrySet()) {
            rule = row.getValue().isEmpty()
                    ? rule.whereLayer(row.getKey()).mayNotAccessAnyLayer()
                    : rule.whereLayer(row.getKey())
                            .mayOnlyAccessLayers(row.getValue().toArray(String[]::new));
        }
        rule.ensureAllClassesAreContainedInArchitecture().check(CLASSES);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("gloam.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void orekitStaysBehindItsDoor() {
        onlyIn(List.of("org.orekit.."), "gloam.ephemeris.orekit");
    }

    @Test
    void hipparchusStaysWithThoseWhoCompute() {
        onlyIn(List.of("org.hipparchus.."), "gloam.units", "gloam.ephemeris..", "gloam.light",
                "gloam.exposure", "gloam.trail", "gloam.proof", "gloam.frame", "gloam.journal",
                "gloam.planner");
    }

    @Test
    void jacksonStaysWithFilesAndReports() {
        onlyIn(List.of("com.fasterxml.jackson..", "tools.jackson..", "org.snakeyaml.."),
                "gloam.store", "gloam.view");
    }

    @Test
    void imagesAreDecodedWhereFilesAreRead() {
        onlyIn(List.of("com.drew..", "javax.imageio..", "java.awt.."), "gloam.store");
    }

    @Test
    void theViewComputesNothingAndAsksNoSky() {
        noClasses().that().resideInAPackage("gloam.view")
                .should().dependOnClassesThat(describe("compute", ArchitectureTest::computes)).check(CLASSES);
    }

    /** A value's own parts, such as the name of a phase, are values too. */
    private static boolean computes(JavaClass type) {
        String name = type.getName();
        return (COMPUTING.contains(type.getPackageName()) || COMPUTING.contains(name))
                && VALUES.stream().noneMatch(value -> name.equals(value) || name.startsWith(value + "$"));
    }

    @Test
    void theCommandsHandTheSkyToAnswersAlone() {
        noClasses().that().resideInAPackage("gloam.cli")
                .should().accessTargetWhere(describe("ask the sky or compute", ArchitectureTest::asksTheSky))
                .check(CLASSES);
    }

    private static boolean asksTheSky(JavaAccess<?> access) {
        String home = access.getTargetOwner().getPackageName();
        return access.getTarget() instanceof CodeUnitAccessTarget target && !home.equals("gloam.answer")
                && !home.equals("gloam.cli")
                && (target.getOwner().isEquivalentTo(Ephemeris.class)
                        || target.getRawParameterTypes().stream()
                                .anyMatch(type -> type.isEquivalentTo(Ephemeris.class))
                        || computes(target.getOwner()) && !home.equals("gloam.ephemeris")
                                && !MADE_OF_OPTIONS.contains(target.getOwner().getName()));
    }

    @Test
    void answersAreNoWords() {
        noClasses().that().resideInAPackage("gloam.answer")
                .should().dependOnClassesThat().haveFullyQualifiedName("java.time.format.DateTimeFormatter")
                .orShould().callMethodWhere(describe("make text", access ->
                        access.getTargetOwner().isEquivalentTo(String.class)
                                && Set.of("format", "formatted").contains(access.getName())))
                .check(CLASSES);
    }

    @Test
    void picocliStaysWithTheCommands() {
        onlyIn(List.of("picocli.."), "gloam.cli");
    }

    /**
     * A library that nothing runs on would be dead weight; so many packages at least compute or read with
     * each.
     */
    @ParameterizedTest
    @CsvSource({"org.orekit., 1", "org.hipparchus.analysis., 3", "org.hipparchus.geometry., 4",
        "org.hipparchus.distribution., 2", "org.hipparchus.linear., 1", "tools.jackson.databind., 2",
        "com.drew., 1", "picocli., 1"})
    void everyLibraryIsUsed(String library, int leastPackages) {
        Set<String> users = CLASSES.stream().filter(type -> type.getDirectDependenciesFromSelf().stream()
                .anyMatch(use -> use.getTargetClass().getName().startsWith(library)))
                .map(JavaClass::getPackageName).collect(Collectors.toSet());
        assertTrue(users.size() >= leastPackages, () -> library + " is used by " + users);
    }

    private static void onlyIn(List<String> library, String... homes) {
        noClasses().that().resideOutsideOfPackages(homes)
                .should().dependOnClassesThat().resideInAnyPackage(library.toArray(String[]::new))
                .check(CLASSES);
    }

    /** Below the view, planning and what it is made of give values and no sentences. */
    @Test
    void noSentenceIsMadeBelowTheView() {
        noClasses().that().resideInAnyPackage("gloam.planner", "gloam.field", "gloam.exposure", "gloam.trail",
                "gloam.journal")
                .should().accessTargetWhere(describe("make a sentence", access ->
                        access.getTargetOwner().getName().equals("java.time.format.DateTimeFormatter")
                                || access.getTargetOwner().getName().equals("java.lang.String")
                                && Set.of("format", "formatted").contains(access.getName())))
                .check(CLASSES);
    }

    @Test
    void rulesAreNotVacuous() {
        assertTrue(CLASSES.size() >= LEAST_CLASSES, () -> "only " + CLASSES.size() + " classes were found");
    }
}
