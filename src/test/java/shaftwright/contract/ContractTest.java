package shaftwright.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.units.LengthUnit;

/** The declarations that everything else reads. */
class ContractTest {
    private static List<String> definedNames() {
        List<String> names = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Input input : Contract.inputs()) {
                if (input.grid().sided() || side == Side.LEFT) {
                    names.add(input.definedName(side));
                }
            }
            for (LiveLine line : LiveLines.all().lines()) {
                if (line.grid().sided() || side == Side.LEFT) {
                    names.add(line.definedName(side));
                }
            }
        }
        return names;
    }

    @Test
    void everyDefinedNameOccursOnceWhateverItsCase() {
        Set<String> seen = new HashSet<>();
        for (String name : definedNames()) {
            assertThat(seen.add(name.toLowerCase(Locale.ROOT))).as(name).isTrue();
        }
    }

    /** Names such as A1, R1C1 or XFD1 are cells to a spreadsheet (ECMA-376 part 1, 18.2.5). */
    @Test
    void noDefinedNameLooksLikeACell() {
        assertThat(definedNames())
                .allMatch(name -> name.matches("[a-z][a-z0-9]*(_[a-z0-9]+)*"))
                .noneMatch(name -> name.matches("[a-z]{1,3}[0-9]+"))
                .noneMatch(name -> name.matches("r[0-9]*(c[0-9]*)?|c[0-9]*"));
    }

    @Test
    void everyInputSaysWhatItMeansInWordsThatFitACellsNote() {
        for (Input input : Contract.inputs()) {
            assertThat(input.meaning()).as(input.name()).isNotBlank().hasSizeLessThan(200);
            assertThat(input.label()).as(input.name()).isNotBlank();
        }
    }

    /**
     * A program that completes what is typed by texts of the column made "0.8 mm" of a typed 0, and
     * "1/16" of a 1; it leaves numbers alone.
     */
    @Test
    void newWorkbookStartsWithNumbersThatNoTypedLengthIsCompletedTo() {
        for (Input input : Contract.inputs()) {
            if (input.kind() == InputKind.LENGTH) {
                for (LengthUnit unit : LengthUnit.values()) {
                    assertThat(input.start(unit))
                            .as(input.name())
                            .isNotInstanceOf(CellValue.Text.class);
                }
            }
        }
    }

    @Test
    void everyUsualRangeLiesInsideTheAllowedOne() {
        for (Input input : Contract.inputs()) {
            assertThat(input.usual().least())
                    .as(input.name())
                    .isGreaterThanOrEqualTo(input.allowed().least());
            assertThat(input.usual().most())
                    .as(input.name())
                    .isLessThanOrEqualTo(input.allowed().most());
        }
    }

    /** Longest formula that spreadsheet programs take (ECMA-376 leaves it open, Excel 8,192). */
    @Test
    void everyFormulaIsShortEnough() {
        for (LiveLine line : LiveLines.all().lines()) {
            for (int row = 0; row < line.grid().rows(); row++) {
                for (Side side : Side.values()) {
                    assertThat(line.formula().at(new Index(side, 0, row)))
                            .as(line.name())
                            .hasSizeLessThan(7_500);
                }
            }
        }
    }
}
