package org.twinbar;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;

/** The classes of Twinbar without its tests, read once for all architecture rules. */
final class Ours {

    static final String TEST_METHOD = "org.twinbar.method.TestMethod";

    static final List<String> APP_PACKAGES =
            List.of("study", "store", "exchange", "report", "web", "cli", "app", "demo");

    static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.twinbar");

    static final JavaClasses APP = ALL.that(inApp());
    static final JavaClasses CORE = ALL.that(DescribedPredicate.not(inApp()));

    private Ours() {}

    private static DescribedPredicate<JavaClass> inApp() {
        return resideInAnyPackage(APP_PACKAGES.stream()
                .map(name -> "org.twinbar." + name + "..")
                .toArray(String[]::new));
    }
}
