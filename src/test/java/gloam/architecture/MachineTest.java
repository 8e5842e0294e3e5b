package gloam.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

/** Nothing depends on the machine, but where it is meant to, and nothing changes once it is made. */
class MachineTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("gloam");

    /** Methods that take the machine's locale unless they are given one, by the class that has them. */
    private static final Map<String, Set<String>> LOCALISED = Map.of(
            "java.lang.String", Set.of("format", "formatted", "toLowerCase", "toUpperCase"),
            "java.util.Formatter", Set.of("format"),
            "java.io.PrintStream", Set.of("format", "printf"),
            "java.io.PrintWriter", Set.of("format", "printf"),
            "java.time.format.DateTimeFormatter", Set.of("ofPattern"));

    @Test
    void onlyMainAndTheConsoleTouchStandardStreams() {
        noClasses().that().doNotHaveFullyQualifiedName("gloam.Main")
                .and().doNotHaveFullyQualifiedName("gloam.cli.UserConsole").should(ACCESS_STANDARD_STREAMS)
                .check(CLASSES);
    }

    @Test
    void onlyMainAndSessionReadTheClockOrTheZoneOfTheMachine() {
        noClasses().that().doNotHaveFullyQualifiedName("gloam.Main")
                .and().doNotHaveFullyQualifiedName("gloam.cli.Session")
                .should().accessTargetWhere(describe("read the machine's clock or zone",
                        MachineTest::readsMachine))
                .check(CLASSES);
    }

    private static boolean readsMachine(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getName();
        return owner.startsWith("java.time.") && name.equals("now")
                || owner.equals(Clock.class.getName())
                        && (name.startsWith("system") || name.startsWith("tick"))
                || owner.equals(ZoneId.class.getName()) && name.equals("systemDefault")
                || owner.equals(TimeZone.class.getName()) && name.equals("getDefault")
                || owner.equals(System.class.getName()) && name.equals("currentTimeMillis");
    }

    @Test
    void textNeverDependsOnTheMachinesLocale() {
        noClasses().should().accessTargetWhere(describe("make text without a locale",
                MachineTest::lacksLocale))
                .check(CLASSES);
    }

    private static boolean lacksLocale(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget target
                && LOCALISED.getOrDefault(target.getOwner().getName(), Set.of()).contains(target.getName())
                && target.getRawParameterTypes().stream()
                        .noneMatch(type -> type.isEquivalentTo(Locale.class));
    }

    @Test
    void nothingStaticChanges() {
        fields().that().areStatic().should().beFinal().check(CLASSES);
    }

    /** What a library calls while it reads is named by the library. */
    @Test
    void nothingHasSetters() {
        noMethods().that().areDeclaredInClassesThat().areNotAssignableTo("com.drew.imaging.tiff.TiffHandler")
                .should().haveNameMatching("set[A-Z].*").check(CLASSES);
    }
}
