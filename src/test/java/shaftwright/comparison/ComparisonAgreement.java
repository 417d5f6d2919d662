package shaftwright.comparison;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.workbook.Agreement;
import shaftwright.xlsx.XlsxBook;

/**
 * A filled comparison, whose values the core computed, beside what some program makes of its
 * formulas: the sizing workbooks in it, and the pages that lay them side by side.
 */
public final class ComparisonAgreement {
    private static final int SHOWN = 12;

    private final List<String> differences = new ArrayList<>();
    private int pageCells;
    private int bookCells;

    private ComparisonAgreement() {}

    /** Compares with a copy that some program computed and saved, nothing moved. */
    public static ComparisonAgreement ofSaved(Path filled, Path saved) {
        XlsxBook copy = XlsxBook.open(saved);
        Cells cells = copy.read(copy.names().values());
        return of(filled, place -> cells.at(place).value());
    }

    /** Compares with values computed elsewhere. */
    public static ComparisonAgreement of(Path filled, Function<CellPlace, CellValue> computed) {
        ComparisonAgreement agreement = new ComparisonAgreement();
        XlsxBook book = XlsxBook.open(filled);
        for (OpenBook part : Comparison.books(book)) {
            Agreement own = Agreement.of(part, computed);
            agreement.bookCells += own.cells();
            if (!own.differences().isEmpty()) {
                agreement.differences.add(part.title() + ": " + own.differences());
            }
        }
        for (Map.Entry<String, Area> name : book.names().entrySet()) {
            if (name.getKey().startsWith("compar")) {
                agreement.page(book, name.getKey(), name.getValue(), computed);
            }
        }
        return agreement;
    }

    private void page(
            OpenBook book, String name, Area area, Function<CellPlace, CellValue> computed) {
        Cells cells = book.read(List.of(area));
        for (int offset = 0; offset < area.size(); offset++) {
            CellPlace place = area.place(offset);
            CellContent content = cells.at(place);
            if (!content.hasFormula()) {
                continue;
            }
            pageCells++;
            CellValue got = computed.apply(place);
            if (!same(content.value(), got) && differences.size() < SHOWN) {
                differences.add(
                        place
                                + ", "
                                + name
                                + ": core "
                                + content.value()
                                + ", cell "
                                + got
                                + " by "
                                + content.formula());
            }
        }
    }

    private static boolean same(CellValue core, CellValue got) {
        if (core instanceof CellValue.Numeric wanted && got instanceof CellValue.Numeric found) {
            double size = Math.max(1, Math.abs(wanted.value()));
            return Math.abs(wanted.value() - found.value()) <= Agreement.TOLERANCE * size;
        }
        if (core instanceof CellValue.Text text && text.value().isEmpty()) {
            return got instanceof CellValue.Blank || got.equals(core);
        }
        return core.equals(got);
    }

    /** Formula cells of the pages that compare. */
    public int pageCells() {
        return pageCells;
    }

    /** Live cells of the sizing workbooks. */
    public int bookCells() {
        return bookCells;
    }

    /** What differs, empty when all agree. */
    public String differences() {
        return String.join("\n", differences);
    }
}
