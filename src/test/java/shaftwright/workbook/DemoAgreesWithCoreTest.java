package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.xlsx.XlsxBook;

/**
 * Two computations, one answer: every live formula of the demo workbook, computed by Apache POI's
 * evaluator, gives what the core gives.
 */
class DemoAgreesWithCoreTest {
    /** Fewer cells than this would mean that formulas were not looked at. */
    private static final int MANY = 20_000;

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"A", "E"})
    void everyFormulaGivesWhatTheCoreGives(String scenario) throws Exception {
        Map<String, List<String>> typed = new HashMap<>(DemoBook.typed());
        typed.put("shop_scenario", List.of(scenario));
        Path demo = DemoBook.write(folder.resolve("demo.xlsx"), typed, DemoBook.scenarios());
        try (PoiRecalculation poi = PoiRecalculation.of(demo)) {
            Agreement agreement = Agreement.of(XlsxBook.open(demo), poi::value);
            assertThat(agreement.differences()).isEmpty();
            assertThat(agreement.cells()).isGreaterThan(MANY);
        }
    }
}
