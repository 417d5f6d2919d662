package shaftwright.template;

import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Bars, one pair a column: left side grey, right side white. */
final class ComparisonCharts {
    static final String NAME = "Compared charts";

    private static final int ROWS = 20;
    private static final int WIDE = 7;
    private static final int TITLES = 60;

    private final ComparisonDraft draft;
    private final XSSFSheet sheet;

    private ComparisonCharts(ComparisonDraft draft, XSSFSheet sheet) {
        this.draft = draft;
        this.sheet = sheet;
    }

    static void lay(ComparisonDraft draft, XSSFSheet sheet) {
        ComparisonCharts charts = new ComparisonCharts(draft, sheet);
        for (int column = 0; column <= 2 * WIDE; column++) {
            sheet.setColumnWidth(column, (column == WIDE ? 2 : 12) * 256);
        }
        draft.text(sheet, 0, 0, "Compared: book and scenario along the foot", draft.look().title());
        // Titles of series must be cells, or they are lost when other programs save the file.
        draft.text(sheet, TITLES, 0, "left", draft.look().note());
        draft.text(sheet, TITLES, 1, "right", draft.look().note());
        String unit = ", " + draft.unit().symbol();
        charts.chart(0, "Length window (below 0: short by)" + unit, "compare_result_window");
        charts.chart(1, "Least slack before bottoming" + unit, "compare_result_slack_in");
        charts.chart(2, "Least slack before pull-out" + unit, "compare_result_slack_out");
        charts.chart(3, "Shaft end to end, E" + unit, "compare_result_e");
        draft.printout(sheet).onOnePage(true);
        draft.workbook()
                .setPrintArea(draft.workbook().getSheetIndex(sheet), 0, 2 * WIDE, 0, TITLES - 1);
    }

    private void chart(int number, String title, String name) {
        int column = number % 2 * (WIDE + 1);
        int row = 2 + number / 2 * (ROWS + 1);
        new BarChart(
                        draft.laid(),
                        sheet,
                        sheet.createDrawingPatriarch()
                                .createAnchor(0, 0, 0, 0, column, row, column + WIDE, row + ROWS),
                        title,
                        draft.unit(),
                        draft.area("comparison_key"),
                        keys())
                .draw(
                        draft.area(name + "_left"),
                        new CellReference(NAME, TITLES, 0, true, true),
                        draft.area(name + "_right"),
                        new CellReference(NAME, TITLES, 1, true, true));
    }

    private String[] keys() {
        String[] keys = new String[draft.columns().size()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = draft.columns().get(i).key();
        }
        return keys;
    }
}
