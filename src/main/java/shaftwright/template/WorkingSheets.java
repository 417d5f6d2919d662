package shaftwright.template;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.formula.TapeFormula;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/** The working figures in mm and rad behind everything that is shown. */
final class WorkingSheets {
    /** Of what both sides have in common. */
    static final String NAME = "Working";

    private static final int FIRST = ScenariosSheet.FIRST;
    private static final int MOST_COLUMNS = 46;

    private final Draft draft;
    private final XSSFSheet sheet;
    private final Side side;
    private int row = 2;

    private WorkingSheets(Draft draft, String name, Side side) {
        this.draft = draft;
        this.side = side;
        sheet = draft.largeSheet(name);
        sheet.setColumnWidth(0, 34 * 256);
        for (int column = FIRST; column < MOST_COLUMNS; column++) {
            sheet.setColumnWidth(column, 13 * 256);
        }
        draft.title(sheet, name + ": mm, rad; leave as it is");
        draft.printout(sheet).onePageWide();
        sheet.createFreezePane(1, 0);
    }

    static String name(Side side) {
        return NAME + " " + side.word();
    }

    static void lay(Draft draft) {
        WorkingSheets shared = new WorkingSheets(draft, NAME, Side.LEFT);
        shared.singles(Section.BOOK_WORK, Grid.BOOK, "Single figures");
        shared.across(Section.SCENARIO_WORK, "Scenarios as numbers");
        shared.columns(Section.PARTS_WORK, Grid.JOINT_SLOT, "Joints as numbers");
        shared.columns(Section.PARTS_WORK, Grid.BLANK_SLOT, "Blanks as numbers");
        shared.columns(Section.PARTS_WORK, Grid.BOOT_SLOT, "Boots as numbers");
        shared.columns(Section.PARTS_WORK, Grid.SPLINE_SLOT, "Splines as numbers");
        shared.columns(Section.PARTS_WORK, Grid.SPLINE_PAIR, "Splines beside splines");
        shared.columns(Section.PARTS_WORK, Grid.BENCH_SLOT, "Bench tables as numbers");
        shared.columns(Section.PARTS_WORK, Grid.MATERIAL_SLOT, "Materials as numbers");
        shared.columns(Section.PARTS_WORK, Grid.RATED_SLOT, "Ratings of joints and bolts");
        shared.columns(Section.PARTS_WORK, Grid.RATING_SLOT, "Ratings of other parts");
        shared.columns(Section.PARTS_WORK, Grid.DUTY_SLOT, "Duty of the joints");
        shared.columns(Section.PARTS_WORK, Grid.DOUBT_SLOT, "Doubt of lengths");
        shared.columns(Section.PARTS_WORK, Grid.RESTRAINT_SLOT, "Dampers and straps as numbers");
        shared.columns(Section.PARTS_WORK, Grid.TUBE_SLOT, "Tubes as numbers");
        shared.columns(Section.PARTS_WORK, Grid.OWN_POINT_SLOT, "Points of scenarios as numbers");
        shared.columns(Section.PARTS_WORK, Grid.LIMIT, "Travel limits of all joints");
        shared.columns(Section.VIEW_ORDER, Grid.VIEW_ORDER, "Line along the linkage");
        shared.fractions();
        for (Side side : Side.values()) {
            WorkingSheets own = new WorkingSheets(draft, name(side), side);
            own.singles(Section.PATH_WORK, Grid.SIDE, "Single figures");
            own.columns(Section.PATH_WORK, Grid.READING_SLOT, "Readings");
            own.columns(Section.PATH_WORK, Grid.TERM, "Orthogonal polynomials");
            own.columns(Section.PATH_WORK, Grid.LINKAGE_POINT, "Points of the linkage");
            own.columns(Section.PATH_WORK, Grid.POWER, "Hub path in powers of normalised travel");
            own.columns(Section.PATH_WORK, Grid.OWN_POINT_SIDE, "Points of scenarios");
            own.singles(Section.LINKAGE_CURVES, Grid.SIDE, "Linkage, by the last fill");
            own.columns(
                    Section.LINKAGE_CURVES,
                    Grid.POWER,
                    "Its curves in powers of normalised travel, by the same fill");
            own.across(Section.SIDE_WORK, "Set-up, window, choice");
            if (draft.unit() != LengthUnit.INCH) {
                // Empty there, but names that every workbook has.
                own.across(Section.FRACTIONS, "Lengths as fractions of an inch");
            }
            own.columns(Section.POSITION_WORK, Grid.POSITION, "Positions");
            own.columns(Section.OWN_CURVES, Grid.SCENARIO_POWER, "Curves of scenarios' own points");
            own.columns(Section.BLANK_WORK, Grid.BLANK_REVIEW, "Blanks");
            own.singles(Section.STICK_WORK, Grid.STICK, "Mock-up stick");
            own.columns(Section.STICK_WORK, Grid.STICK_READING, "Mock-up stick, readings");
            own.columns(Section.BUILT_WORK, Grid.AS_CUT, "Finished shaft");
            own.columns(Section.BUILT_WORK, Grid.BUILT, "Finished shaft, assembled");
            if (draft.amongOthers()) {
                own.across(Section.CHART_LEGEND, "Lines in the charts");
            }
            own.columns(Section.CHART_LIMITS, Grid.CHART_POINT, "Limits in the charts");
            own.singles(Section.SHAFT_SIZES, Grid.SIDE, "Card's drawing");
            own.columns(Section.SHAFT_DRAWING, Grid.DRAWN_POINT, "Card's drawing: points");
            own.singles(Section.VIEW_WORK, Grid.SIDE, "Drawing");
            own.columns(Section.VIEW_WORK, Grid.POWER, "Drawing: hub path");
            own.columns(Section.VIEW_WORK, Grid.VIEW_STAND, "Drawing: droop, ride, bump");
            own.columns(Section.VIEW_WORK, Grid.VIEW_WAY, "Drawing: the outer datum's way");
            own.columns(Section.VIEW_WORK, Grid.LINKAGE_POINT, "Drawing: points of the linkage");
            own.columns(Section.VIEW_WORK, Grid.VIEW_SPOT, "Drawing: points in squares");
        }
    }

