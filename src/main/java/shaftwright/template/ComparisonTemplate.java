package shaftwright.template;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.comparison.Column;
import shaftwright.comparison.ComparedBook;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.PartBook;
import shaftwright.comparison.SameInputs;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XmlText;

/**
 * Writes a comparison: pages that lay scenarios side by side, and behind them every sizing workbook
 * whole, but no computed value yet.
 */
public final class ComparisonTemplate {
    private static final int LONGEST_LABEL = 40;

    /** Sheets of each workbook that are seen: where all that most builders type stands. */
    private static final List<String> TYPED =
            List.of(MeasureSheet.NAME, PartsSheet.NAME, ScenariosSheet.NAME);

    private ComparisonTemplate() {}

    /**
     * Writes a comparison that a fill then completes.
     *
     * @param file to be written
     * @param unit of everything in it
     * @param books with at least one scenario each, in the order of the columns
     * @throws IOException if the file can't be written
     */
    public static void write(Path file, LengthUnit unit, List<ComparedBook> books)
            throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            Look look = new Look(workbook, unit);
            List<ComparedBook> shown = books.stream().map(book -> book.in(unit)).toList();
            LaidSheets laid = LaidSheets.toBeWritten(workbook);
            XSSFSheet front = workbook.createSheet(SideBySideSheet.NAME);
            XSSFSheet inputs = workbook.createSheet(AllInputsSheet.NAME);
            XSSFSheet charts = workbook.createSheet(ComparisonCharts.NAME);
            List<Draft> drafts = new ArrayList<>();
            List<Column> columns = new ArrayList<>();
            for (ComparedBook book : shown) {
                int number = drafts.size() + 1;
                drafts.add(layOut(book, number, look, laid));
                for (int scenario : book.used()) {
                    columns.add(new Column(number, scenario));
                }
            }
            if (columns.isEmpty() || columns.size() > Comparison.MOST_COLUMNS) {
                throw new IllegalArgumentException("not so many columns: " + columns.size());
            }
            ComparisonDraft draft = new ComparisonDraft(look, laid, unit, shown, drafts, columns);
            Set<String> same = SameInputs.of(shown);
            AllInputsSheet.lay(draft, inputs, same);
            SideBySideSheet.lay(draft, front, same);
            ComparisonCharts.lay(draft, charts);
            workbook.setForceFormulaRecalculation(true);
            workbook.setActiveSheet(0);
            ShapeNumbers.set(workbook);
            IgnoredErrors.set(laid);
            SteadyFile.write(laid, file);
        }
    }

    private static Draft layOut(ComparedBook book, int number, Look look, LaidSheets laid) {
        BookMark mark =
                new BookMark(
                        PartBook.prefix(number),
                        PartBook.sheetPrefix(number),
                        XmlText.stored("Book " + number + " (" + shortened(book.label()) + "): "),
                        Map.of());
        Draft draft = new Draft(look, laid, mark, book.unit(), book.scenarios(), book.typed());
        StartSheet.layAmongOthers(draft);
        Template.sizing(draft);
        draft.finish();
        XSSFWorkbook workbook = draft.workbook();
        for (XSSFSheet sheet : draft.sheets()) {
            boolean typed = TYPED.stream().map(mark::sheet).anyMatch(sheet.getSheetName()::equals);
            if (!typed) {
                workbook.setSheetHidden(workbook.getSheetIndex(sheet), true);
            }
        }
        printInputs(draft, mark);
        return draft;
    }

    /** What is typed; the results stand side by side already. */
    private static void printInputs(Draft draft, BookMark mark) {
        XSSFWorkbook workbook = draft.workbook();
        XSSFSheet scenarios = workbook.getSheet(mark.sheet(ScenariosSheet.NAME));
        workbook.setPrintArea(
                workbook.getSheetIndex(scenarios),
                0,
                ScenariosSheet.FIRST + draft.scenarios() - 1,
                0,
                ScenariosSheet.lastTyped(draft));
        for (String name : TYPED) {
            draft.printout(workbook.getSheet(mark.sheet(name))).joinPages();
        }
    }

    private static String shortened(String label) {
        return label.length() <= LONGEST_LABEL
                ? label
                : label.substring(0, LONGEST_LABEL - 1) + "…";
    }
}
