package shaftwright.calc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shaftwright.jobs.CompareJob;
import shaftwright.jobs.Filled;

/** Lays workbooks' files side by side in a new document without a name. */
final class CompareItem {
    private static final int FEWEST = 2;

    private CompareItem() {}

    static Answer run(Desk desk) throws IOException, com.sun.star.uno.Exception {
        Optional<DocumentFile> open = desk.file();
        Optional<List<Path>> chosen =
                desk.questions().workbooks(open.map(DocumentFile::path).stream().toList());
        if (chosen.isEmpty()) {
            return Answer.CANCELLED;
        }
        List<Path> files = chosen.get();
        if (files.size() < FEWEST) {
            return Answer.refused(
                    "Nothing was compared. Choose two or more workbooks that are saved as .xlsx"
                            + " files.");
        }
        boolean saved =
                open.isEmpty()
                        || !files.contains(open.get().path())
                        || SavedFirst.isSaved(desk, open.get(), "compare", "");
        return saved ? compare(desk, files) : Answer.CANCELLED;
    }

    private static Answer compare(Desk desk, List<Path> files)
            throws IOException, com.sun.star.uno.Exception {
        Path folder = Files.createTempDirectory("shaftwright-compare");
        Path made = folder.resolve("comparison.xlsx");
        try {
            CompareJob job = new CompareJob(files, made, Optional.empty(), false, file -> {});
            Optional<Filled> filled = job.run(desk.journal());
            if (filled.isEmpty()) {
                return Answer.refused("Nothing was compared.").withPage(desk.journal().lines());
            }
            desk.journal().step("Opening the comparison");
            desk.openAsNew(DocumentFile.url(made));
            return Answer.done("The comparison is open; save it where you like.");
        } finally {
            Files.deleteIfExists(made);
            Files.deleteIfExists(folder);
        }
    }
}
