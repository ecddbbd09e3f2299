package org.twinbar;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

/** What the packages of the app may know of each other and of core. */
class AppArchitectureTest {

    private static final String[] DATABASE = {
        "java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "org.sqlite..", "com.zaxxer.."
    };

    private static final DescribedPredicate<JavaAccess<?>> TAKES_THE_LOCALE_UNASKED =
            DescribedPredicate.describe(
                    "the machine's locale is taken unasked", AppArchitectureTest::takesTheLocale);

    private static final Set<String> LOCALE_TAKERS = Set.of(
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.io.PrintStream.printf(java.lang.String, [Ljava.lang.Object;)",
            "java.io.PrintStream.format(java.lang.String, [Ljava.lang.Object;)",
            "java.io.PrintWriter.printf(java.lang.String, [Ljava.lang.Object;)",
            "java.io.PrintWriter.format(java.lang.String, [Ljava.lang.Object;)",
            "java.util.Formatter.<init>()",
            "java.text.DecimalFormat.<init>(java.lang.String)",
            "java.text.NumberFormat.getInstance()",
            "java.text.SimpleDateFormat.<init>(java.lang.String)",
            "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)");

    @Test
    void findsTheClassesOfTheApp() {
        assertThat(Ours.APP)
                .isNotEmpty()
                .extracting(JavaClass::getPackageName)
                .as("packages of the app")
                .allMatch(found -> Ours.APP_PACKAGES.stream()
                        .anyMatch(known -> found.startsWith("org.twinbar." + known)));
    }

    @Test
    void keepsTheDatabaseInTheStore() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage("org.twinbar.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(DATABASE)
                .because("the store is the only user of SQL, so that it can be changed alone"));
    }

    @Test
    void reportNeverTouchesTheStore() {
        holds(noClasses()
                .that()
                .resideInAPackage("org.twinbar.report..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.twinbar.store..")
                .because("a report shows what was calculated and can be drawn from anywhere"));
    }

    @Test
    void theTwoDoorsDoNotKnowEachOther() {
        holds(noClasses()
                .that()
                .resideInAPackage("org.twinbar.web..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.twinbar.cli..")
                .because("pages and commands are two doors to the same use cases"));
        holds(noClasses()
                .that()
                .resideInAPackage("org.twinbar.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.twinbar.web..")
                .because("pages and commands are two doors to the same use cases"));
    }

    @Test
    void studyAloneKnowsCoreAndStoreTogether() {
        DescribedPredicate<JavaClass> core = DescribedPredicate.describe(
                "are in core", used -> Ours.CORE.contain(used.getName()));
        holds(noClasses()
                .that()
                .resideInAPackage("org.twinbar.store..")
                .should()
                .dependOnClassesThat(core)
                .because("what is stored are entries; what they mean is the business of study"));
        holds(noClasses()
                .that()
                .resideOutsideOfPackages(
                        "org.twinbar.study..", "org.twinbar.store..", "org.twinbar.app..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.twinbar.store..")
                .because("study turns entries into values of core; Main hands it the store"));
    }

    @Test
    void pointsOneWay() {
        holds(slices().matching("org.twinbar.(**)").should().beFreeOfCycles());
    }

    @Test
    void nobodyUsesMain() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage("org.twinbar.app..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.twinbar.app..")
                .because("Main wires the parts and does nothing else"));
    }

    @Test
    void onlyTheCommandLineSpeaksToTheStandardStreams() {
        DescribedPredicate<JavaAccess<?>> stream = target(owner(type(System.class)))
                .and(target(nameMatching("out|err|in|setOut|setErr")));
        holds(
                Ours.ALL,
                noClasses()
                        .that()
                        .resideOutsideOfPackages("org.twinbar.cli..", "org.twinbar.app..")
                        .should()
                        .accessTargetWhere(stream)
                        .because("JSON goes to standard output alone, and only cli knows when"));
    }

    @Test
    void nothingDependsOnTheMachinesLocaleOrZone() {
        DescribedPredicate<JavaAccess<?>> asks = target(
                        owner(type(Locale.class).or(type(TimeZone.class))))
                .and(target(name("getDefault")))
                .or(target(owner(type(ZoneId.class))).and(target(name("systemDefault"))));
        holds(
                Ours.ALL,
                noClasses()
                        .that()
                        .resideOutsideOfPackage("org.twinbar.app..")
                        .should()
                        .accessTargetWhere(asks.or(TAKES_THE_LOCALE_UNASKED))
                        .because("the same readings give the same page everywhere; Main hands the"
                                + " zone to whoever writes down when something was entered"));
    }

    private static boolean takesTheLocale(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget called
                && LOCALE_TAKERS.contains(called.getFullName());
    }

    private static void holds(ArchRule rule) {
        holds(Ours.APP, rule);
    }

    private static void holds(JavaClasses classes, ArchRule rule) {
        rule.allowEmptyShould(true).check(classes);
    }
}
