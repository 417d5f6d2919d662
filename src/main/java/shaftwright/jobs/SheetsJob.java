package shaftwright.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import shaftwright.xlsx.Replaced;
import shaftwright.xlsx.XlsxBook;

/**
 * Shows and hides sheets of a workbook.
 *
 * @param file the workbook
 * @param target where the changed one goes, often the same
 * @param show names of sheets to be seen
 * @param hide names of sheets to be hidden
 */
public record SheetsJob(Path file, Path target, List<String> show, List<String> hide) {
    public SheetsJob {
        show = List.copyOf(show);
        hide = List.copyOf(hide);
    }

    /**
     * Does it in the opened workbook.
     *
     * @throws shaftwright.xlsx.NoSuchSheetException if no sheet has one of the names
     */
    public Replaced run(XlsxBook book, Journal journal) {
        journal.step("Writing " + target.getFileName());
        Replaced replaced = book.saveSeenSheets(target, show, hide);
        if (replaced.backup().isEmpty() && target.equals(file)) {
            journal.say(target + ": so they are already.");
            return replaced;
        }
        List<String> done = new ArrayList<>();
        if (!show.isEmpty()) {
            done.add(String.join(", ", show) + " shown");
        }
        if (!hide.isEmpty()) {
            done.add(String.join(", ", hide) + " hidden");
        }
        FillSummary.written(journal::say, target + ": " + String.join("; ", done), replaced);
        return replaced;
    }
}
