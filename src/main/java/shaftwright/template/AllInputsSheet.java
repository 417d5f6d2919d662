package shaftwright.template;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.comparison.ComparedLine;
import shaftwright.comparison.ComparedLines;
import shaftwright.comparison.ComparedRows;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.Difference;
import shaftwright.live.Quantity;

/**
 * Every input of every column, those that differ marked; beside the page, outside what is printed,
 * the cells that find that out.
 */
final class AllInputsSheet {
    static final String NAME = "All inputs";

    /** Defined names of the block of values and of the labels before it, headings included. */
    static final String VALUES = "comparison_inputs";

    static final String LABELS = "comparison_labels";

    private static final String TITLE =
            "All inputs ("
                    + Difference.DIFFERS
                    + ": differs; those that were the same in all are folded, + at the left shows"
                    + " them)";

    private static final int MARK = 1;
    private static final int FIRST = 2;
    private static final int USED = 2;
    private static final int TOP = 3;

    /** Characters of the labels' column and of the marks'. */
    private static final int LABEL = 40;

    private static final int MARKS = 4;

    private final ComparisonDraft draft;
    private final XSSFSheet sheet;
    private final Look look;
    private final Set<String> same;
    private final int last;
    private final int base;
    private final int count;
    private final int rows;

    private AllInputsSheet(ComparisonDraft draft, XSSFSheet sheet, Set<String> same) {
        this.draft = draft;
        this.same = same;
        this.sheet = sheet;
        look = draft.look();
        last = FIRST + draft.columns().size() - 1;
        base = last + 2;
        count = base + draft.columns().size() + 1;
        rows = count + 1;
    }

