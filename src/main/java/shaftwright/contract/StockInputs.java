package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Rings, grooves, blanks and shaft ends. */
final class StockInputs {
    private StockInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                        "blank_name",
                        BLANK,
                        "Blank",
                        TEXT,
                        List.of(),
                        "Name by length and spline; scenarios may pick it by this name."));
        all.add(
                Input.length(
                        "blank_length",
                        BLANK,
                        "Length end to end",
                        Ranges.SIZE,
                        new Range(150, 1_500),
                        "Sellers quote blanks end to end, not clip to clip."));
        all.add(
                Input.length(
                        "blank_diameter",
                        BLANK,
                        "Diameter",
                        Ranges.SIZE,
                        new Range(15, 60),
                        "Bar diameter between the splines."));
        all.add(
                Input.splines(
                        "blank_splines_inner", "Splines, inner", "Spline count at the inner end."));
        all.add(
                Input.splines(
                        "blank_splines_outer", "Splines, outer", "Spline count at the outer end."));
        Range splineLength = new Range(20, 300);
        all.add(
                Input.length(
                        "blank_spline_length_inner",
                        BLANK,
                        "Spline length, inner",
                        Ranges.SIZE,
                        splineLength,
                        "Full spline from the inner end."));
        all.add(
                Input.length(
                        "blank_spline_length_outer",
                        BLANK,
                        "Spline length, outer",
                        Ranges.SIZE,
                        splineLength,
                        "Full spline from the outer end."));
        String groove =
                "Shaft end to the outer wall of a ring groove that is there already. Empty: none.";
        Range grooveRange = new Range(3, 80);
        all.add(
                Input.length(
                        "blank_groove_inner",
                        BLANK,
                        "Existing ring groove, inner",
                        Ranges.SIZE,
                        grooveRange,
                        groove));
        all.add(
                Input.length(
                        "blank_groove_outer",
                        BLANK,
                        "Existing ring groove, outer",
                        Ranges.SIZE,
                        grooveRange,
                        groove));
        all.add(Input.money("blank_price", BLANK, "Price each", "Your price for one blank."));
        all.add(
                Input.words(
                        "blank_in_stock",
                        BLANK,
                        "Available",
                        CHOICE,
                        List.of("yes", "to order", "no"),
                        "In the seller's stock, not in your garage. no: it can't be bought and is not"
                                + " chosen."));
        MaterialInputs.blanks(all);
        all.add(
                Input.length(
                                "ring_thickness",
                                BOOK,
                                "Ring thickness",
                                Ranges.SIZE,
                                new Range(0.8, 4),
                                "Thickness of the retaining ring.")
                        .orElse(1.75)
                        .starting("0.069", "1.75"));
        all.add(
                Input.length(
                                "groove_width",
                                BOOK,
                                "Groove width",
                                Ranges.SIZE,
                                new Range(0.8, 5),
                                "Width of the ring groove, a little more than the ring.")
                        .orElse(1.85)
                        .starting("0.073", "1.85"));
        all.add(
                Input.length(
                                "groove_depth",
                                BOOK,
                                "Groove depth",
                                Ranges.SIZE,
                                new Range(0.3, 4),
                                "Depth of the ring groove.")
                        .orElse(1.1)
                        .starting("0.043", "1.1"));
        all.add(
                Input.length(
                                "spline_runout",
                                BOOK,
                                "Spline run-out",
                                Ranges.NOT_NEGATIVE,
                                new Range(0, 25),
                                "Length at the spline's inboard end where it is not full depth.")
                        .orElse(6)
                        .starting("0.25", "6"));
        Range end = new Range(12, 60);
        all.add(
                Input.length(
                                "shaft_end_diameter_inner",
                                BOOK,
                                "Shaft end diameter, inner",
                                Ranges.SIZE,
                                end,
                                "Diameter of the shaft's inner end, at its chamfer.")
                        .orElse(26)
                        .starting("1.02", "26"));
        all.add(
                Input.length(
                                "shaft_end_diameter_outer",
                                BOOK,
                                "Shaft end diameter, outer",
                                Ranges.SIZE,
                                end,
                                "Diameter of the shaft's outer end, at its chamfer.")
                        .orElse(26)
                        .starting("1.02", "26"));
        all.add(
                Input.length(
                                "mockup_pin",
                                BOOK,
                                "Mock-up pin diameter",
                                Ranges.SIZE,
                                new Range(2, 16),
                                "Diameter of the cross pins in the mock-up stick; the races bear on"
                                        + " their sides.")
                        .orElse(6)
                        .starting("0.25", "6"));
    }
}
