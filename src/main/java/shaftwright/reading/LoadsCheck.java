package shaftwright.reading;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.TorsionChart;
import shaftwright.study.Wording;

/** Looks for loads that come back and notches whose figures contradict each other or lack one. */
final class LoadsCheck {
    private static final List<String> SHARES = List.of("share_bump", "share_ride", "share_droop");
    private static final Index BOOK = new Index(Side.LEFT, 0, 0);

    private final InputValues inputs;
    private final StrengthReader strength;
    private final List<Problem> problems;

    LoadsCheck(InputValues inputs, Parts parts, List<Problem> problems) {
        this.inputs = inputs;
        strength = new StrengthReader(inputs, parts);
        this.problems = problems;
    }

    /** Says all that is wrong. */
    void run() {
        shares();
        brakes();
        for (int row = 0; row < rows("material_tensile"); row++) {
            tensile(row);
        }
        for (int row = 0; row < rows("blank_name"); row++) {
            for (ShaftEnd end : ShaftEnd.values()) {
                shoulder(row, end);
                groove(row, end);
            }
        }
    }

    private int rows(String column) {
        return Math.min(Parts.slots(column), inputs.rows(column, Side.LEFT));
    }

    private void shares() {
        if (strength.shares().isPresent() || SHARES.stream().anyMatch(this::unreadable)) {
            return;
        }
        String typed =
                SHARES.stream()
                        .filter(name -> !Double.isNaN(inputs.number(name)))
                        .findFirst()
                        .orElseThrow();
        double sum = SHARES.stream().mapToDouble(name -> Parts.orZero(inputs.number(name))).sum();
        problems.add(
                Problem.error(
                        inputs.place(typed, BOOK),
                        "Shares of time in bump, at ride and in droop",
                        "shares that add up to " + Wording.rounded(sum, 2) + " %",
                        "100 % in all, or nothing for all of it at ride"
                                + (areFractions()
                                        ? ". Shares are in per cent: 60, not 0.6 or 60%"
                                        : "")));
    }

    /** Whether 60 % was typed as 0.6, or as 60% into a cell that then holds 0.6. */
    private boolean areFractions() {
        return SHARES.stream().allMatch(name -> Parts.orZero(inputs.number(name)) <= 1);
    }

    private boolean unreadable(String name) {
        return inputs.unreadable(name, BOOK);
    }

    private void brakes() {
        boolean figure = given("brake_torque") || given("brake_deceleration");
        if (strength.brakesInboard() && !figure) {
            warning(
                    "brake_torque",
                    0,
                    "nothing",
                    "a torque, or the hardest braking below it: inboard brakes are not judged");
        }
        if (strength.brakesInboard()
                && !given("brake_torque")
                && given("brake_deceleration")
                && !given("wheel_load")) {
            warning(
                    "wheel_load",
                    0,
                    "nothing",
                    "the weight that is braked: without it inboard brakes are not judged");
        }
        if (!strength.brakesInboard() && figure) {
            warning(
                    "brakes_inboard",
                    0,
                    "not yes, beside figures of an inboard brake",
                    "yes, or those figures count for nothing");
        }
    }

    private boolean given(String name) {
        return !Double.isNaN(inputs.number(name));
    }

    private void tensile(int row) {
        if (number("material_tensile", row) < number("material_yield", row)) {
            problem(
                    true,
                    "material_tensile",
                    row,
                    quoted("material_tensile", row),
                    "no less than the yield strength beside it, "
                            + inputs.text("material_yield", index(row)));
        }
    }

    private void shoulder(int row, ShaftEnd end) {
        double teeth = number("blank_spline_outside_" + end.word(), row);
        double bar = number("blank_diameter", row);
        if (teeth != bar) {
            sharp("shoulder", TorsionChart.SHOULDER, Math.max(teeth, bar), Math.min(teeth, bar));
        }
    }

    private void groove(int row, ShaftEnd end) {
        if (!Double.isNaN(number("blank_groove_" + end.word(), row))) {
            double teeth = number("blank_spline_outside_" + end.word(), row);
            sharp("groove", TorsionChart.GROOVE, teeth, teeth - 2 * inputs.number("groove_depth"));
        }
    }

    /** A notch that a chart does not reach, said once. */
    private void sharp(String notch, TorsionChart chart, double larger, double smaller) {
        String name = "radius_" + notch;
        double radius = inputs.number(name);
        if (given("kts_" + notch)
                || !(radius > 0 && larger > smaller && smaller > 0)
                || problems.stream().anyMatch(said -> said.subject().equals(label(name)))) {
            return;
        }
        OptionalDouble factor = chart.factor(larger, smaller, radius);
        if (factor.isEmpty()) {
            warning(
                    name,
                    0,
                    quoted(name, 0),
                    "at least "
                            + inputs.shownLength((larger - smaller) / 2 / chart.most())
                            + ", to which the chart goes, or a Kts; that notch is not judged");
        }
    }

    private double number(String column, int row) {
        return inputs.number(column, Side.LEFT, row);
    }

    private String quoted(String name, int row) {
        return "\"" + inputs.text(name, index(row)) + "\"";
    }

    private static Index index(int row) {
        return new Index(Side.LEFT, 0, row);
    }

    private static String label(String name) {
        return Contract.input(name).label();
    }

    private void warning(String name, int row, String found, String expected) {
        problem(false, name, row, found, expected);
    }

    private void problem(boolean error, String name, int row, String found, String expected) {
        boolean single = Contract.input(name).grid() == Grid.BOOK;
        String subject = single ? label(name) : label(name) + ", row " + (row + 1);
        problems.add(
                error
                        ? Problem.error(inputs.place(name, index(row)), subject, found, expected)
                        : Problem.warning(
                                inputs.place(name, index(row)), subject, found, expected));
    }
}
