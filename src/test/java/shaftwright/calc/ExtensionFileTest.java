package shaftwright.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;

/** The extension's jar, without LibreOffice. */
class ExtensionFileTest {
    private static final List<String> LIBRARIES = List.of("lib/one.jar", "lib/two.jar");

    /** Or a command of the menu would end in a missing class. */
    @Test
    void classesOfTheExtensionNeedNoneThatAreLeftOut() throws Exception {
        Set<String> packed = ExtensionFile.jar(classes(), LIBRARIES).keySet();
        Set<String> missing = new TreeSet<>();
        for (JavaClass each : new ClassFileImporter().importPath(classes())) {
            if (packed.contains(entry(each))) {
                for (Dependency dependency : each.getDirectDependenciesFromSelf()) {
                    JavaClass needed = dependency.getTargetClass().getBaseComponentType();
                    if (needed.getName().startsWith("shaftwright.")
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
        assertThat(ExtensionFile.jar(classes(), LIBRARIES).keySet())
                .first()
                .isEqualTo("META-INF/MANIFEST.MF");
    }

    /** And what the commands on files need besides: one missing would end them in the midst. */
    @Test
    void librariesLieBesideTheJarAndAreNamedInIt() throws Exception {
        byte[] manifest = ExtensionFile.jar(classes(), LIBRARIES).get("META-INF/MANIFEST.MF");

        assertThat(new Manifest(new ByteArrayInputStream(manifest)).getMainAttributes())
                .containsEntry(Attributes.Name.CLASS_PATH, "lib/one.jar lib/two.jar");
    }

    @Test
    void librariesOfTerminalAndWindowStayOut() {
        String classPath =
                String.join(
                        File.pathSeparator,
                        "target/classes",
                        "poi/poi-5.5.1.jar",
                        "picocli/picocli-4.7.7.jar",
                        "libreoffice/libreoffice-7.4.1.jar");

        assertThat(ExtensionFile.libraries(classPath))
                .containsExactly(Map.entry("lib/poi-5.5.1.jar", Path.of("poi/poi-5.5.1.jar")));
    }

    private static String entry(JavaClass each) {
        return each.getName().replace('.', '/') + ".class";
    }

    private static Path classes() throws URISyntaxException {
        return Path.of(
                ExtensionFile.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    }
}
