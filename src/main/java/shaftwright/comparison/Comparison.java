package shaftwright.comparison;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.OpenBook;
import shaftwright.contract.Contract;

/** What makes a workbook a comparison, and the names that it has beside those of its rows. */
public final class Comparison {
    /** Version written into every comparison; raised when a name changes its meaning. */
    public static final int VERSION = 1;

    /** Defined name of the cell that holds {@link #VERSION}. */
    public static final String VERSION_NAME = Contract.COMPARISON_NAME;

    /** Most columns, which is also the most sizing workbooks. */
    public static final int MOST_COLUMNS = 24;

    /** Rows of the list of what differs; further ones are only marked among all inputs. */
    public static final int LISTED = 40;

    /** What the names of {@link ComparedLines} begin with. */
    static final String PREFIX = "compare_";

    /** Defined name of the comparison's unit, {@code inch} or {@code mm}. */
    public static final String UNIT = "comparison_unit";

    /** Defined name of its unit in mm. */
    public static final String UNIT_MM = "comparison_mm";

    /** How that follows from the unit. */
    public static final String UNIT_FORMULA = "IF(" + UNIT + "=\"inch\",25.4,1)";

    /** Defined name of the typed cell: lengths this close, in mm, count as the same. */
    public static final String TOLERANCE = "comparison_tolerance";

    /** Half of the millimetre's tenth to which builders round sizes off a drawing. */
    public static final double USUAL_TOLERANCE = 0.05;

    /** Defined name of the row that holds each column's book number. */
    public static final String BOOKS = "comparison_book";

    /** Defined name of the row that holds each column's scenario letter. */
    public static final String LETTERS = "comparison_letter";

    private Comparison() {}

    /** Whether this is one. */
    public static boolean is(OpenBook book) {
        return book.names().containsKey(VERSION_NAME);
    }

    /** The sizing workbooks in it; a sizing workbook itself, alone, if it is no comparison. */
    public static List<OpenBook> books(OpenBook book) {
        return is(book) ? List.copyOf(parts(book)) : List.of(book);
    }

    /** The sizing workbooks in a comparison, by number. */
    static List<PartBook> parts(OpenBook book) {
        List<PartBook> parts = new ArrayList<>();
        for (int number = 1; number <= MOST_COLUMNS; number++) {
            if (book.names().containsKey(PartBook.prefix(number) + Contract.VERSION_NAME)) {
                parts.add(new PartBook(book, number));
            }
        }
        return parts;
    }
}
