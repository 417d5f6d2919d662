package shaftwright.template;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** Characters of the labels' column. */
    private static final int LABELS = 42;

    /** Characters of the longest texts that there is room for: a name, and what ends a travel. */
    private static final int SHORT_NAME = 40;

    private static final int LONG_NAME = 56;
    private static final int WORDS = 26;
    private static final int STAMP = 20;

    /**
     * Characters of the longest sentences that there is room for, by what their names begin with.
     */
    private static final Map<String, Integer> SENTENCES =
            Map.of(
                    "compare_verdict", 400,
                    "compare_result_verdict", 530,
                    "compare_result_put_in", 100);

    private final ComparisonDraft draft;
    private final XSSFSheet sheet;
    private final Look look;
    private final Set<String> same;
    private final int last;
    private int row = NAME_ROW + 1;

    private SideBySideSheet(ComparisonDraft draft, XSSFSheet sheet, Set<String> same) {
        this.draft = draft;
        this.same = same;
        this.sheet = sheet;
        look = draft.look();
        last = FIRST + draft.columns().size() - 1;
    }

    /**
     * Lays it out.
     *
     * @param same names of rows of inputs that are the same in all columns
     */
    static void lay(ComparisonDraft draft, XSSFSheet sheet, Set<String> same) {
        new SideBySideSheet(draft, sheet, same).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, LABELS * 256);
        for (int column = FIRST; column <= last; column++) {
            sheet.setColumnWidth(column, draft.width(LABELS) * 256);
        }
        top();
        draft.heading(sheet, row++, last, "Verdicts");
        sentences(ComparedLines.all().resultLines().get(0));
        origin();
        explanations();
        units();
        sheet.setRowBreak(row - 1);
        results();
        sheet.setRowBreak(row - 1);
        differences();
        sheet.createFreezePane(FIRST, NAME_ROW + 1);
        draft.pages(sheet, FIRST, LABELS);
        sheet.setRepeatingRows(new CellRangeAddress(KEY_ROW, NAME_ROW, -1, -1));
        draft.printout(sheet).joinPages();
    }

    private void top() {
        draft.text(sheet, 0, 0, "Half shafts side by side", look.title());
        draft.heading(sheet, KEY_ROW, last, "Book and scenario");
        for (int i = 0; i < draft.columns().size(); i++) {
            String key = draft.columns().get(i).key();
            draft.text(sheet, KEY_ROW, FIRST + i, key, look.letter());
        }
        draft.name("comparison_key", sheet, KEY_ROW, FIRST, KEY_ROW, last);
        line("compare_name", NAME_ROW);
        height(NAME_ROW, SHORT_NAME);
    }

    /** A row's height for a text of so many characters in each column. */
    private void height(int at, int characters) {
        sheet.getRow(at).setHeightInPoints(Page.points(characters, draft.width(LABELS)));
    }

    /** Sentences of all columns below each other, since a column is too narrow for one. */
    private void sentences(ComparedLine line) {
        int longest = sentence(line).orElseThrow();
        boolean verdict = line.name().contains("verdict");
        draft.below(line, sheet, row, FIRST, verdict ? look.verdict() : look.prose());
        for (int i = 0; i < draft.columns().size(); i++, row++) {
            String key = draft.columns().get(i).key();
            draft.text(sheet, row, 0, line.label() + ", " + key, look.topLabel());
            int wide = across(row) * draft.width(LABELS);
            sheet.getRow(row).setHeightInPoints(Page.points(longest, wide));
        }
        if (verdict) {
            Highlights.verdicts(
                    sheet,
                    new CellRangeAddress(row - draft.columns().size(), row - 1, FIRST, FIRST));
        }
    }

    /** Characters of a row's longest sentence; empty where it is no row of sentences. */
    private static Optional<Integer> sentence(ComparedLine line) {
        return SENTENCES.entrySet().stream()
                .filter(longest -> line.name().startsWith(longest.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
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
        height(row++, SHORT_NAME);
        line("compare_vehicle", row);
        height(row++, LONG_NAME);
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
                if (group.endsWith("side") && !ending(group).equals(ending(line.group()))) {
                    sheet.setRowBreak(row - 1);
                }
                group = line.group();
                draft.heading(sheet, row++, last, group);
            }
            if (sentence(line).isPresent()) {
                sentences(line);
                continue;
            }
            draft.line(line, sheet, row, 0, FIRST, look.result(line.quantity()));
            if (line.name().contains("_stamp")) {
                Highlights.stamps(sheet, new CellRangeAddress(row, row, FIRST, last));
                height(row, STAMP);
            } else if (line.quantity() == Quantity.TEXT) {
                height(row, line.name().contains("blank") ? SHORT_NAME : WORDS);
            }
            row++;
        }
    }

    /** The side that a group is about, where it is about one. */
    private static String ending(String group) {
        return group.substring(group.lastIndexOf(' ', group.lastIndexOf(' ') - 1) + 1);
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
        heights(top);
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

    /** Room for the texts that are listed at first. */
    private void heights(int top) {
        List<ComparedLine> listed =
                ComparedLines.all().inputLines().stream()
                        .filter(line -> !same.contains(line.name()))
                        .limit(Comparison.LISTED)
                        .toList();
        for (int place = 0; place < listed.size(); place++) {
            int longest = draft.longest(listed.get(place));
            if (longest > 0) {
                height(top + place, longest);
            }
        }
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
                            + " number, in the unit of this page. Lengths typed in another unit"
                            + " have its mark. Nothing is linked to the files they came from.",
                    "Correct a reading, a joint or a tyre there: this page follows at once, with"
                            + " nothing installed. Figures with a double line below are renewed by a"
                            + " fill only; the line above them says whether they are current.",
                    "Bold in the list of inputs: other than in the first column. The sheet All"
                            + " inputs has every input, with "
                            + Difference.DIFFERS
                            + " beside those that differ.");

    /** A sentence over the columns of the first printed page, never over a page's edge. */
    private void sentence(String label, String text) {
        draft.text(sheet, row, 0, label, look.topLabel());
        draft.text(sheet, row, FIRST, text, look.prose());
        int wide = across(row) * draft.width(LABELS);
        sheet.getRow(row++).setHeightInPoints(Page.points(text.length(), wide));
    }

    private int across(int at) {
        int columns = draft.pageColumns(LABELS);
        if (columns > 1) {
            sheet.addMergedRegion(new CellRangeAddress(at, at, FIRST, FIRST + columns - 1));
        }
        return columns;
    }
}
