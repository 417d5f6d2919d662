package shaftwright.template;

import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/** What all sheets have in common: labels with units, headings, widths. */
final class Page {
    private static final double LINE_POINTS = 13;

    /** Letters are narrower than the digits that widths are counted in. */
    private static final double LETTERS = 1.2;

    /** Letters of a line that stay empty where a word is wrapped. */
    private static final double WRAPPED = 5;

    /** Spreadsheet programs make no row higher. */
    private static final double HIGHEST_ROW = 409;

    private Page() {}

    /** A label with the unit in which its cells are read. */
    static String label(Input input, LengthUnit unit) {
        String symbol = input.kind().symbol(unit);
        return symbol.isEmpty() ? input.label() : input.label() + ", " + symbol;
    }

    static String label(LiveLine line, LengthUnit unit) {
        return switch (line.quantity()) {
            case SHOWN_LENGTH -> line.label() + ", " + unit.symbol();
            case MILLIMETRE -> line.label() + ", mm";
            case DEGREE -> line.label() + ", °";
            case RADIAN -> line.label() + ", rad";
            case TORQUE -> line.label() + ", " + InputKind.TORQUE.symbol(unit);
            default -> line.label();
        };
    }

    /** Column widths in characters, from the first column on. */
    static void widths(XSSFSheet sheet, int... characters) {
        for (int column = 0; column < characters.length; column++) {
            sheet.setColumnWidth(column, characters[column] * 256);
        }
    }

    /** Height of a row that holds a text of so many characters in a cell so wide, points. */
    static float points(int characters, int width) {
        double lines = Math.ceil(characters / (LETTERS * width - WRAPPED));
        return (float) Math.min(HIGHEST_ROW, 2 + LINE_POINTS * lines);
    }

    /**
     * Results of one side below their labels, one column a line, from a column on.
     *
     * @return the column behind the last
     */
    static int results(
            Draft draft, XSSFSheet sheet, int labels, int first, Section section, Side side) {
        int column = first;
        for (LiveLine line : LiveLines.all().in(section)) {
            draft.text(sheet, labels, column, label(line, draft.unit()), draft.look().columnHead());
            draft.live(
                    line,
                    side,
                    sheet,
                    labels + 1,
                    column++,
                    Direction.DOWN,
                    draft.look().result(line.quantity()));
        }
        return column;
    }

    /** Width of a sheet's first columns, in characters. */
    static int width(XSSFSheet sheet, int columns) {
        return width(sheet, 0, columns);
    }

    /** Width of the columns from one to before another, in characters. */
    static int width(XSSFSheet sheet, int from, int to) {
        return IntStream.range(from, to).map(sheet::getColumnWidth).sum() / 256;
    }

    /**
     * A table of typed rows with its heading, one column an input.
     *
     * @param points height of the row of labels
     * @return the row below it and an empty one
     */
    static int inputTable(
            Draft draft,
            XSSFSheet sheet,
            int row,
            int columns,
            String title,
            Grid grid,
            float points) {
        heading(draft, sheet, row, columns, title);
        int labels = row + 1;
        int column = 0;
        for (Input input : Contract.inputs(grid)) {
            draft.text(
                    sheet, labels, column, label(input, draft.unit()), draft.look().columnHead());
            draft.input(input, Side.LEFT, sheet, labels + 1, column++, Direction.DOWN);
        }
        sheet.getRow(labels).setHeightInPoints(points);
        return labels + 1 + draft.rows(grid) + 1;
    }

    /** Heading over a block. */
    static void heading(Draft draft, XSSFSheet sheet, int row, int columns, String text) {
        for (int column = 0; column < columns; column++) {
            draft.style(sheet, row, column, draft.look().heading());
        }
        draft.text(sheet, row, 0, text, draft.look().heading());
        draft.height(sheet, row, 20);
    }

    /** The same with the scenarios' letters over the columns of their figures. */
    static void letters(Draft draft, XSSFSheet sheet, int row, int columns, String text) {
        heading(draft, sheet, row, columns, text);
        for (int scenario = 0; scenario < draft.scenarios(); scenario++) {
            draft.text(
                    sheet,
                    row,
                    ScenariosSheet.FIRST + scenario,
                    ScenarioOutcome.letter(scenario),
                    draft.look().letter());
        }
    }

    /** An input that occurs once a side or a book, its meaning beside it. */
    static void single(
            Draft draft, XSSFSheet sheet, int row, Input input, Side side, int lastColumn) {
        draft.text(sheet, row, 0, label(input, draft.unit()), draft.look().label());
        draft.input(input, side, sheet, row, 1, Direction.DOWN);
        draft.text(sheet, row, 2, input.meaning(), draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(row, row, 2, lastColumn));
    }
}
