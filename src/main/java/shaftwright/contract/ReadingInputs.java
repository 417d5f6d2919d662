package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Tape readings of a side, one row per height. */
final class ReadingInputs {
    private ReadingInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.length(
                        "height",
                        READING,
                        "Outer datum height",
                        Ranges.OFFSET,
                        new Range(100, 1_500),
                        "Height of the centre of the outer datum face (not of the hub face) for"
                                + " this row."));
        String distance =
                "Straight tape distance from the inner datum to the outer datum. Repeat readings go"
                        + " in the next columns.";
        Range usual = new Range(150, 1_500);
        all.add(
                Input.length(
                        "distance_first",
                        READING,
                        "Distance, first",
                        Ranges.SIZE,
                        usual,
                        distance));
        all.add(
                Input.length(
                        "distance_second",
                        READING,
                        "Distance, second",
                        Ranges.SIZE,
                        usual,
                        distance));
        all.add(
                Input.length(
                        "distance_third",
                        READING,
                        "Distance, third",
                        Ranges.SIZE,
                        usual,
                        distance));
        all.add(
                Input.length(
                                "fore_aft",
                                READING,
                                "Outer ahead of inner",
                                Ranges.OFFSET,
                                new Range(-400, 400),
                                "How far the outer datum sits ahead of the inner one; negative when"
                                        + " behind. Empty: 0.")
                        .orElse(0));
        all.add(
                Input.angle(
                        "camber",
                        READING,
                        "Camber, top out +",
                        new Range(-15, 15),
                        "Camber at this height; positive when the wheel's top leans outward. May"
                                + " stay empty."));
        all.add(
                Input.angle(
                        "toe",
                        READING,
                        "Toe-in +",
                        new Range(-10, 10),
                        "Toe at this height; positive for toe-in. May stay empty."));
    }
}
