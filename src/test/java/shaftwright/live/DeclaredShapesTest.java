package shaftwright.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.formula.FormulaSkeleton;

class DeclaredShapesTest {
    /** A check of a workbook takes one scenario's declared formula for all. */
    @Test
    void scenariosOfAFormulaDifferInPlacesOnly() {
        for (LiveLine line : LiveLines.all().lines()) {
            if (!line.grid().perScenario() || line.quantity() == Quantity.ORDINAL) {
                continue;
            }
            for (int row = 0; row < line.grid().rows(); row++) {
                FormulaSkeleton first = at(line, 0, row);
                for (int scenario = 1; scenario < Contract.USUAL_SCENARIOS; scenario++) {
                    assertThat(at(line, scenario, row)).as(line.name()).isEqualTo(first);
                }
            }
        }
    }

    private static FormulaSkeleton at(LiveLine line, int scenario, int row) {
        return FormulaSkeleton.of(line.formula().at(new Index(Side.RIGHT, scenario, row)));
    }
}
