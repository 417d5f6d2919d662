package shaftwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which package may use which, and where each library may be used at all. */
class ArchitectureTest {
    /** Pure: values in, values out. */
    private static final List<String> CORE =
            List.of(
                    "units",
                    "suspension",
                    "joint",
                    "strength",
                    "shaft",
                    "mockup",
                    "travel",
                    "tyre",
                    "doubt",
                    "build",
                    "study",
                    "functions");

    /** Around the core: workbooks, files, programs. */
    private static final List<String> EDGE =
            List.of(
                    "book",
                    "contract",
                    "formula",
                    "reading",
                    "live",
                    "filling",
                    "comparison",
                    "xlsx",
                    "template",
                    "jobs",
                    "calc",
                    "window",
                    "cli");

    /** A room may use those before it. */
    private static final List<String> ROOMS = Stream.concat(CORE.stream(), EDGE.stream()).toList();

    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("shaftwright");

    @Test
    void everyPackageHasItsPlace() {
        assertThat(CLASSES)
                .extracting(c -> c.getPackageName().substring("shaftwright.".length()))
                .isSubsetOf(ROOMS);
    }

    @Test
    void roomsUseOnlyThoseBeforeThem() {
        for (int room = 0; room < ROOMS.size() - 1; room++) {
            noClasses()
                    .that(resideInAPackage("shaftwright." + ROOMS.get(room)))
                    .should()
                    .dependOnClassesThat(
                            resideInAnyPackage(full(ROOMS.subList(room + 1, ROOMS.size()))))
                    .check(CLASSES);
        }
    }

    @Test
    void coreDoesNoInputOrOutput() {
        noClasses()
                .that(resideInAnyPackage(full(CORE)))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("java.io..", "java.nio..", "java.net..")
                                .and(DescribedPredicate.not(streamsOfPrimitives())))
                .check(CLASSES);
    }

    /** What serialisable exceptions and records drag in by themselves. */
    private static DescribedPredicate<JavaClass> streamsOfPrimitives() {
        return DescribedPredicate.describe(
                "serialisation's own", c -> c.getFullName().equals("java.io.Serializable"));
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("shaftwright.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void poiIsUsedByTemplatesOnly() {
        only("template", "org.apache.poi..", "org.openxmlformats..", "org.apache.xmlbeans..");
    }

    @Test
    void picocliAndJacksonAreUsedByCommandsOnly() {
        only("cli", "picocli..", "com.fasterxml.jackson..");
    }

    @Test
    void unoIsUsedByTheExtensionOnly() {
        only("calc", "com.sun.star..");
    }

    @Test
    void flatLafIsUsedByTheWindowOnly() {
        only("window", "com.formdev.flatlaf..");
    }

    @Test
    void swingIsUsedByTheWindowOnly() {
        only("window", "javax.swing..");
    }

    private static void only(String user, String... libraries) {
        noClasses()
                .that(DescribedPredicate.not(resideInAnyPackage("shaftwright." + user)))
                .should()
                .dependOnClassesThat(resideInAnyPackage(libraries))
                .check(CLASSES);
    }

    @Test
    void nothingIsLogged() {
        noClasses()
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(
                                "java.util.logging..", "org.apache.logging..", "org.slf4j.."))
                .check(CLASSES);
    }

    @Test
    void coreDoesNotReflect() {
        noClasses()
                .that(resideInAnyPackage(full(CORE)))
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.lang.reflect.."))
                .check(CLASSES);
    }

    private static String[] full(List<String> names) {
        return names.stream().map(name -> "shaftwright." + name).toArray(String[]::new);
    }
}
