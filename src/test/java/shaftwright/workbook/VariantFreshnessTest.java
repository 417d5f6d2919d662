package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.filling.TypedOver;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.reading.Sizing;

/** The fingerprint over the varied scenario's figures: no number moves them unseen. */
class VariantFreshnessTest {
    private static final Index ONLY = new Index(Side.LEFT, 0, 0);
    private static final Grid[] GRIDS = {
        Grid.BOOK, Grid.SCENARIO, Grid.JOINT, Grid.BOOT, Grid.BLANK, Grid.BENCH, Grid.READING
    };

    @TempDir private static Path folder;
    private static TypedOver demo;

    @BeforeAll
    static void write() {
        demo = TypedOver.of(DemoBook.write(folder.resolve("demo.xlsx")));
    }

    private static Filling.Report with(String name, int place, String text) {
        List<TypedColumn> typed =
                name.isEmpty()
                        ? List.of()
                        : List.of(new TypedColumn(name, new TreeMap<>(Map.of(place, text)), false));
        return demo.with(typed);
    }

    /** What a fill writes into the blocks of the varied scenario. */
    private static List<CellValue> figures(Sizing sizing) {
        List<CellValue> figures = new ArrayList<>();
        for (LiveLine line : LiveLines.all().lines()) {
            boolean ofVariants =
                    line.section() == Section.LEVER_BLOCK || line.section() == Section.SWEEP_BLOCK;
            for (int row = 0; ofVariants && line.isEngine() && row < line.grid().rows(); row++) {
                figures.add(line.core().at(sizing, new Index(Side.LEFT, 0, row)));
            }
        }
        return figures;
    }

    private static CellValue print(Sizing sizing) {
        return LiveLines.all().line("variants_print").core().at(sizing, ONLY);
    }

    @Test
    void everyNumberThatMovesAFigureMovesTheFingerprint() {
        Sizing before = with("", 0, "").sizing().orElseThrow();
        List<CellValue> figures = figures(before);
        int moved = 0;
        for (Grid grid : GRIDS) {
            for (Input input : Contract.inputs(grid)) {
                // Scenario B is the one varied, and the third joint its.
                int place = grid == Grid.SCENARIO ? 1 : grid == Grid.JOINT ? 2 : 1;
                place = grid == Grid.BOOK ? 0 : place;
                double number = before.inputs().number(input.name(), at(grid, place));
                if (!input.kind().numeric() || Double.isNaN(number)) {
                    continue;
                }
                double other = input.kind().typed(number, before.unit()) * 1.06 + 0.11;
                String text = input.kind() == InputKind.COUNT ? "29" : String.valueOf(other);
                Filling.Report report = with(input.definedName(Side.LEFT), place, text);
                if (!report.hasErrors()
                        && !figures(report.sizing().orElseThrow()).equals(figures)) {
                    moved++;
                    assertThat(print(report.sizing().orElseThrow()))
                            .as(input.name())
                            .isNotEqualTo(print(before));
                }
            }
        }
        assertThat(moved).isGreaterThan(25);
    }

    private static Index at(Grid grid, int place) {
        return grid == Grid.SCENARIO
                ? new Index(Side.LEFT, place, 0)
                : new Index(Side.LEFT, 0, place);
    }

    @Test
    void choicesThatMoveAFigureMoveTheFingerprint() {
        Sizing before = with("", 0, "").sizing().orElseThrow();
        String[][] changes = {
            {"try_scenario", "0", "D"},
            {"sweep_across", "0", "hubs outward"},
            {"sweep_down", "0", "droop travel"},
            {"joint_outward_stop", "2", "soft"},
            {"blank_in_stock", "1", "no"},
            {"joint_inner", "1", "113 mm six-ball plunging joint"},
            {"boot_outer", "1", "long-travel boot"},
            {"blank_choice", "1", "31-spline blank 24 5/8 in"},
            {"bump_rule", "1", "clearance"},
        };
        for (String[] change : changes) {
            Sizing after =
                    with(change[0], Integer.parseInt(change[1]), change[2]).sizing().orElseThrow();
            assertThat(figures(after)).as(change[0]).isNotEqualTo(figures(before));
            assertThat(print(after)).as(change[0]).isNotEqualTo(print(before));
        }
    }

    @Test
    void aRangeThatCannotBeTriedIsSaidAndLeavesTheGridEmpty() {
        Filling.Report report = with("sweep_across_first", 0, "40");

        assertThat(report.hasErrors()).isFalse();
        assertThat(report.problems().toString()).contains("upward").contains("stays empty");
        assertThat(report.sizing().orElseThrow().variants().sweep()).isEmpty();
    }

    @Test
    void aLetterThatIsNoScenarioIsSaid() {
        Filling.Report report = with("try_scenario", 0, "Z");

        assertThat(report.problems().toString()).contains("no changes are tried");
        assertThat(report.sizing().orElseThrow().variants().levers()).isEmpty();
    }

    @Test
    void aColumnWithoutANameIsSaidToHaveNothingToTry() {
        Filling.Report report = with("scenario_name", 1, "");

        assertThat(report.problems().toString())
                .contains("found \"B\"; expected a scenario that has a name");
    }
}
