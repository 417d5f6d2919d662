package shaftwright.live;

import java.util.Optional;
import java.util.function.Function;
import shaftwright.contract.Index;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.study.DrawingFrame;
import shaftwright.study.SideDrawing;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;

/**
 * Something that lines are about and that may not be known yet.
 *
 * @param condition whether it is known, as a formula
 * @param source the same by the core
 */
record Known<T>(String condition, Source<T> source) {
    /** Where the core has it. */
    interface Source<T> {
        Optional<T> of(Sizing sizing, Index index);
    }

    /** A side's hub path. */
    static final Known<HubPath> PATH =
            new Known<>("{path_ready}=1", (sizing, index) -> sizing.path(index.side()).chosen());

    /** A side's drawing. */
    static final Known<SideDrawing> DRAWING =
            new Known<>(PATH.condition, (sizing, index) -> sizing.drawing(index.side()));

    /** The frame of a side's drawing. */
    static final Known<DrawingFrame> FRAME =
            new Known<>(
                    PATH.condition,
                    (sizing, index) ->
                            sizing.drawing(index.side())
                                    .map(drawing -> drawing.frame(sizing.unit())));

    /** A path through a side's readings. */
    static final Known<MeasuredPath> FIT =
            new Known<>("{fit_ready}=1", (sizing, index) -> sizing.readings(index.side()).path());

    /** A row of readings that the path goes by. */
    static final Known<ReadRow> FITTED_ROW = new Known<>("{row_weight}*{fit_ready}>0", ReadRow::of);

    /** A side of a scenario with joints, shifts and travel. */
    static final Known<SideOutcome> SETUP =
            new Known<>(
                    "{setup_ready}=1",
                    (sizing, index) ->
                            Optional.of(SideLines.outcome(sizing, index))
                                    .filter(SideOutcome::isSetUp));

    /** The shaft of a side of a scenario. */
    static final Known<SideResult> RESULT =
            new Known<>("{ready}=1", (sizing, index) -> sizing.result(index));

    /** The whole workbook, while this is known. */
    Known<Sizing> inWorkbook() {
        return new Known<>(
                condition, (sizing, index) -> source.of(sizing, index).map(known -> sizing));
    }

    /** A part of it that is always there. */
    <U> Known<U> of(Function<T, U> part) {
        return new Known<>(condition, (sizing, index) -> source.of(sizing, index).map(part));
    }

    /**
     * A part of it that may not be known.
     *
     * @param known whether the part is, as a formula
     */
    <U> Known<U> ofAny(String known, Function<T, Optional<U>> part) {
        return new Known<>(known, (sizing, index) -> source.of(sizing, index).flatMap(part));
    }
}
