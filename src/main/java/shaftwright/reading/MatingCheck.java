package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import shaftwright.book.CellPlace;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.MatingInputs;
import shaftwright.joint.SplineForm;
import shaftwright.shaft.ShaftEnd;

/** Looks for splines, flanges and boots of which the figures contradict each other. */
final class MatingCheck {
    private static final List<String> SEATS =
            List.of("boot_cup_seat", "boot_shaft_seat", "boot_cup_diameter", "boot_shaft_diameter");

    private final InputValues inputs;
    private final Parts parts;
    private final List<Problem> problems;

    MatingCheck(InputValues inputs, Parts parts, List<Problem> problems) {
        this.inputs = inputs;
        this.parts = parts;
        this.problems = problems;
    }

    /** Says all that is wrong. */
    void run() {
        for (int row = 0; row < rows("spline_joint"); row++) {
            spline(row);
        }
        for (int row = 0; row < rows("boot_name"); row++) {
            boot(row);
        }
        for (int row = 0; row < rows("rated_joint"); row++) {
            pilot("bolt_circle", "bolt_pilot", new Index(Side.LEFT, 0, row), ", row " + (row + 1));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            pilot(
                    MatingInputs.flange(end, "circle"),
                    MatingInputs.flange(end, "pilot"),
                    new Index(Side.LEFT, 0, 0),
                    "");
        }
    }

    private int rows(String column) {
        return Math.min(Parts.slots(column), inputs.rows(column, Side.LEFT));
    }

    private void spline(int row) {
        OptionalInt joint = named("spline_joint", "joint_name", "joint", row);
        OptionalInt blank = named("spline_blank", "blank_name", "blank", row);
        if (joint.isEmpty() && blank.isEmpty() && described(row)) {
            warning(
                    "spline_joint",
                    row,
                    "nothing",
                    "a joint or a blank; the row counts for nothing");
        }
        double module = parts.number("spline_module", row);
        double pitch = parts.number("spline_pitch", row);
        if (!Double.isNaN(module + pitch)
                && !SplineForm.sameModule(module, SplineForm.module(pitch))) {
            error(
                    "spline_pitch",
                    row,
                    quoted("spline_pitch", row)
                            + " beside a module of "
                            + text("spline_module", row),
                    "module or diametral pitch, not both; 25.4 divided by the one is the other");
        }
        SplineRows splines = parts.splines();
        for (int other = 0; other < row; other++) {
            if (splines.joint(row) > 0 && splines.joint(other) == splines.joint(row)) {
                twice("spline_joint", row, other);
            }
            for (ShaftEnd end : ShaftEnd.values()) {
                if (splines.blank(row, end) > 0
                        && splines.blank(other, end) == splines.blank(row, end)) {
                    twice("spline_blank", row, other);
                    break;
                }
            }
        }
    }

    private void twice(String column, int row, int other) {
        error(
                column,
                row,
                quoted(column, row) + ", which row " + (other + 1) + " is about too",
                "one row for each spline; both ends of a blank may have one each");
    }

    /** A name that is in a parts table; empty where there is none. */
    private OptionalInt named(String column, String names, String table, int row) {
        String name = text(column, row);
        if (name.isEmpty()) {
            return OptionalInt.empty();
        }
        if (parts.row(names, name) == 0) {
            warning(
                    column,
                    row,
                    quoted(column, row),
                    "a name in the table of "
                            + table
                            + "s; what is typed of it counts for nothing");
        }
        return OptionalInt.of(row);
    }

    private boolean described(int row) {
        return Contract.inputs(Contract.input("spline_joint").grid()).stream()
                .map(Input::name)
                .anyMatch(column -> !text(column, row).isEmpty());
    }

    private void boot(int row) {
        boolean any = false;
        for (String seat : SEATS) {
            any |= has(seat, row);
        }
        for (String seat : SEATS) {
            if (any && !has(seat, row)) {
                error(
                        seat,
                        row,
                        "nothing",
                        "both seats and both diameters, or none of them; the boot's length can't"
                                + " be told without");
            }
        }
        if (!any) {
            for (String limit : new String[] {"boot_shortest", "boot_longest"}) {
                if (has(limit, row)) {
                    warning(
                            limit,
                            row,
                            quoted(limit, row) + ", and no seats",
                            "seats and their diameters too; the length is not judged without");
                }
            }
        }
        if (parts.number("boot_shortest", row) > parts.number("boot_longest", row)) {
            error(
                    "boot_shortest",
                    row,
                    quoted("boot_shortest", row),
                    "no more than the longest beside it, " + quoted("boot_longest", row));
        }
    }

    /** A pilot lies inside the bolts. */
    private void pilot(String circle, String pilot, Index index, String row) {
        OptionalDouble bolts = Parts.optional(inputs.number(circle, index));
        double inside = inputs.number(pilot, index);
        if (bolts.isPresent() && inside >= bolts.getAsDouble()) {
            problems.add(
                    Problem.error(
                            inputs.place(pilot, index),
                            Contract.input(pilot).label() + row,
                            "\"" + inputs.text(pilot, index) + "\"",
                            "less than the bolt circle, \"" + inputs.text(circle, index) + "\""));
        }
    }

    private boolean has(String column, int row) {
        return !text(column, row).isEmpty();
    }

    private String text(String column, int row) {
        return parts.text(column, row);
    }

    private String quoted(String column, int row) {
        return "\"" + text(column, row) + "\"";
    }

    private void error(String column, int row, String found, String expected) {
        problems.add(Problem.error(place(column, row), subject(column, row), found, expected));
    }

    private void warning(String column, int row, String found, String expected) {
        problems.add(Problem.warning(place(column, row), subject(column, row), found, expected));
    }

    private Optional<CellPlace> place(String column, int row) {
        return inputs.place(column, new Index(Side.LEFT, 0, row));
    }

    private static String subject(String column, int row) {
        return Contract.input(column).label() + ", row " + (row + 1);
    }
}
