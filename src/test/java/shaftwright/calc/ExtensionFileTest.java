package shaftwright.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The extension's jar, without LibreOffice. */
class ExtensionFileTest {
    /** What LibreOffice does not bring itself. */
    private static final List<String> BROUGHT = List.of("shaftwright.", "org.hipparchus.");

    /** Or a command of the menu would end in a missing class. */
    @Test
    void classesOfTheExtensionNeedNoneThatAreLeftOut() throws Exception {
        Set<String> packed = ExtensionFile.jar(classes()).keySet();
        Set<String> missing = new TreeSet<>();
        for (JavaClass each : new ClassFileImporter().importPath(classes())) {
            if (packed.contains(entry(each))) {
                for (Dependency dependency : each.getDirectDependenciesFromSelf()) {
                    JavaClass needed = dependency.getTargetClass().getBaseComponentType();
                    if (BROUGHT.stream().anyMatch(needed.getName()::startsWith)
                            && !packed.contains(entry(needed))) {
                        missing.add(each.getName() + " needs " + needed.getName());
                    }
                }
            }
        }

        assertThat(missing).isEmpty();
        assertThat(packed)
                .contains("shaftwright/filling/Filling.class")
                .noneMatch(name -> name.startsWith("shaftwright/cli/"));
    }

    /** Else LibreOffice does not find what the jar registers, and knows none of the functions. */
    @Test
    void manifestIsTheFirstEntry() throws Exception {
        assertThat(ExtensionFile.jar(classes()).keySet()).first().isEqualTo("META-INF/MANIFEST.MF");
    }

    private static String entry(JavaClass each) {
        return each.getName().replace('.', '/') + ".class";
    }

    private static Path classes() throws URISyntaxException {
        return Path.of(
                ExtensionFile.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    }
}