    /**
     * Lays it out.
     *
     * @param same names of rows that are the same in all columns, which are folded
     */
    static void lay(ComparisonDraft draft, XSSFSheet sheet, Set<String> same) {
        new AllInputsSheet(draft, sheet, same).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, LABEL * 256);
        sheet.setColumnWidth(MARK, MARKS * 256);
        int wide = draft.width(LABEL + MARKS);
        for (int column = FIRST; column <= rows; column++) {
            sheet.setColumnWidth(column, (column <= last ? wide : 9) * 256);
        }
        draft.text(sheet, 0, 0, TITLE, look.title());
        draft.heading(sheet, 1, last, "Book and scenario");
        for (int i = 0; i < draft.columns().size(); i++) {
            draft.text(sheet, 1, FIRST + i, draft.columns().get(i).key(), look.letter());
        }
        draft.text(sheet, 1, base, "first", look.note());
        draft.text(sheet, 1, base + 1, "differs", look.note());
        draft.text(sheet, 1, count, "so far", look.note());
        draft.text(sheet, 1, rows, "row of", look.note());
        first();
        int end = block();
        list();
        fold();
        sheet.createFreezePane(FIRST, 2);
        draft.pages(sheet, FIRST, LABEL + MARKS);
        sheet.setRepeatingRows(new CellRangeAddress(1, 1, -1, -1));
        int index = draft.workbook().getSheetIndex(sheet);
        draft.workbook().setPrintArea(index, 0, last, 0, end);
    }

    /** Above what is found out of each column: whether it is in use. */
    private void first() {
        for (ComparedLine line : ComparedLines.all().headLines()) {
            if (line.name().equals(ComparedLines.USED)) {
                draft.cells(line, sheet, USED, base + 1, look.working(Quantity.WHOLE));
            }
        }
        draft.difference(
                Difference.FIRST,
                sheet,
                USED,
                base,
                look.working(Quantity.WHOLE),
                Map.of("used", ComparedLines.USED));
        draft.name(Difference.FIRST.definedName(), sheet, USED, base, USED, base);
    }

    private int block() {
        List<ComparedLine> lines = ComparedLines.all().inputLines();
        int before = TOP;
        int row = TOP;
        for (int i = 0; i < lines.size(); i++) {
            if (ComparedRows.begins(lines, i)) {
                draft.heading(sheet, row++, last, lines.get(i).group());
            }
            line(lines.get(i), row, before);
            before = row++;
        }
        int end = row - 1;
        draft.name(VALUES, sheet, TOP, FIRST, end, last);
        draft.name(LABELS, sheet, TOP, 0, end, 0);
        draft.name(Difference.MARK.definedName(), sheet, TOP, MARK, end, MARK);
        draft.name(Difference.BASE.definedName(), sheet, TOP, base, end, base);
        draft.name(Difference.FLAG.definedName(), sheet, TOP, base + 1, end, count - 1);
        draft.name(Difference.COUNT.definedName(), sheet, TOP, count, end, count);
        Highlights.where(
                sheet,
                new CellRangeAddress(TOP, end, FIRST, last),
                CellPlace.columnLetters(base + 1) + (TOP + 1) + "=1");
        return end;
    }

    /** Folds runs of rows that are the same in all columns, with headings that have no others. */
    private void fold() {
        List<ComparedLine> lines = ComparedLines.all().inputLines();
        int first = -1;
        int row = TOP;
        for (int i = 0; i < lines.size(); i++, row++) {
            if (ComparedRows.begins(lines, i)) {
                first = folded(first, row, sameGroup(lines, i));
                row++;
            }
            first = folded(first, row, same.contains(lines.get(i).name()));
        }
        folded(first, row, false);
    }

    /** Takes one more row into the run that begins at a row, or ends it; -1 is no run. */
    private int folded(int first, int row, boolean fold) {
        if (fold) {
            return first < 0 ? row : first;
        }
        if (first >= 0) {
            sheet.groupRow(first, row - 1);
            sheet.setRowGroupCollapsed(first, true);
        }
        return -1;
    }

    private boolean sameGroup(List<ComparedLine> lines, int first) {
        String group = lines.get(first).group();
        return lines.stream()
                .filter(line -> line.group().equals(group))
                .allMatch(line -> same.contains(line.name()));
    }

    /**
     * One input.
     *
     * @param before row of the count before this one's
     */
    private void line(ComparedLine line, int row, int before) {
        draft.line(
                line,
                sheet,
                row,
                0,
                FIRST,
                line.quantity() == Quantity.TEXT ? look.listed() : look.result(line.quantity()));
        int longest = draft.longest(line);
        if (longest > 0) {
            int wide = draft.width(LABEL + MARKS);
            sheet.getRow(row).setHeightInPoints(Page.points(longest, wide));
        }
        String flags = ComparisonDraft.reference(area(row, base + 1, count - 1));
        draft.difference(Difference.MARK, sheet, row, MARK, look.centred(), Map.of("flags", flags));
        draft.difference(
                Difference.BASE,
                sheet,
                row,
                base,
                look.working(line.quantity()),
                Map.of(
                        "values",
                        ComparisonDraft.reference(area(row, FIRST, last)),
                        "first",
                        Difference.FIRST.definedName()));
        for (int column = FIRST; column <= last; column++) {
            flag(line, row, column);
        }
        draft.difference(
                Difference.COUNT,
                sheet,
                row,
                count,
                look.working(Quantity.WHOLE),
                Map.of("flags", flags, "before", ComparisonDraft.reference(sheet, before, count)));
    }

    private void flag(ComparedLine line, int row, int column) {
        int found = base + 1 + column - FIRST;
        draft.formula(
                sheet,
                row,
                found,
                ComparisonDraft.filled(
                        Difference.flag(line.quantity()),
                        Map.of(
                                "inuse",
                                ComparisonDraft.reference(sheet, USED, found),
                                "value",
                                ComparisonDraft.reference(sheet, row, column),
                                "base",
                                ComparisonDraft.reference(sheet, row, base))),
                look.working(Quantity.WHOLE));
    }

    private Area area(int row, int column, int lastColumn) {
        return new Area(sheet.getSheetName(), row, column, row, lastColumn);
    }

    private void list() {
        String letters = CellPlace.columnLetters(rows);
        for (int place = 0; place < Comparison.LISTED; place++) {
            draft.difference(
                    Difference.ROW,
                    sheet,
                    TOP + place,
                    rows,
                    look.working(Quantity.WHOLE),
                    Map.of(
                            ":ordinal",
                            "ROWS("
                                    + letters
                                    + "$"
                                    + (TOP + 1)
                                    + ":"
                                    + letters
                                    + (TOP + 1 + place)
                                    + ")",
                            "counts",
                            draft.reference(Difference.COUNT.definedName())));
        }
        draft.name(
                Difference.ROW.definedName(), sheet, TOP, rows, TOP + Comparison.LISTED - 1, rows);
    }
}
