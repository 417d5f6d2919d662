package shaftwright.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.OpenBook;
import shaftwright.book.PackUse;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;
import shaftwright.filling.LiveCells;
import shaftwright.reading.ScenarioFinding;
import shaftwright.xlsx.XlsxBook;

/**
 * Says all that is wrong or doubtful in a workbook or a comparison; writes nothing.
 *
 * @param file the workbook
 */
public record CheckJob(Path file) {
    /** Does it; whether nothing is wrong with the workbook itself. */
    public boolean run(Journal journal) {
        XlsxBook book = OpenedWorkbook.of(file, journal);
        journal.step("Checking it");
        if (Comparison.is(book)) {
            ComparisonFilling.Report report = ComparisonFilling.check(book);
            return say(
                    journal,
                    book,
                    report.allProblems(),
                    findings(report),
                    further(report),
                    report.strayed());
        }
        Filling.Report report = Filling.check(book);
        return say(
                journal,
                book,
                report.problems(),
                findings("", report),
                further("", report),
                report.strayed());
    }

    private static List<String> findings(ComparisonFilling.Report report) {
        List<String> findings = new ArrayList<>();
        for (ComparisonFilling.Part part : report.parts()) {
            findings.addAll(findings("book " + part.number() + ", ", part.filling()));
        }
        return findings;
    }

    /** What speaks against the scenarios of one workbook, behind what it is called. */
    private static List<String> findings(String book, Filling.Report report) {
        List<String> findings = new ArrayList<>();
        if (report.sizing().isPresent()) {
            for (ScenarioFinding finding : ScenarioFinding.of(report.sizing().get())) {
                findings.add(book + finding);
            }
        }
        return findings;
    }

    private static List<String> further(ComparisonFilling.Report report) {
        List<String> further = new ArrayList<>();
        for (ComparisonFilling.Part part : report.parts()) {
            further.addAll(further("book " + part.number() + ", ", part.filling()));
        }
        return further;
    }

    /** Whether to go on measuring, behind what the workbook is called. */
    private static List<String> further(String book, Filling.Report report) {
        return report.sizing().stream()
                .flatMap(sizing -> FurtherReading.of(sizing, List.of(Side.values())).stream())
                .map(each -> book + each.side().word() + ": " + each.words())
                .toList();
    }

    /** Where the results stand; in a comparison those of its workbooks. */
    private static Collection<Area> results(XlsxBook book) {
        List<Area> areas = new ArrayList<>();
        for (OpenBook each : Comparison.books(book)) {
            areas.addAll(LiveCells.areas(each.names()));
        }
        return areas;
    }

    /** What a fill would do to the builder's own formulas; tried, and not saved. */
    private void sayLosing(Journal journal, XlsxBook book) {
        if (Comparison.is(book)) {
            ComparisonFilling.fill(book);
        } else {
            Filling.fill(book);
        }
        List<CellPlace> losing = book.losing();
        if (!losing.isEmpty()) {
            journal.say("note: after a fill " + OwnFormulas.left(losing) + ".");
        }
    }

    private boolean say(
            Journal journal,
            XlsxBook book,
            List<Problem> found,
            List<String> findings,
            List<String> further,
            int strayed) {
        book.refuseDamaged();
        ProblemList problems = new ProblemList(file, LostNotice.behind(found, book));
        problems.sayTo(journal::say);
        for (String finding : findings) {
            journal.say("finding: " + file.getFileName() + ": " + finding);
        }
        for (String each : further) {
            journal.say("note: " + file.getFileName() + ": " + each);
        }
        String packUse = PackUse.in(book).sentence();
        if (!packUse.isEmpty()) {
            journal.say("note: " + packUse);
        }
        int errors = problems.count(true);
        if (errors == 0 && book.hasFormulasOutside(results(book))) {
            sayLosing(journal, book);
        }
        journal.say(
                file.getFileName()
                        + ": "
                        + Count.of(errors, "error")
                        + ", "
                        + Count.of(problems.count(false), "warning")
                        + ", "
                        + Count.of(strayed, "overwritten or edited formula")
                        + "."
                        + (findings.isEmpty()
                                ? ""
                                : " "
                                        + Count.of(findings.size(), "finding")
                                        + " on its scenarios."));
        return errors == 0 && strayed == 0;
    }
}