    private List<LiveLine> lines(Section section, Grid grid) {
        List<LiveLine> found = new ArrayList<>();
        for (LiveLine line : LiveLines.all().in(section)) {
            if (line.grid() == grid) {
                found.add(line);
            }
        }
        return found;
    }

    private void singles(Section section, Grid grid, String title) {
        Page.heading(draft, sheet, row++, FIRST + draft.scenarios(), title);
        for (LiveLine line : lines(section, grid)) {
            label(line);
            live(line, row++, FIRST, Direction.DOWN);
        }
        row++;
    }

    private void across(Section section, String title) {
        Page.letters(draft, sheet, row, FIRST + draft.scenarios(), title);
        row++;
        for (LiveLine line : LiveLines.all().in(section)) {
            label(line);
            live(line, row++, FIRST, Direction.ACROSS);
        }
        row++;
    }

    private void label(LiveLine line) {
        draft.text(
                sheet,
                row,
                0,
                Page.label(line, draft.unit()) + "  [" + line.name() + "]",
                draft.look().note());
        draft.height(sheet, row, 24);
    }

    private void columns(Section section, Grid grid, String title) {
        List<LiveLine> lines = lines(section, grid);
        Page.heading(draft, sheet, row++, FIRST + lines.size(), title);
        int column = FIRST;
        for (LiveLine line : lines) {
            draft.text(sheet, row, column, line.name(), draft.look().note());
            // The cell above its figures is what a chart calls a line.
            draft.text(
                    sheet,
                    row + 1,
                    column,
                    Page.label(line, draft.unit()),
                    draft.look().columnHead());
            live(line, row + 2, column++, Direction.DOWN);
        }
        draft.height(sheet, row, 26);
        draft.height(sheet, row + 1, 54);
        int cells = grid.cells(draft.scenarios());
        for (int offset = 0; offset < cells; offset++) {
            draft.text(sheet, row + 2 + offset, 0, rowLabel(grid, offset), draft.look().note());
        }
        row += 2 + cells + 1;
    }

    private String rowLabel(Grid grid, int offset) {
        if (!grid.perScenario()) {
            return String.valueOf(offset + 1);
        }
        String letter = ScenarioOutcome.letter(offset / grid.rows());
        int number = offset % grid.rows();
        return letter
                + "  "
                + (grid == Grid.POSITION ? TablesSheet.step(number) : String.valueOf(number + 1));
    }

    private void live(LiveLine line, int atRow, int column, Direction direction) {
        draft.live(
                line, side, sheet, atRow, column, direction, draft.look().working(line.quantity()));
    }

    /** Fractions as a tape shows them. */
    private void fractions() {
        Page.heading(draft, sheet, row++, FIRST + 2, "Fractions");
        List<TapeFormula.FractionRow> rows = TapeFormula.fractionRows();
        draft.constants("tape_fraction", sheet, row, FIRST, rows.size(), 2);
        for (TapeFormula.FractionRow fraction : rows) {
            draft.text(
                    sheet,
                    row,
                    FIRST,
                    fraction.text(),
                    draft.look().working(shaftwright.live.Quantity.TEXT));
            draft.number(sheet, row, FIRST + 1, fraction.value());
            row++;
        }
    }
}
