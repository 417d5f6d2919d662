package shaftwright.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.MeasuredPath;

/**
 * Whether to go on measuring a side.
 *
 * @param side whose readings they are
 * @param words what one more would tell
 */
public record FurtherReading(Side side, String words) {
    /** Of the sides among these that were measured and whose readings go together. */
    public static List<FurtherReading> of(Sizing sizing, List<Side> sides) {
        List<FurtherReading> further = new ArrayList<>();
        for (Side side : sides) {
            if (!sizing.path(side).linkage().isChosen() && sizing.readings(side).source() == side) {
                words(sizing, side).ifPresent(it -> further.add(new FurtherReading(side, it)));
            }
        }
        return further;
    }

    private static Optional<String> words(Sizing sizing, Side side) {
        return sizing.readings(side).path().flatMap(path -> words(path, sizing));
    }

    private static Optional<String> words(MeasuredPath path, Sizing sizing) {
        return path.nextReading()
                .map(
                        next ->
                                ReadingWording.next(
                                        next,
                                        path.crossCheck(),
                                        path.settings().tapeGraduation(),
                                        sizing.unit()));
    }
}
