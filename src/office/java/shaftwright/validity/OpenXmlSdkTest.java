package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.badinput.FileParts;

/**
 * The Open XML SDK's validator has nothing against what the commands write either. Making the files
 * takes longest, so the other checks are made here as well; the build leaves {@link
 * MadeWorkbooksTest} itself out where it runs this.
 */
class OpenXmlSdkTest extends MadeWorkbooksTest {
    @TempDir private Path folder;

    @Override
    List<Finding> findings(Path folder, Path file) {
        List<Finding> findings = super.findings(folder, file);
        findings.addAll(OpenXmlSdk.findings(folder, file));
        return findings;
    }

    /** Or the validator might see nothing. */
    @Test
    void seesAColourOfSixDigits() {
        Path file = MadeWorkbook.BLANK_INCH.in(folder);
        FileParts.of(file).replace("xl/styles.xml", "\"FFFFF4CC\"", "\"FFF4CC\"").write(file);

        assertThat(OpenXmlSdk.findings(folder, file))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.what()).contains("'FFF4CC'"));
    }
}
