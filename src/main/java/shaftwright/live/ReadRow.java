package shaftwright.live;

import java.util.List;
import java.util.Optional;
import shaftwright.contract.Index;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.SuspectReading;

/**
 * A row of readings that a side's path goes by.
 *
 * @param fitted what the path makes of it
 * @param slot its place in the typed block, from 0
 */
record ReadRow(SideReadings side, FittedRow fitted, int slot) {
    static Optional<ReadRow> of(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        return side.fitted(index.row()).map(row -> new ReadRow(side, row, index.row()));
    }

    MeasuredPath path() {
        return side.path().orElseThrow();
    }

    /** Those of its readings that the others speak against. */
    List<SuspectReading> suspects() {
        return path().contradiction().inRow(fitted.row().number());
    }

    /** Its number among the rows of the path. */
    int point() {
        return side.point(slot);
    }
}
