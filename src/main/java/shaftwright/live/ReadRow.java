package shaftwright.live;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shaftwright.contract.Index;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.SuspectReading;
import shaftwright.units.LengthUnit;

/**
 * A row of readings that a side's path goes by.
 *
 * @param fitted what the path makes of it
 * @param slot its place in the typed block, from 0
 */
record ReadRow(SideReadings side, FittedRow fitted, int slot) {
    /** Between the notes on several readings of a row. */
    static final String NOTE_BETWEEN = ". ";

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

    /** What is said of them beside the row. */
    String note(LengthUnit unit) {
        return suspects().stream()
                .map(suspect -> ReadingWording.note(suspect, unit))
                .collect(Collectors.joining(NOTE_BETWEEN));
    }

    /** Their part in the list of the side. */
    String listed(LengthUnit unit) {
        return suspects().stream()
                .map(
                        suspect ->
                                ReadingWording.LISTED_BETWEEN
                                        + ReadingWording.listed(suspect, unit))
                .collect(Collectors.joining());
    }

    /** Its number among the rows of the path. */
    int point() {
        return side.point(slot);
    }
}
