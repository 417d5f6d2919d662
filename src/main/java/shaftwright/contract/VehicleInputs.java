package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.List;
import shaftwright.contract.Input.Range;

/** The vehicle as a whole: units, tape, flange, ground, margins built up. */
final class VehicleInputs {
    private VehicleInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                                "unit",
                                BOOK,
                                "Unit of this workbook",
                                CHOICE,
                                List.of("inch", "mm"),
                                "Unit of bare numbers and of every result. Chosen when the workbook"
                                        + " is made.")
                        .starting("inch", "mm"));
        all.add(
                Input.words(
                        "vehicle_name",
                        BOOK,
                        "Vehicle",
                        TEXT,
                        List.of(),
                        "Any name; it is printed on the shop cards."));
        all.add(
                Input.length(
                                "shop_increment",
                                BOOK,
                                "Shaft length is cut to the nearest",
                                new Range(0.01, 25.4),
                                new Range(0.05, 13),
                                "Finished end-to-end lengths are rounded to this step where the"
                                        + " window allows it.")
                        .orElse(1)
                        .starting("0.0625", "1"));
        all.add(
                Input.length(
                                "tape_graduation",
                                BOOK,
                                "Tape graduation",
                                new Range(0.01, 25.4),
                                new Range(0.1, 4),
                                "Smallest division of the tape between the joint cups.")
                        .orElse(1)
                        .starting("0.0625", "1"));
        all.add(
                Input.length(
                                "height_graduation",
                                BOOK,
                                "Height graduation",
                                new Range(0.01, 25.4),
                                new Range(0.1, 7),
                                "Smallest division of the tape used for heights.")
                        .orElse(1)
                        .starting("0.0625", "1"));
        all.add(
                Input.words(
                                "fit_degree",
                                BOOK,
                                "Curve through the readings",
                                CHOICE,
                                List.of("auto", "4", "5"),
                                "auto: degree 2 for three or four heights, 3 from five on. Degree 4"
                                        + " or 5 needs nine heights.")
                        .starting("auto", "auto"));
        all.add(
                Input.length(
                                "curve_allowance_quadratic",
                                BOOK,
                                "Curve allowance, three or four heights",
                                Ranges.NOT_NEGATIVE,
                                new Range(0, 10),
                                "Doubt added for what so few heights can't show, for 450 mm of"
                                        + " travel; scales with travel to the power 3.")
                        .orElse(2.0)
                        .starting("0.079", "2"));
        all.add(
                Input.length(
                                "curve_allowance_cubic",
                                BOOK,
                                "Curve allowance, five or more heights",
                                Ranges.NOT_NEGATIVE,
                                new Range(0, 10),
                                "Doubt added for what the readings can't show, for 450 mm of"
                                        + " travel; scales with travel to the power 4.")
                        .orElse(0.8)
                        .starting("0.031", "0.8"));
        all.add(
                Input.words(
                                "right_side",
                                BOOK,
                                "Right side",
                                CHOICE,
                                List.of("same as left", "measured"),
                                "Same as left: the left readings serve both sides. Measured: the"
                                        + " right has its own.")
                        .starting("same as left", "same as left"));
        all.add(
                Input.angle(
                                "inner_tilt",
                                BOOK,
                                "Inner flange tilt, outer end up",
                                new Range(-20, 20),
                                "Slope of the transaxle's output axis in front view; 0 when it is"
                                        + " level.")
                        .orElse(0));
        all.add(
                Input.angle(
                                "inner_sweep",
                                BOOK,
                                "Inner flange sweep, outer end forward",
                                new Range(-20, 20),
                                "Slope of the transaxle's output axis in plan view; 0 when it is"
                                        + " square to the vehicle.")
                        .orElse(0));
        all.add(
                Input.words(
                                "path_source",
                                SIDE,
                                "Hub path from",
                                CHOICE,
                                List.of("measured", "linkage"),
                                "Measured: the readings below. Linkage: the points on the sheet"
                                        + " Linkage, worked out by a fill.")
                        .starting("measured", "measured"));
        all.add(
                Input.length(
                        "inner_offset",
                        SIDE,
                        "Vehicle centre to inner datum",
                        Ranges.OFFSET,
                        new Range(20, 700),
                        "Sideways distance from the vehicle's centre plane to the inner datum face."
                                + " Needed for track, overall width and a linkage."));
        all.add(
                Input.length(
                        "inner_height",
                        SIDE,
                        "Inner datum height",
                        Ranges.OFFSET,
                        new Range(100, 1_200),
                        "Height of the centre of the inner datum face, from the same floor as all"
                                + " heights."));
        all.add(
                Input.length(
                        "ride_height",
                        SIDE,
                        "Outer datum height at ride",
                        Ranges.OFFSET,
                        new Range(100, 1_200),
                        "Height of the centre of the outer datum face with the vehicle at its"
                                + " static height."));
        all.add(
                Input.length(
                                "hub_face_offset",
                                BOOK,
                                "Outer datum to wheel mounting face",
                                Ranges.OFFSET,
                                new Range(0, 300),
                                "Along the stub axis, outward. Needed for track, width and the"
                                        + " wheel centre's rise.")
                        .orElse(0));
        all.add(
                Input.length(
                        "clearance_ride",
                        BOOK,
                        "Ground clearance at ride",
                        Ranges.NOT_NEGATIVE,
                        new Range(50, 600),
                        "Lowest fixed point above level ground, with the tyre named next."));
        all.add(
                Input.length(
                        "clearance_tyre_diameter",
                        BOOK,
                        "Diameter of the tyre fitted then",
                        Ranges.SIZE,
                        new Range(300, 1_300),
                        "Measured diameter of the tyre that was on when the clearance was"
                                + " measured."));
        all.add(
                Input.length(
                        "width_limit",
                        BOOK,
                        "Overall width limit",
                        Ranges.SIZE,
                        new Range(1_000, 3_000),
                        "Widest that the vehicle may be, by your rules or your trailer. Empty: no"
                                + " limit."));
    }
}
