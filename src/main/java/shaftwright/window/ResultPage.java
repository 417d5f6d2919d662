package shaftwright.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.PlainText;
import shaftwright.jobs.Variant;
import shaftwright.study.Cautions;
import shaftwright.study.Severity;

/** Verdicts and findings as a page of simple HTML. */
final class ResultPage {
    private static final String NOTHING = "No scenario has a name yet, so none was computed.";

    private ResultPage() {}

    /**
     * All variants, workbook by workbook, behind what is to be minded of any of them.
     *
     * @param before what was last shown of the same workbooks
     */
    static String of(List<BookVariants> books, List<BookVariants> before) {
        StringBuilder page = new StringBuilder("<html><body>");
        if (books.stream().anyMatch(book -> !book.variants().isEmpty())) {
            page.append("<p style=\"margin-bottom: 12px\"><b>")
                    .append(escaped(Cautions.LINE))
                    .append("</b></p>");
        }
        for (BookVariants book : books) {
            if (!book.title().isEmpty()) {
                page.append("<h2>").append(escaped(book.title())).append("</h2>");
            }
            if (book.variants().isEmpty()) {
                page.append("<p>").append(NOTHING).append("</p>");
            }
            for (Variant variant : book.variants()) {
                add(page, variant, earlier(variant, book.title(), before));
            }
        }
        return page.append("</body></html>").toString();
    }

    private static Optional<Variant> earlier(
            Variant variant, String title, List<BookVariants> before) {
        return before.stream()
                .filter(book -> book.title().equals(title))
                .flatMap(book -> book.variants().stream())
                .filter(each -> each.number() == variant.number())
                .findFirst();
    }

    private static void add(StringBuilder page, Variant variant, Optional<Variant> earlier) {
        page.append("<table width=\"100%\" cellspacing=0 cellpadding=6><tr><td width=6 bgcolor=\"")
                .append(colour(variant.severity()))
                .append("\"></td><td><b>")
                .append(escaped(variant.title()))
                .append("</b><br>")
                .append(escaped(variant.heading()));
        if (!variant.findings().isEmpty()) {
            page.append("<ul>");
            for (String finding : variant.findings()) {
                page.append("<li>").append(escaped(finding)).append("</li>");
            }
            page.append("</ul>");
        }
        earlier.ifPresent(old -> addChange(page, variant, old));
        page.append("</td></tr></table><br>");
    }

    /** What was said before and is not any more. */
    private static void addChange(StringBuilder page, Variant variant, Variant earlier) {
        List<String> gone = new ArrayList<>(earlier.findings());
        gone.removeAll(variant.findings());
        boolean same = earlier.heading().equals(variant.heading());
        if (same && gone.isEmpty()) {
            return;
        }
        page.append("<p><i>Before: ");
        if (!same) {
            page.append(escaped(earlier.heading())).append("<br>");
        }
        gone.forEach(finding -> page.append(escaped(finding)).append("<br>"));
        page.append("</i></p>");
    }

    /** Beside the words, for those who see it; each stands out on light and on dark. */
    private static String colour(Severity severity) {
        return switch (severity) {
            case FITS -> "#3a8f5c";
            case FITS_BUT -> "#c28a1a";
            case MEASURE_AGAIN -> "#7a6fc0";
            case DOES_NOT_FIT -> "#c0483f";
            case NO_VERDICT -> "#808890";
        };
    }

    static String escaped(String text) {
        return PlainText.shown(text, false)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
