package gloam.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.platform.engine.TestTag;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.w3c.dom.Document;

/** Whatever the groups of a test are, one step of CI runs it, and only one; laws are tried again on more. */
class TestGroupsTest {

    private static final Pattern STEP = Pattern.compile("(?m)^tested test(?: -P(\\w+))?");
    private static final int LEAST_TESTS = 500;

    private static List<TestIdentifier> found;

    /** Groups whose tests a step runs, all where there are none, and groups that it leaves out. */
    private record Step(Set<String> groups, Set<String> excluded) {

        boolean runs(TestIdentifier test) {
            List<String> its = test.getTags().stream().map(TestTag::getName).toList();
            return (groups.isEmpty() || its.stream().anyMatch(groups::contains))
                    && its.stream().noneMatch(excluded::contains);
        }
    }

    @BeforeAll
    static void find() {
        TestPlan plan = LauncherFactory.create().discover(LauncherDiscoveryRequestBuilder.request()
                .selectors(DiscoverySelectors.selectPackage("gloam")).build());
        found = plan.getRoots().stream().flatMap(root -> plan.getDescendants(root).stream()).toList();
    }

    @Test
    void everyTestRunsInOneStepOfCi() throws Exception {
        List<Step> steps = steps();
        assertEquals(3, steps.size());
        List<TestIdentifier> tests = found.stream().filter(test -> test.isTest()
                || test.getSource().filter(MethodSource.class::isInstance).isPresent()).toList();
        assertTrue(tests.size() > LEAST_TESTS, tests.size() + " tests");
        steps.forEach(step -> assertTrue(tests.stream().anyMatch(step::runs), step + " runs no test"));
        assertEquals(List.of(), tests.stream()
                .filter(test -> steps.stream().filter(step -> step.runs(test)).count() != timesRun(test))
                .map(TestIdentifier::getUniqueId).toList());
    }

    /** Surefire looks for tests in classes of that name alone. */
    @Test
    void everyClassOfTestsIsNamedSo() {
        assertEquals(List.of(), found.stream().flatMap(test -> test.getSource().stream())
                .filter(ClassSource.class::isInstance)
                .map(source -> ((ClassSource) source).getClassName().replaceFirst("\\$.*", ""))
                .filter(name -> !name.endsWith("Test")).toList());
    }

    private static int timesRun(TestIdentifier test) {
        return test.getTags().contains(TestTag.create("laws")) ? 2 : 1;
    }

    private static List<Step> steps() throws Exception {
        Document pom = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(Path.of("pom.xml").toFile());
        List<Step> steps = new ArrayList<>();
        for (Optional<String> profile : STEP.matcher(Files.readString(Path.of(".ci/run"))).results()
                .map(step -> Optional.ofNullable(step.group(1))).toList()) {
            String at = profile.map(name -> "/project/profiles/profile[id='" + name + "']").orElse("/project")
                    + "/properties/test.";
            steps.add(new Step(names(pom, at + "groups"), names(pom, at + "excludedGroups")));
        }
        return steps;
    }

    /** The names of an expression of JUnit, in which they are joined by "or". */
    private static Set<String> names(Document pom, String at) throws Exception {
        XPath path = XPathFactory.newInstance().newXPath();
        assertEquals("1", path.evaluate("count(" + at + ")", pom), at);
        String expression = path.evaluate(at, pom);
        assertTrue(expression.matches("(\\w+( \\| \\w+)*)?"), expression);
        return Stream.of(expression.split(" \\| ")).filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
    }
}
