package shaftwright.jobs;

import java.util.List;
import java.util.Optional;
import shaftwright.filling.Filling;
import shaftwright.filling.Taking;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;

/**
 * A scenario that stands in another workbook, in which nothing is written yet.
 *
 * @param job where it comes from and goes
 * @param column zero-based, where it stands
 * @param plan what was typed
 * @param report what follows from it
 */
public record Taken(TakeJob job, int column, Taking.Plan plan, Filling.Report report) {
    /** What somebody has to agree to first, empty when nothing stands in the column. */
    public Optional<String> question() {
        return plan.replaced()
                .map(
                        standing ->
                                "Scenario "
                                        + ScenarioOutcome.letter(column)
                                        + " of "
                                        + job.into().getFileName()
                                        + " is "
                                        + standing
                                        + ". Replace it?");
    }

    /** Says what would come along, be replaced and differ. */
    public void preview(Journal journal) {
        say(journal, " would be ");
        problems().sayTo(journal::say);
        journal.say(job.into() + ": nothing was written.");
    }

    /** Says what came along, was replaced and differs. */
    public void tell(Journal journal) {
        say(journal, " is now ");
        problems().sayTo(journal::say);
    }

    private ProblemList problems() {
        return new ProblemList(job.into(), report.problems());
    }

    private void say(Journal journal, String is) {
        Sizing sizing = report.sizing().orElseThrow();
        journal.say(
                "Scenario "
                        + ScenarioOutcome.letter(job.scenario())
                        + " of "
                        + job.from().getFileName()
                        + is
                        + "scenario "
                        + ScenarioOutcome.letter(column)
                        + " of "
                        + job.into().getFileName()
                        + plan.replaced().map(standing -> ", in place of " + standing).orElse("")
                        + ", on your tape readings.");
        Variant.of(sizing, sizing.scenario(column)).sayTo(journal);
        list(journal, "Parts added: ", plan.added());
        list(journal, "Settings that differ and were not taken: ", plan.different());
        plan.remarks().forEach(journal::say);
    }

    private static void list(Journal journal, String heading, List<String> items) {
        if (!items.isEmpty()) {
            journal.say(heading + String.join("; ", items) + ".");
        }
    }
}
