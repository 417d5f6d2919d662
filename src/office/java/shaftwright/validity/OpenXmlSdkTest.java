package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shaftwright.badinput.FileParts;

/** The Open XML SDK's validator has nothing against what the commands write. */
class OpenXmlSdkTest {
    @TempDir private Path folder;

    @ParameterizedTest
    @MethodSource("shaftwright.validity.MadeWorkbook#chosen")
    void hasNothingAgainstTheFile(MadeWorkbook made) {
        assertThat(OpenXmlSdk.findings(folder, made.in(folder))).isEmpty();
    }

    /** Or the test above could not fail. */
    @Test
    void seesAColourOfSixDigits() {
        Path file = MadeWorkbook.BLANK_INCH.in(folder);
        FileParts.of(file).replace("xl/styles.xml", "\"FFFFF4CC\"", "\"FFF4CC\"").write(file);

        assertThat(OpenXmlSdk.findings(folder, file))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.what()).contains("'FFF4CC'"));
    }
}
