package shaftwright.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.contract.Contract;
import shaftwright.filling.Filling;
import shaftwright.template.Template;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/**
 * Makes a workbook: lays it out beside its place, fills it, and puts it there when all is well.
 *
 * @param file the workbook to be made
 * @param unit of bare numbers and results
 * @param scenarios number of scenario columns
 * @param typed contents of typed cells by defined name, one entry a cell
 * @param leftOut warnings about what could not be typed
 */
public record NewJob(
        Path file,
        LengthUnit unit,
        int scenarios,
        Map<String, List<String>> typed,
        List<String> leftOut) {
    public NewJob {
        typed = Map.copyOf(typed);
        leftOut = List.copyOf(leftOut);
    }

    /** An empty workbook with as many scenarios as usual. */
    public static NewJob blank(Path file, LengthUnit unit) {
        return new NewJob(file, unit, Contract.USUAL_SCENARIOS, Map.of(), List.of());
    }

    /**
     * Does it; empty when what is typed has errors, which are said.
     *
     * @throws IOException if nothing may be written into the folder
     */
    public Optional<Filled> run(Journal journal) throws IOException {
        OwnFormulas.quietLogging();
        journal.step("Laying out the workbook");
        Path laid = NewFile.beside(file);
        try {
            NewFile.layOut(
                    laid,
                    file,
                    beside -> {
                        Template.write(beside, unit, scenarios, typed);
                        return beside;
                    });
            journal.step("Computing it");
            return filled(XlsxBook.open(laid), journal);
        } finally {
            Files.deleteIfExists(laid);
        }
    }

    private Optional<Filled> filled(XlsxBook book, Journal journal) {
        Filling.Report report = Filling.fill(book);
        ProblemList problems = new ProblemList(file, report.problems());
        if (report.hasErrors()) {
            problems.sayTo(journal::complain);
            leftOut.forEach(journal::complain);
            journal.complain(file.getFileName() + ": not made.");
            return Optional.empty();
        }
        SaveReport saved = book.save(file);
        FillSummary.say(journal, report);
        problems.sayTo(journal::say);
        leftOut.forEach(journal::say);
        FillSummary.written(
                journal::say,
                file + ": made, " + report.written() + " cells computed",
                saved.replaced());
        return Optional.of(new Filled(BookVariants.of(report), saved));
    }
}
