package shaftwright.jobs;

import java.util.ArrayList;
import java.util.List;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;

/**
 * The variants of one workbook, or of one that a comparison holds.
 *
 * @param title which of a comparison's workbooks it is, empty when there is only one
 * @param variants those with a name
 */
public record BookVariants(String title, List<Variant> variants) {
    public BookVariants {
        variants = List.copyOf(variants);
    }

    static List<BookVariants> of(Filling.Report report) {
        return List.of(new BookVariants("", Variant.of(report)));
    }

    static List<BookVariants> of(ComparisonFilling.Report report) {
        List<BookVariants> books = new ArrayList<>();
        for (ComparisonFilling.Part part : report.parts()) {
            books.add(new BookVariants(title(part.number()), Variant.of(part.filling())));
        }
        return books;
    }

    static String title(int number) {
        return "Book " + number;
    }
}
