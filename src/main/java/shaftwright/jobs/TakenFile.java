package shaftwright.jobs;

import java.nio.file.Path;
import java.util.Optional;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/**
 * A scenario that stands in another workbook's file, which is not saved yet.
 *
 * @param taken it
 * @param book the workbook with all that follows from it
 */
public record TakenFile(Taken taken, XlsxBook book) {
    /** What somebody has to agree to first, empty when nothing stands in the column. */
    public Optional<String> question() {
        return taken.question();
    }

    /** Says what would come along, be replaced and differ. */
    public void preview(Journal journal) {
        taken.preview(journal);
    }

    /** Saves it. */
    public Filled save(Path target, Journal journal) {
        journal.step("Writing " + target.getFileName());
        SaveReport saved = book.save(target);
        taken.tell(journal);
        FillSummary.written(
                journal::say,
                target
                        + ": "
                        + taken.report().written()
                        + " cells filled"
                        + OwnFormulas.said(saved),
                saved.replaced());
        return new Filled(BookVariants.of(taken.report()), saved);
    }
}
