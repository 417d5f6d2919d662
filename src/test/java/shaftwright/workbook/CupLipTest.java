package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.xlsx.XlsxBook;

/** Lips in the cups of the demo's joints that the shaft meets. Their figures are invented. */
class CupLipTest {
    /** Scenario with two joints of the second row, whose lip the tests type. */
    private static final int LIPPED = 4;

    @TempDir private Path folder;

    private Path typed(String radius, String depth) {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("joint_lip_radius", List.of("22 mm", radius));
        typed.put("joint_lip_depth", List.of("-18 mm", depth));
        return DemoBook.write(folder.resolve("lips.xlsx"), typed, DemoBook.scenarios());
    }

    @Test
    void everyFormulaGivesWhatTheCoreGivesOnBothSidesOfALip() throws Exception {
        Path file = typed("19 mm", "20 mm");

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
    }

    @Test
    void aShaftThatTouchesALipOnlyWhenItFloatsDoesNotFit() {
        assertThat(findings("19 mm", "20 mm")).contains(Finding.TOUCHES_CUP);
    }

    @Test
    void aShaftThatTouchesALipBehindItsRaceDoesNotFit() {
        assertThat(findings("15 mm", "-20 mm")).contains(Finding.TOUCHES_CUP);
    }

    private List<Finding> findings(String radius, String depth) {
        Sizing sizing = Filling.compute(XlsxBook.open(typed(radius, depth))).sizing().orElseThrow();
        return sizing.verdict(new Index(Side.LEFT, LIPPED, 0)).orElseThrow().findings();
    }
}
