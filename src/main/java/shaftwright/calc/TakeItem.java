package shaftwright.calc;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.NoRoomException;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.filling.Taking;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.Count;
import shaftwright.jobs.LookJob;
import shaftwright.jobs.TakeJob;
import shaftwright.jobs.Taken;
import shaftwright.jobs.Variant;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;

/**
 * Takes a variant of another workbook's file into a column of the open document, as one step that
 * undo takes back.
 */
final class TakeItem {
    private static final String NOTHING = "Nothing was taken.";

    private TakeItem() {}

    static Answer run(Desk desk) throws com.sun.star.uno.Exception {
        desk.journal().step("Computing " + desk.title());
        Filling.Report before = Filling.compute(book(desk));
        if (before.hasErrors()) {
            return Answer.refused(NOTHING + " This workbook has errors.")
                    .with(Found.of(before.problems()));
        }
        Optional<Path> from = desk.questions().workbook();
        if (from.isEmpty()) {
            return Answer.CANCELLED;
        }
        Optional<List<BookVariants>> theirs = new LookJob(from.get()).run(desk.journal());
        List<Questions.Offer> offers = new ArrayList<>();
        theirs.orElse(List.of()).forEach(book -> add(book, offers));
        List<String> said = desk.journal().lines();
        if (offers.isEmpty()) {
            return Answer.refused(
                            theirs.isEmpty()
                                    ? NOTHING
                                    : NOTHING + " No variant has a name in that workbook.")
                    .withPage(said);
        }
        Sizing ours = before.sizing().orElseThrow();
        Optional<Questions.Choice> chosen =
                desk.questions().taking(offers, columns(ours), free(ours));
        if (chosen.isEmpty()) {
            return Answer.CANCELLED;
        }
        return take(
                desk,
                new TakeJob(
                        from.get(),
                        chosen.get().scenario(),
                        desk.called(),
                        Optional.of(chosen.get().column())));
    }

    private static Answer take(Desk desk, TakeJob job) throws com.sun.star.uno.Exception {
        CalcBook book = book(desk);
        Optional<Taken> taken = job.into(book, desk.journal());
        if (taken.isEmpty()) {
            return Answer.refused(NOTHING).withPage(desk.journal().lines());
        }
        taken.get().preview(desk.journal());
        List<String> preview = desk.journal().lines();
        if (!desk.questions().agrees(taken.get().question().orElse("Take it?"), preview)) {
            return Answer.CANCELLED;
        }
        desk.journal().step("Writing into " + desk.title());
        int changed = book.apply("take");
        taken.get().tell(desk.journal());
        return Answer.done(
                        "Taken: " + Count.of(changed, "cell") + " changed. Nothing is saved yet.")
                .withPage(desk.journal().lines());
    }

    private static CalcBook book(Desk desk) {
        return CalcBook.toFill(desk.document().orElseThrow(), desk.title());
    }

    private static void add(BookVariants book, List<Questions.Offer> offers) {
        for (Variant variant : book.variants()) {
            offers.add(new Questions.Offer(variant.number(), variant.title()));
        }
    }

    /** Each with its letter, and what stands in it. */
    private static List<String> columns(Sizing sizing) {
        List<String> columns = new ArrayList<>();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            String name =
                    sizing.inputs()
                            .text("scenario_name", new Index(Side.LEFT, scenario.number(), 0));
            columns.add(scenario.letter() + " " + (name.isEmpty() ? "(no name)" : name));
        }
        return columns;
    }

    /** The first column where there is no empty one. */
    private static int free(Sizing sizing) {
        try {
            return Taking.freeColumn(sizing);
        } catch (NoRoomException e) {
            return 0;
        }
    }
}
