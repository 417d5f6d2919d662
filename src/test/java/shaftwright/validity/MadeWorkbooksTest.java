package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the commands write breaks no schema and no rule that Excel would repair a file for. */
class MadeWorkbooksTest {
    @TempDir private Path folder;

    @ParameterizedTest
    @MethodSource("shaftwright.validity.MadeWorkbook#chosen")
    void isValid(MadeWorkbook made) {
        assertThat(findings(folder, made.in(folder))).isEmpty();
    }

    /** All that can be found wrong with a file. */
    List<Finding> findings(Path folder, Path file) {
        List<Finding> findings = new ArrayList<>(SchemaCheck.of(file));
        findings.addAll(PackageCheck.of(file));
        return findings;
    }
}
