package shaftwright.template;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.comparison.Column;
import shaftwright.comparison.ComparedBook;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.PartBook;
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
     * @param unit of the pages that compare
     * @param books with at least one scenario each, in the order of the columns
     * @throws IOException if the file can't be written
     */
    public static void write(Path file, LengthUnit unit, List<ComparedBook> books)
            throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            Map<LengthUnit, Look> looks = new EnumMap<>(LengthUnit.class);
            for (LengthUnit each : LengthUnit.values()) {
                looks.put(each, new Look(workbook, each));
            }
            LaidSheets laid = LaidSheets.toBeWritten(workbook);
            XSSFSheet front = workbook.createSheet(SideBySideSheet.NAME);
            XSSFSheet inputs = workbook.createSheet(AllInputsSheet.NAME);
            XSSFSheet charts = workbook.createSheet(ComparisonCharts.NAME);
            List<Draft> drafts = new ArrayList<>();
            List<Column> columns = new ArrayList<>();
            for (ComparedBook book : books) {
                int number = drafts.size() + 1;
                drafts.add(layOut(book, number, looks.get(book.unit()), laid));
                for (int scenario : book.used()) {
                    columns.add(new Column(number, scenario));
                }
            }
            if (columns.isEmpty() || columns.size() > Comparison.MOST_COLUMNS) {
                throw new IllegalArgumentException("not so many columns: " + columns.size());
            }
            ComparisonDraft draft =
                    new ComparisonDraft(looks.get(unit), laid, unit, books, drafts, columns);
            AllInputsSheet.lay(draft, inputs);
            SideBySideSheet.lay(draft, front);
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
                int index = workbook.getSheetIndex(sheet);
                workbook.setSheetHidden(index, true);
                // LibreOffice prints a hidden sheet that has one.
                workbook.removePrintArea(index);
            }
        }
        return draft;
    }

    private static String shortened(String label) {
        return label.length() <= LONGEST_LABEL
                ? label
                : label.substring(0, LONGEST_LABEL - 1) + "…";
    }
}
