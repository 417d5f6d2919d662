package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.xlsx.XlsxBook;

/**
 * Two computations, one answer: every live formula of the demo workbook, computed by Apache POI's
 * evaluator, gives what the core gives.
 */
class DemoAgreesWithCoreTest {
    /** Fewer cells than this would mean that formulas were not looked at. */
    private static final int MANY = 20_000;

    @TempDir Path folder;

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws Exception {
        Path demo = DemoBook.write(folder.resolve("demo.xlsx"));
        try (PoiRecalculation poi = PoiRecalculation.of(demo)) {
            Agreement agreement = Agreement.of(XlsxBook.open(demo), poi::value);
            assertThat(agreement.differences()).isEmpty();
            assertThat(agreement.cells()).isGreaterThan(MANY);
        }
    }
}
