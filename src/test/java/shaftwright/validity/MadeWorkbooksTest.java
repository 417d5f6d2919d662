package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the commands write breaks no schema and no rule that Excel would repair a file for. */
class MadeWorkbooksTest {
    @TempDir private Path folder;

    @ParameterizedTest
    @MethodSource("shaftwright.validity.MadeWorkbook#chosen")
    void isValidByTheSchemasAndTheRulesBesides(MadeWorkbook made) {
        Path file = made.in(folder);

        assertThat(SchemaCheck.of(file)).isEmpty();
        assertThat(PackageCheck.of(file)).isEmpty();
    }
}
