package org.twinbar;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the packages of core may know of each other and of the world. */
class CoreArchitectureTest {

    /** Lower ones may use higher ones. */
    private static final List<String> ORDER = List.of(
            "quantity",
            "statistics",
            "finding",
            "uncertainty",
            "instrument",
            "picture",
            "specimen",
            "method",
            "treatment",
            "planning",
            "decision");

    @SuppressWarnings("UnusedVariable") // named by a FieldSource
    private static final List<String> ALONE = List.of("quantity", "statistics", "finding");

    private static final JavaClasses CORE = Ours.CORE;

    @Test
    void findsTheClassesOfCore() {
        assertThat(CORE)
                .extracting(JavaClass::getPackageName)
                .contains("org.twinbar.quantity", "org.twinbar.finding");
    }

    @Test
    void hasNoPackageOutsideTheOrder() {
        String[] known =
                ORDER.stream().map(name -> "org.twinbar." + name + "..").toArray(String[]::new);
        holds(noClasses()
                .should()
                .resideOutsideOfPackages(known)
                .because("a package of core is a word of DESIGN.md with a place in its order"));
    }

    @ParameterizedTest
    @FieldSource("ORDER")
    void usesOnlyWhatStandsAbove(String name) {
        List<String> below = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size());
        if (!below.isEmpty()) {
            holds(noClasses()
                    .that()
                    .resideInAPackage("org.twinbar." + name + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(packages(below))
                    .because("what is calculated flows one way, from quantities to a verdict"));
        }
    }

    @ParameterizedTest
    @FieldSource("ALONE")
    void standsAlone(String name) {
        List<String> others =
                ORDER.stream().filter(other -> !other.equals(name)).toList();
        holds(noClasses()
                .that()
                .resideInAPackage("org.twinbar." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages(others))
                .because("it can be read, tested and reused without knowing what Twinbar is for"));
    }

    @Test
    void knowsNothingOfTheApp() {
        holds(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages(Ours.APP_PACKAGES))
                .because("core is a library of its own"));
    }

    @ParameterizedTest(allowZeroInvocations = true)
    @MethodSource("packagesOfMethods")
    void knowsATestMethodByItsDescriptionOnly(String methodPackage) {
        holds(
                Ours.ALL,
                noClasses()
                        .that()
                        .resideOutsideOfPackage(methodPackage + "..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage(methodPackage + "..")
                        .because("a test method is added as one package and one service entry"));
    }

    @Test
    void findsEveryTestMethodAsAService() throws ReflectiveOperationException {
        List<String> written = methods().map(JavaClass::getName).sorted().toList();
        if (!written.isEmpty()) {
            List<String> offered = ServiceLoader.load(Class.forName(Ours.TEST_METHOD)).stream()
                    .map(provider -> provider.type().getName())
                    .sorted()
                    .toList();
            assertThat(offered)
                    .as("entries of META-INF/services/%s", Ours.TEST_METHOD)
                    .isEqualTo(written);
        }
    }

    @Test
    void takesTranscendentalFunctionsFromStrictMath() {
        holds(noClasses()
                .should()
                .accessTargetWhere(target(owner(type(Math.class)))
                        .and(target(nameMatching("a?(sin|cos|tan)h?|atan2|exp|expm1|log|log10|log1p"
                                + "|pow|cbrt|hypot"))))
                .because("Math may answer otherwise on another JDK or processor"));
    }

    @Test
    void drawsNothingAtRandomByItself() {
        holds(noClasses()
                .should()
                .dependOnClassesThat(type(Random.class).or(type(ThreadLocalRandom.class)))
                .orShould()
                .accessTargetWhere(
                        target(owner(type(Math.class))).and(target(nameMatching("random"))))
                .orShould()
                .accessTargetWhere(target(nameMatching("randomUUID")))
                .because("a seed is a parameter, and a stranger's run draws the same numbers"));
    }

    @Test
    void readsNoClock() {
        holds(noClasses()
                .should()
                .accessTargetWhere(target(owner(resideInAnyPackage("java.time..")))
                        .and(target(nameMatching("now"))))
                .orShould()
                .accessTargetWhere(target(owner(type(System.class)))
                        .and(target(nameMatching("currentTimeMillis|nanoTime"))))
                .because("a verdict must not depend on when it is calculated"));
    }

    @Test
    void touchesNoFileNoNetworkAndNoEnvironment() {
        holds(noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "java.nio.file..",
                        "java.nio.channels..",
                        "java.net..",
                        "java.net.http..",
                        "java.sql.."))
                .orShould()
                .dependOnClassesThat(
                        nameMatching("java\\.io\\.(File|RandomAccess|Console|Print).*"))
                .orShould()
                .accessTargetWhere(target(owner(type(System.class)))
                        .and(target(nameMatching("getenv|getProperty"))))
                .because("readings come in as values, and answers go out as values"));
    }

    private static Stream<String> packagesOfMethods() {
        return methods().map(JavaClass::getPackageName).distinct();
    }

    private static Stream<JavaClass> methods() {
        return CORE.stream()
                .filter(type -> type.isAssignableTo(Ours.TEST_METHOD))
                .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
                .filter(type -> type.isTopLevelClass());
    }

    private static String[] packages(List<String> names) {
        return names.stream().map(name -> "org.twinbar." + name + "..").toArray(String[]::new);
    }

    private static void holds(ArchRule rule) {
        holds(CORE, rule);
    }

    private static void holds(JavaClasses classes, ArchRule rule) {
        rule.allowEmptyShould(true).check(classes);
    }
}
