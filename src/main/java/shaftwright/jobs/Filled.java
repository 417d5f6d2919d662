package shaftwright.jobs;

import java.util.List;
import shaftwright.xlsx.SaveReport;

/**
 * What a fill came to.
 *
 * @param books the variants of the workbook, or of each that a comparison holds
 * @param saved what was written
 */
public record Filled(List<BookVariants> books, SaveReport saved) {
    public Filled {
        books = List.copyOf(books);
    }
}
