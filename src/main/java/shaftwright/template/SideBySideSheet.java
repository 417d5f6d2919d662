package shaftwright.template;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.comparison.Column;
import shaftwright.comparison.ComparedLine;
import shaftwright.comparison.ComparedLines;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.Difference;
import shaftwright.contract.InputKind;
import shaftwright.live.Quantity;
import shaftwright.study.Cautions;

/** A comparison's first page: verdicts and results side by side, then the inputs that differ. */
final class SideBySideSheet {
    static final String NAME = "Side by side";

    /** First scenario column. */
    static final int FIRST = 1;

    private static final int KEY_ROW = 1;
    private static final int NAME_ROW = 2;
    private static final int VERDICT_ROW = 3;

    private final ComparisonDraft draft;
    private final XSSFSheet sheet;
    private final Look look;
    private final int last;
    private int row = VERDICT_ROW + 1;

    private SideBySideSheet(ComparisonDraft draft, XSSFSheet sheet) {
        this.draft = draft;
        this.sheet = sheet;
        look = draft.look();
        last = FIRST + draft.columns().size() - 1;
    }

    static void lay(ComparisonDraft draft, XSSFSheet sheet) {
        new SideBySideSheet(draft, sheet).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, 38 * 256);
        for (int column = FIRST; column <= last; column++) {
            sheet.setColumnWidth(column, 24 * 256);
        }
        top();
        origin();
        results();
        sheet.setRowBreak(row - 1);
        differences();
        explanations();
        units();
        sheet.createFreezePane(FIRST, VERDICT_ROW + 1);
        draft.pages(sheet, FIRST);
        sheet.setRepeatingRows(new CellRangeAddress(KEY_ROW, VERDICT_ROW, -1, -1));
    }

    private void top() {
        draft.text(sheet, 0, 0, "Half shafts side by side", look.title());
        draft.heading(sheet, KEY_ROW, last, "Book and scenario");
        for (int i = 0; i < draft.columns().size(); i++) {
            String key = draft.columns().get(i).key();
            draft.text(sheet, KEY_ROW, FIRST + i, key, look.heading());
        }
        draft.name("comparison_key", sheet, KEY_ROW, FIRST, KEY_ROW, last);
        line("compare_name", NAME_ROW);
        sheet.getRow(NAME_ROW).setHeightInPoints(28);
        ComparedLine verdict = ComparedLines.all().resultLines().get(0);
        draft.line(verdict, sheet, VERDICT_ROW, 0, FIRST, look.verdict());
        draft.text(sheet, VERDICT_ROW, 0, verdict.label(), look.boldLabel());
        sheet.getRow(VERDICT_ROW).setHeightInPoints(ScenariosSheet.VERDICT);
        verdicts(VERDICT_ROW);
    }

    private void verdicts(int at) {
        Highlights.verdicts(sheet, new CellRangeAddress(at, at, FIRST, last));
    }

    private void line(String name, int at) {
        for (ComparedLine line : ComparedLines.all().headLines()) {
            if (line.name().equals(name)) {
                draft.line(line, sheet, at, 0, FIRST, look.result(Quantity.TEXT));
            }
        }
    }

    /** Whose columns these are. */
    private void origin() {
        draft.heading(sheet, row++, last, "Where each column comes from");
        draft.text(sheet, row, 0, "File", look.label());
        for (int i = 0; i < draft.columns().size(); i++) {
            String label = draft.book(draft.columns().get(i)).label();
            draft.text(sheet, row, FIRST + i, label, look.prose());
        }
        sheet.getRow(row++).setHeightInPoints(28);
        line("compare_vehicle", row);
        sheet.getRow(row++).setHeightInPoints(28);
        constants("Book: the number before its sheets' names", Comparison.BOOKS, true);
        constants("Scenario there", Comparison.LETTERS, false);
    }

    private void units() {
        draft.text(sheet, row, 0, "Unit of this page", look.label());
        draft.text(
                sheet,
                row,
                FIRST,
                draft.unit() == shaftwright.units.LengthUnit.INCH ? "inch" : "mm",
                look.label());
        draft.name(Comparison.UNIT, sheet, row, FIRST, row, FIRST);
        row++;
        draft.text(sheet, row, 0, "… in mm", look.label());
        draft.formula(sheet, row, FIRST, Comparison.UNIT_FORMULA, look.working(Quantity.NUMBER));
        draft.name(Comparison.UNIT_MM, sheet, row, FIRST, row, FIRST);
        row++;
    }

    private void constants(String label, String name, boolean books) {
        draft.text(sheet, row, 0, label, look.label());
        for (int i = 0; i < draft.columns().size(); i++) {
            Column column = draft.columns().get(i);
            if (books) {
                draft.number(sheet, row, FIRST + i, column.book(), look.centred());
            } else {
                draft.text(sheet, row, FIRST + i, column.letter(), look.centred());
            }
        }
        draft.name(name, sheet, row, FIRST, row, last);
        row++;
    }

    private void results() {
        String group = "";
        for (ComparedLine line : ComparedLines.all().resultLines()) {
            if (line.group().isEmpty()) {
                continue;
            }
            if (!line.group().equals(group)) {
                if (line.group().endsWith("right side") && !group.endsWith("right side")) {
                    sheet.setRowBreak(row - 1);
                }
                group = line.group();
                draft.heading(sheet, row++, last, group);
            }
            draft.line(line, sheet, row, 0, FIRST, look.result(line.quantity()));
            if (line.name().startsWith("compare_result_verdict")) {
                sheet.getRow(row).setHeightInPoints(ScenariosSheet.SIDE_VERDICT);
                verdicts(row);
            } else if (line.name().contains("_stamp")) {
                Highlights.stamps(sheet, new CellRangeAddress(row, row, FIRST, last));
            } else if (line.name().startsWith("compare_result_put_in")) {
                sheet.getRow(row).setHeightInPoints(ScenariosSheet.SENTENCE);
            } else if (line.quantity() == Quantity.TEXT) {
                sheet.getRow(row).setHeightInPoints(26);
            }
            row++;
        }
    }

    private void differences() {
        draft.heading(sheet, row++, last, "Inputs that differ");
        draft.text(sheet, row, 0, "Lengths this close count as the same, mm", look.label());
        draft.number(sheet, row, FIRST, Comparison.USUAL_TOLERANCE, look.input(InputKind.NUMBER));
        draft.name(Comparison.TOLERANCE, sheet, row, FIRST, row, FIRST);
        row++;
        draft.text(sheet, row, 0, "Summary", look.label());
        draft.difference(
                Difference.SUMMARY,
                sheet,
                row,
                FIRST,
                look.bold(),
                Map.of("counts", draft.reference(Difference.COUNT.definedName())));
        draft.name(Difference.SUMMARY.definedName(), sheet, row, FIRST, row, FIRST);
        across(row);
        row++;
        list();
    }

    private void list() {
        int top = row;
        Area rows = draft.area(Difference.ROW.definedName());
        Area values = draft.area(AllInputsSheet.VALUES);
        for (int place = 0; place < Comparison.LISTED; place++, row++) {
            String ordinal =
                    ComparisonDraft.reference(
                            new Area(
                                    rows.sheet(),
                                    rows.firstRow() + place,
                                    rows.firstColumn(),
                                    rows.firstRow() + place,
                                    rows.firstColumn()));
            draft.difference(
                    Difference.LISTED_LABEL,
                    sheet,
                    row,
                    0,
                    look.label(),
                    Map.of("row", ordinal, "labels", draft.reference(AllInputsSheet.LABELS)));
            for (int column = FIRST; column <= last; column++) {
                int there = values.firstColumn() + column - FIRST;
                Area one =
                        new Area(values.sheet(), values.firstRow(), there, values.lastRow(), there);
                draft.difference(
                        Difference.LISTED_VALUE,
                        sheet,
                        row,
                        column,
                        look.listed(),
                        Map.of("row", ordinal, "column", ComparisonDraft.reference(one)));
            }
        }
        draft.name(Difference.LISTED_LABEL.definedName(), sheet, top, 0, row - 1, 0);
        draft.name(Difference.LISTED_VALUE.definedName(), sheet, top, FIRST, row - 1, last);
        String letter = CellPlace.columnLetters(FIRST);
        Highlights.where(
                sheet,
                new CellRangeAddress(top, row - 1, FIRST, last),
                "INDEX("
                        + Difference.FLAG.definedName()
                        + ",INDEX("
                        + Difference.ROW.definedName()
                        + ",ROWS("
                        + letter
                        + "$"
                        + (top + 1)
                        + ":"
                        + letter
                        + (top + 1)
                        + ")),COLUMNS($"
                        + letter
                        + (top + 1)
                        + ":"
                        + letter
                        + (top + 1)
                        + "))=1");
    }

    private void explanations() {
        draft.heading(sheet, row++, last, "What this is, and cautions");
        for (String line : EXPLANATIONS) {
            sentence("About this file", line);
        }
        for (String caution : Cautions.ALL) {
            sentence("Caution", caution);
        }
        draft.text(sheet, row, 0, "Comparison version", look.note());
        draft.number(sheet, row, FIRST, Comparison.VERSION, look.note());
        draft.name(Comparison.VERSION_NAME, sheet, row, FIRST, row, FIRST);
        row++;
    }

    private static final List<String> EXPLANATIONS =
            List.of(
                    "Behind this page stands every workbook whole, on sheets that begin with its"
                            + " number, in its own unit. Nothing is linked to the files they came"
                            + " from.",
                    "Correct a reading, a joint or a tyre there: this page follows at once, with"
                            + " nothing installed. Figures with a double line below are renewed by a"
                            + " fill only; the line above them says whether they are current.",
                    "Bold in the list of inputs: other than in the first column. The sheet All"
                            + " inputs has every input, with "
                            + Difference.DIFFERS
                            + " beside those that differ.");

    /** A sentence over the columns of the first printed page, never over a page's edge. */
    private void sentence(String label, String text) {
        draft.text(sheet, row, 0, label, look.boldLabel());
        draft.text(sheet, row, FIRST, text, look.prose());
        int columns = across(row);
        int lines = 1 + text.length() / (columns * CHARACTERS);
        sheet.getRow(row++).setHeightInPoints(14f * lines);
    }

    private int across(int at) {
        int columns = Math.min(draft.columns().size(), ComparisonDraft.PAGE_COLUMNS);
        if (columns > 1) {
            sheet.addMergedRegion(new CellRangeAddress(at, at, FIRST, FIRST + columns - 1));
        }
        return columns;
    }

    /** Of running text that fit one column. */
    private static final int CHARACTERS = 23;
}
