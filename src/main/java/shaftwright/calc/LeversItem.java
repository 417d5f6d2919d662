package shaftwright.calc;

import shaftwright.filling.Filling;
import shaftwright.jobs.LeversJob;

/** Says what would give the open document's variants more room, unsaved changes included. */
final class LeversItem {
    private LeversItem() {}

    static Answer run(Desk desk) {
        desk.journal().step("Computing " + desk.title());
        Filling.Report report =
                Filling.compute(CalcBook.toFill(desk.document().orElseThrow(), desk.title()));
        if (report.hasErrors()) {
            return Answer.refused("No change was tried: this workbook has errors.")
                    .with(Found.of(report.problems()));
        }
        LeversJob.ofAll(report.sizing().orElseThrow()).run(desk.journal());
        return Answer.done("What would give each variant more room. Nothing was changed.")
                .withTable(desk.journal().lines());
    }
}
