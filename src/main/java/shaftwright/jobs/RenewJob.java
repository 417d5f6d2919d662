package shaftwright.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.comparison.Comparison;
import shaftwright.contract.Contract;
import shaftwright.filling.Filling;
import shaftwright.functions.CellFunction;
import shaftwright.template.Renewal;
import shaftwright.xlsx.NamedFormulas;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/**
 * Makes a current workbook of an earlier one, with all that its builder put into it.
 *
 * @param file the workbook
 * @param target where the current one goes, often the same
 * @param existing whether another file that is there may be replaced
 */
public record RenewJob(Path file, Path target, ExistingFile existing) {
    /**
     * Does it; empty when the workbook has errors, which are said.
     *
     * @throws IOException if nothing may be written into the folder
     * @throws JobRefusedException if it is a comparison, or the target may not be written
     */
    public Optional<Filled> run(Journal journal) throws IOException {
        XlsxBook book = OpenedWorkbook.of(file, journal);
        refuseTarget();
        if (Comparison.is(book)) {
            throw new JobRefusedException(
                    file.getFileName()
                            + ": is a comparison; renew the workbooks that were compared, then"
                            + " compare them anew");
        }
        Filling.Report report = Filling.check(book);
        if (report.hasErrors()) {
            new ProblemList(file, report.problems()).sayTo(journal::complain);
            journal.complain(file.getFileName() + ": not renewed, nothing was written.");
            return Optional.empty();
        }
        return renew(journal, book, new Renewal.Source(file, book, book.sheetNames(), report));
    }

    private void refuseTarget() throws IOException {
        if (!target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new JobRefusedException(
                    target.getFileName()
                            + ": a renewed workbook has no macros; name an .xlsx file with --out");
        }
        if (!Files.exists(target) || !Files.isSameFile(file, target)) {
            existing.refuseToReplace(target);
        }
    }

    private Optional<Filled> renew(Journal journal, XlsxBook book, Renewal.Source source)
            throws IOException {
        OwnFormulas.quietLogging();
        journal.step("Laying out the workbook");
        Path laid = NewFile.beside(target);
        Path shown = NewFile.beside(target);
        try {
            Renewal.Outcome outcome =
                    NewFile.layOut(laid, target, beside -> Renewal.write(beside, source));
            journal.step("Computing it");
            showBefore(laid, outcome, shown);
            if (book.isChangedBy(NamedFormulas.out(CellFunction.PREFIX))) {
                pack(shown, laid);
            }
            XlsxBook renewed = XlsxBook.open(shown, new OwnFormulas(journal));
            Filling.Report report = Filling.fill(renewed);
            ProblemList problems = new ProblemList(target, report.problems());
            if (report.hasErrors()) {
                problems.sayTo(journal::complain);
                journal.complain(target.getFileName() + ": not made.");
                return Optional.empty();
            }
            SaveReport saved = renewed.saveOver(target, book);
            FillSummary.say(journal, report);
            problems.sayTo(journal::say);
            leftBehind(journal, book, source.report(), outcome.left());
            FillSummary.written(
                    journal::say,
                    target + ": " + made(source.report().age().version()),
                    saved.replaced());
            return Optional.of(new Filled(BookVariants.of(report), saved));
        } finally {
            Files.deleteIfExists(laid);
            Files.deleteIfExists(shown);
        }
    }

    /** So that the builder's formulas agree with what they read, and charts have points. */
    private static void showBefore(Path laid, Renewal.Outcome outcome, Path shown)
            throws IOException {
        XlsxBook book = XlsxBook.open(laid);
        book.write(outcome.shown());
        Files.delete(shown);
        book.save(shown);
    }

    /** Puts the functions in anew, of which the earlier workbook had some. */
    private static void pack(Path shown, Path other) throws IOException {
        Files.move(shown, other, StandardCopyOption.REPLACE_EXISTING);
        XlsxBook book = XlsxBook.open(other);
        book.saveNames(shown, PackedFunctions.of(book));
    }

    private static String made(int version) {
        return version == Contract.VERSION
                ? "made anew"
                : "renewed from contract version " + version + " to " + Contract.VERSION;
    }

    private static void leftBehind(
            Journal journal, XlsxBook book, Filling.Report before, List<String> left) {
        List<String> all = new ArrayList<>(left);
        all.addAll(book.activeParts());
        if (before.strayed() > 0) {
            all.add(
                    before.strayed()
                            + (before.strayed() == 1
                                    ? " overwritten or edited formula, which is"
                                    : " overwritten or edited formulas, which are")
                            + " as declared again");
        }
        for (String part : all) {
            journal.say("warning: left behind: " + part + ".");
        }
    }
}
