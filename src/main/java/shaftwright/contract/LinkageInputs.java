package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.ArrayList;
import java.util.List;
import shaftwright.contract.Input.Range;
import shaftwright.suspension.LinkageKind;

/** Pick-up points of a linkage, and the hub as it stands at ride. */
final class LinkageInputs {
    private LinkageInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                                "linkage_kind",
                                BOOK,
                                "Kind of linkage",
                                CHOICE,
                                linkageKinds(),
                                "Decides which points are needed; their names stand beside the"
                                        + " rows.")
                        .starting(
                                LinkageKind.DOUBLE_WISHBONE.tradeName(),
                                LinkageKind.DOUBLE_WISHBONE.tradeName()));
        Range usual = new Range(25, 400);
        all.add(
                Input.length(
                                "linkage_up",
                                BOOK,
                                "Solved up from ride",
                                Ranges.TRAVEL,
                                usual,
                                "Travel of the outer datum above ride that the linkage is worked"
                                        + " out for.")
                        .starting("6", "150"));
        all.add(
                Input.length(
                                "linkage_down",
                                BOOK,
                                "Solved down from ride",
                                Ranges.TRAVEL,
                                usual,
                                "Travel of the outer datum below ride that the linkage is worked"
                                        + " out for.")
                        .starting("6", "150"));
        all.add(
                Input.length(
                                "inner_ahead",
                                SIDE,
                                "Inner datum ahead of the mark",
                                Ranges.PLACE,
                                Ranges.AHEAD,
                                "Fore-aft place of the inner datum, from any mark that all points"
                                        + " share. Empty: the inner datum is the mark.")
                        .orElse(0));
        all.add(
                Input.length(
                        "outer_ahead",
                        SIDE,
                        "Outer datum ahead of the mark, at ride",
                        Ranges.PLACE,
                        Ranges.AHEAD,
                        "Fore-aft place of the outer datum at ride; negative when behind the"
                                + " mark."));
        all.add(
                Input.length(
                        "outer_out",
                        SIDE,
                        "Outer datum from the centreline, at ride",
                        Ranges.PLACE,
                        Ranges.OUTWARD,
                        "Sideways distance from the vehicle's centre plane to the outer datum at"
                                + " ride. Its height is the ride height on the first sheet of"
                                + " measures."));
        all.add(
                Input.angle(
                                "static_camber",
                                SIDE,
                                "Camber at ride, top out +",
                                new Range(-15, 15),
                                "Positive when the wheel's top leans outward. Empty: 0.")
                        .orElse(0));
        all.add(
                Input.angle(
                                "static_toe",
                                SIDE,
                                "Toe-in at ride +",
                                new Range(-10, 10),
                                "Positive for toe-in. Empty: 0.")
                        .orElse(0));
        all.add(
                Input.length(
                        "point_ahead",
                        LINKAGE_POINT,
                        "Ahead of the mark",
                        Ranges.PLACE,
                        Ranges.AHEAD,
                        "Fore-aft place of this point at ride; negative when behind the mark."));
        all.add(
                Input.length(
                        "point_out",
                        LINKAGE_POINT,
                        "From the centreline",
                        Ranges.PLACE,
                        Ranges.OUTWARD,
                        "Sideways distance of this point from the vehicle's centre plane, at"
                                + " ride."));
        all.add(
                Input.length(
                        "point_height",
                        LINKAGE_POINT,
                        "Height",
                        Ranges.PLACE,
                        new Range(0, 1_500),
                        "Height of this point at ride, from the same floor as all heights."));
    }

    private static List<String> linkageKinds() {
        List<String> names = new ArrayList<>();
        for (LinkageKind kind : LinkageKind.values()) {
            names.add(kind.tradeName());
        }
        return names;
    }
}
