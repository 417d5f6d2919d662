package shaftwright.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shaftwright.book.NoRoomException;
import shaftwright.book.OpenBook;
import shaftwright.filling.Filling;
import shaftwright.filling.Taking;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/**
 * Thinks out how a scenario of one workbook gets into another; writes nothing before it is told to.
 *
 * @param from the workbook to take from, which is left alone
 * @param scenario zero-based scenario there
 * @param into the workbook to put it into
 * @param as zero-based column there, the first empty one where none is given
 */
public record TakeJob(Path from, int scenario, Path into, Optional<Integer> as) {
    /**
     * Reads both workbooks and computes what would come of it; empty when one has errors or too
     * little room, which is said.
     *
     * @throws JobRefusedException if there is no such scenario or column
     */
    public Optional<TakenFile> run(Journal journal) {
        Optional<Sizing> source = source(journal);
        if (source.isEmpty()) {
            return Optional.empty();
        }
        XlsxBook book = OpenedWorkbook.of(into, journal);
        return take(
                        source.get(),
                        book,
                        said(Results.of(into, book, journal), into, journal),
                        journal)
                .map(taken -> new TakenFile(taken, book));
    }

    /**
     * The same into a workbook that is open already, as which {@code into} is called.
     *
     * @throws JobRefusedException if there is no such scenario or column
     */
    public Optional<Taken> into(OpenBook book, Journal journal) {
        Optional<Sizing> source = source(journal);
        return source.isEmpty()
                ? Optional.empty()
                : take(
                        source.get(),
                        book,
                        said(Results.ofOpen(into, book, journal), into, journal),
                        journal);
    }

    private Optional<Sizing> source(Journal journal) {
        XlsxBook book = OpenedWorkbook.of(from, journal);
        return said(Results.of(from, book, journal), from, journal);
    }

    private static Optional<Sizing> said(Optional<Sizing> sizing, Path file, Journal journal) {
        if (sizing.isEmpty()) {
            sayNothingTaken(file, journal);
        }
        return sizing;
    }

    private Optional<Taken> take(
            Sizing source, OpenBook book, Optional<Sizing> before, Journal journal) {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        refuseUnused(source);
        int column;
        Taking.Plan plan;
        try {
            column = column(before.get());
            plan = Taking.plan(source, scenario, before.get(), column);
        } catch (NoRoomException e) {
            journal.complain("error: " + into.getFileName() + ": " + e.getMessage() + ".");
            sayNothingTaken(into, journal);
            return Optional.empty();
        }
        journal.step("Computing " + into.getFileName());
        Filling.Report report = Filling.fill(book, plan.columns());
        if (report.hasErrors()) {
            new ProblemList(into, report.problems()).sayTo(journal::complain);
            sayNothingTaken(into, journal);
            return Optional.empty();
        }
        return Optional.of(new Taken(this, column, plan, report));
    }

    /** Says that a workbook is what it was. */
    public static void sayNothingTaken(Path file, Journal journal) {
        journal.complain(file.getFileName() + ": nothing was taken.");
    }

    private void refuseUnused(Sizing source) {
        List<ScenarioOutcome> scenarios = source.scenarios();
        if (scenario < scenarios.size() && scenarios.get(scenario).used()) {
            return;
        }
        String named =
                scenarios.stream()
                        .filter(ScenarioOutcome::used)
                        .map(ScenarioOutcome::letter)
                        .collect(Collectors.joining(", "));
        throw new JobRefusedException(
                from.getFileName()
                        + ": found no scenario \""
                        + ScenarioOutcome.letter(scenario)
                        + "\"; expected the letter of a scenario that has a name: "
                        + (named.isEmpty() ? "it has none" : named));
    }

    private int column(Sizing before) {
        if (as.isEmpty()) {
            return Taking.freeColumn(before);
        }
        if (as.get() >= before.scenarios().size()) {
            throw new JobRefusedException(
                    "--as: found \""
                            + ScenarioOutcome.letter(as.get())
                            + "\"; expected a letter from A to "
                            + ScenarioOutcome.letter(before.scenarios().size() - 1)
                            + ", which are the scenario columns of "
                            + into.getFileName());
        }
        return as.get();
    }
}
