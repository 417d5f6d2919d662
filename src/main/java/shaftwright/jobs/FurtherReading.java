package shaftwright.jobs;

import java.util.ArrayList;
import java.util.List;
import shaftwright.build.Side;
import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;

/**
 * Whether to go on measuring a side.
 *
 * @param side whose readings they are
 * @param words what one more would tell
 */
public record FurtherReading(Side side, String words) {
    /** Of the sides among these that were measured. */
    public static List<FurtherReading> of(Sizing sizing, List<Side> sides) {
        List<FurtherReading> further = new ArrayList<>();
        for (Side side : sides) {
            sizing.measured(side)
                    .map(path -> ReadingWording.next(path, sizing.unit()))
                    .ifPresent(words -> further.add(new FurtherReading(side, words)));
        }
        return further;
    }
}
