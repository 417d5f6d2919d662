package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.filling.Filling;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/**
 * The demo with one number at an end of what its cell allows: a builder's cells may contradict each
 * other, which is said of a cell or of a scenario, but never look like a slip of the program.
 */
class AllowedNumbersTest {
    @TempDir Path folder;

    private InputValues demo;

    @BeforeEach
    void readTheDemo() {
        XlsxBook book = XlsxBook.open(DemoBook.write(folder.resolve("demo.xlsx")));
        demo = Filling.compute(book).sizing().orElseThrow().inputs();
    }

    @Test
    void areComputedOrComplainedOf() {
        List<String> slips = new ArrayList<>();
        for (Input input : Contract.inputs()) {
            if (!input.kind().numeric()) {
                continue;
            }
            for (double end : new double[] {input.allowed().least(), input.allowed().most()}) {
                double inside = input.kind() == InputKind.ANGLE ? Math.toRadians(end) : end;
                InputValues changed = demo.with(input.name(), new Index(Side.LEFT, 0, 0), inside);
                try {
                    Sizing sizing = Sizing.of(changed, new ArrayList<>());
                    assertThat(sizing.scenarios()).isNotEmpty();
                } catch (IllegalArgumentException e) {
                    slips.add(input.name() + " = " + end + ": " + e.getMessage());
                }
            }
        }
        assertThat(slips).isEmpty();
    }
}
