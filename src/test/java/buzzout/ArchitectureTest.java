package buzzout;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.THROW_GENERIC_EXCEPTIONS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.probe.Identity;
import buzzout.probe.Printable;
import buzzout.probe.ProbeEvent;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between packages are those that the design draws, and the outside world is behind them. */
class ArchitectureTest {
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("buzzout");

    /** For each package, in the order of the design's table, the packages that it may use besides itself. */
    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("toml", Set.of()),
            Map.entry("plan", Set.of("toml")),
            Map.entry("circuit", Set.of("plan")),
            Map.entry("probe", Set.of("plan", "circuit")),
            Map.entry("session", Set.of("plan", "circuit", "probe")),
            Map.entry("diagnosis", Set.of("plan", "circuit", "session")),
            Map.entry("journal", Set.of("plan", "circuit", "probe", "session")),
            Map.entry("report", Set.of("plan", "circuit", "probe", "session", "diagnosis", "journal")),
            Map.entry("screen", Set.of("plan", "circuit", "probe", "session", "diagnosis", "journal", "report")),
            Map.entry("line", Set.of()),
            Map.entry(
                    "cli",
                    Set.of("plan", "circuit", "probe", "session", "diagnosis", "journal", "report", "screen", "line")));

    /** What has nothing to do with the outside world. */
    private static final DescribedPredicate<JavaClass> INSIDE = resideInAnyPackage(
            "buzzout.toml",
            "buzzout.plan",
            "buzzout.circuit",
            "buzzout.session",
            "buzzout.diagnosis",
            "buzzout.report");

    /** Of the probe, packages other than the command line see what a probe said, not how it is spoken to. */
    private static final DescribedPredicate<JavaClass> WHAT_A_PROBE_SAID = DescribedPredicate.describe(
            "what a probe said",
            each -> Stream.of(ProbeEvent.class, Identity.class, Printable.class)
                    .anyMatch(allowed -> each.getName().equals(allowed.getName())
                            || each.getName().startsWith(allowed.getName() + "$")));

    @Test
    void every_package_and_a_good_many_classes_were_looked_at() {
        Set<String> packages =
                OURS.stream().map(ArchitectureTest::packageOf).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(MAY_USE.keySet()), packages);
        assertTrue(OURS.size() >= 250, () -> "only " + OURS.size() + " classes");
    }

    @TestFactory
    Stream<DynamicTest> a_package_uses_only_those_it_may() {
        return MAY_USE.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    List<String> forbidden = new ArrayList<>(MAY_USE.keySet());
                    forbidden.remove(entry.getKey());
                    forbidden.removeAll(entry.getValue());
                    if (!forbidden.isEmpty()) {
                        noClasses()
                                .that(resideInAPackage("buzzout." + entry.getKey()))
                                .should()
                                .dependOnClassesThat(resideInAnyPackage(forbidden.stream()
                                        .map(name -> "buzzout." + name + "..")
                                        .toArray(String[]::new)))
                                .check(OURS);
                    }
                }));
    }

    @Test
    void only_the_command_line_talks_to_a_probe() {
        noClasses()
                .that(resideInAnyPackage("buzzout.session", "buzzout.journal", "buzzout.report", "buzzout.screen"))
                .should()
                .dependOnClassesThat(resideInAPackage("buzzout.probe").and(not(WHAT_A_PROBE_SAID)))
                .check(OURS);
    }

    @Test
    void only_the_command_line_has_the_standard_streams() {
        noClasses()
                .that(resideInAPackage("buzzout.cli").negate())
                .should(ACCESS_STANDARD_STREAMS)
                .check(OURS);
    }

    @Test
    void no_exception_is_thrown_that_says_nothing() {
        noClasses().should(THROW_GENERIC_EXCEPTIONS).check(OURS);
    }

    @Test
    void files_are_touched_only_at_the_edges() {
        noClasses()
                .that(INSIDE)
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.nio.channels.."))
                .check(OURS);
    }

    @Test
    void streams_are_read_only_at_the_edges_and_for_the_plan_that_is_built_in() {
        noClasses()
                .that(INSIDE.and(not(equivalentTo(ExamplePlan.class))))
                .should()
                .dependOnClassesThat(resideInAPackage("java.io"))
                .check(OURS);
    }

    @Test
    void each_outside_library_has_one_home() {
        Map<String, String> homes = Map.of(
                "com.fazecast..", "buzzout.probe",
                "com.googlecode.lanterna..", "buzzout.screen");
        homes.forEach((library, home) -> noClasses()
                .that(resideInAPackage(home).negate())
                .should()
                .dependOnClassesThat(resideInAPackage(library))
                .check(OURS));
        noClasses()
                .that(resideInAnyPackage("buzzout.journal", "buzzout.report").negate())
                .should()
                .dependOnClassesThat(resideInAPackage("com.google.gson.."))
                .check(OURS);
    }

    @Test
    void what_is_known_cannot_be_changed() {
        fields().that()
                .areDeclaredInClassesThat(resideInAnyPackage("buzzout..")
                        .and(DescribedPredicate.describe(
                                "are records or enums", each -> each.isRecord() || each.isEnum())))
                .should()
                .beFinal()
                .check(OURS);
        fields().that()
                .areDeclaredInClassesThat(DescribedPredicate.describe("are records", JavaClass::isRecord))
                .and()
                .areNotStatic()
                .should()
                .haveRawType(DescribedPredicate.describe("that is no array", type -> !type.isArray()))
                .check(OURS);
    }

    private static String packageOf(JavaClass each) {
        return each.getPackageName().replaceFirst("^buzzout\\.", "");
    }
}
