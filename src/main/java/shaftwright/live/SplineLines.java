package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.function.IntUnaryOperator;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.joint.SplineForm;
import shaftwright.joint.SplineForm.Property;
import shaftwright.reading.Sizing;
import shaftwright.reading.SplineRows;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.MatingWording;

/**
 * The table of splines as numbers, which row of it which part has, and for each two rows what keeps
 * a shaft with the one from a race with the other.
 */
final class SplineLines {
    private static final int SINCE = 6;

    /** Contract version since which pairs of rows are numbered. */
    private static final int NUMBERED = 8;

    private static final int SLOTS = Grid.SPLINE_SLOT.rows();

    private SplineLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PARTS_WORK, Grid.SPLINE_SLOT).since(SINCE);
        LineSet<SplineRows> rows = all.of((sizing, index) -> sizing.parts().splines());
        rows.mm("spline_module_used", "Module")
                .ifKnown(
                        """
                        IF(ISNUMBER({spline_module_read}),{spline_module_read},
                        IF(ISNUMBER({spline_pitch_read}),25.4/{spline_pitch_read},""))
                        """,
                        (splines, index) -> splines.module(index.row()));
        word(all, "spline_standard");
        word(all, "spline_root");
        word(all, "spline_fit");
        rows.whole("spline_of_joint", "Row of the joint")
                .byRow(named("spline_joint", "joint_name"), SplineRows::joint);
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .whole("spline_of_<inner>", "Row of the blank, its <inner> end")
                    .is(
                            Pieces.of("named", named("spline_blank", "blank_name"))
                                    .and("elsewhere", quoted(end.other().word()))
                                    .in(
                                            """
                                            IF({spline_slot}>ROWS(spline_end),0,
                                            IF(INDEX(spline_end,{spline_slot})=<elsewhere>,0,<named>))
                                            """),
                            (splines, index) -> splines.blank(index.row(), end));
        }
        all.print(
                "spline_print",
                "Fingerprint of the row",
                new Fingerprint(lines)
                        .measured("spline_module_used", "spline_angle_read")
                        .whole("spline_standard_number", "spline_root_number")
                        .whole("spline_fit_number", "spline_of_joint")
                        .whole("spline_of_inner", "spline_of_outer"),
                0);
        LineSet<Sizing> blanks = all.in(Section.PARTS_WORK, Grid.BLANK_SLOT);
        for (ShaftEnd end : ShaftEnd.values()) {
            blanks.at(end)
                    .whole("blank_spline_row_<inner>", "Row of its spline, <inner>")
                    .is(
                            "IFERROR(MATCH({blank_slot},spline_of_<inner>,0),0)",
                            (sizing, index) ->
                                    sizing.parts().splines().ofBlank(index.row() + 1, end));
        }
        LineSet<Sizing> pairs = all.in(Section.PARTS_WORK, Grid.SPLINE_PAIR);
        number(pairs, "pair_blank", "Row of the blank's spline", pair -> pair / SLOTS + 1);
        number(pairs, "pair_joint", "Row of the joint's spline", pair -> pair % SLOTS + 1);
        pairs.revised(NUMBERED)
                .ofAny(
                        (sizing, index) ->
                                sizing.parts()
                                        .splines()
                                        .clash(index.row() / SLOTS, index.row() % SLOTS))
                .text("spline_clash", "What a blank's spline differs in from a joint's")
                .is(clash(), MatingWording::clash);
    }

    /** Number of a chosen word, from 1; 0 for an empty cell. */
    private static void word(LineSet<Sizing> set, String column) {
        String cell = "INDEX(" + column + ",{spline_slot})";
        Input input = Contract.input(column);
        set.whole(column + "_number", input.label() + " by number")
                .is(
                        new Cases()
                                .when("{spline_slot}>ROWS(" + column + ")", 0)
                                .words(cell, input.choices())
                                .otherwise("0"),
                        (sizing, index) -> input.place(sizing.inputs().text(column, index)));
    }

    /** Row of the part that a cell names, 0 for none. */
    private static String named(String column, String names) {
        return Pieces.of("column", column)
                .and("names", names)
                .in(
                        """
                        IF({spline_slot}>ROWS(<column>),0,IF(INDEX(<column>,{spline_slot})="",0,
                        IFERROR(MATCH(INDEX(<column>,{spline_slot}),<names>,0),0)))
                        """);
    }

    /** Place of two rows, from 1, among all pairs, as a formula; from 1. */
    static String pair(String blank, String joint) {
        return "((" + blank + "-1)*" + SLOTS + "+" + joint + ")";
    }

    /** A number that each pair of rows has for good. */
    private static void number(
            LineSet<Sizing> pairs, String name, String label, IntUnaryOperator number) {
        pairs.since(NUMBERED)
                .of(Quantity.ORDINAL, name, label)
                .is(
                        index -> String.valueOf(number.applyAsInt(index.row())),
                        (sizing, index) -> number.applyAsInt(index.row()));
    }

    private static String clash() {
        Pieces pieces =
                Pieces.of("blank", "{pair_blank}")
                        .and("joint", "{pair_joint}")
                        .and("joints", quoted(MatingWording.JOINTS))
                        .and("same_module", String.valueOf(SplineForm.SAME_MODULE))
                        .and("same_angle", String.valueOf(SplineForm.SAME_ANGLE));
        Cases cases =
                new Cases()
                        .when(
                                """
                                IF(INDEX(spline_of_joint,<joint>)=0,TRUE,
                                INDEX(spline_of_inner,<blank>)+INDEX(spline_of_outer,<blank>)=0)
                                """,
                                "\"\"");
        for (Property property : Property.values()) {
            Column column = Column.of(property);
            cases.when(column.isOther(), column.words());
        }
        return pieces.in(cases.otherwise("\"\""));
    }

    /**
     * A property as two rows of the table have it, with {@code <b>} and {@code <j>} for their
     * cells.
     *
     * @param name of the cells
     * @param known whether both rows have it
     * @param differs whether it differs
     * @param said what a row has in words
     */
    private record Column(
            Property property, String name, String known, String differs, String said) {
        static Column of(Property property) {
            return switch (property) {
                case STANDARD -> word(property, "spline_standard");
                case ROOT -> word(property, "spline_root");
                case FIT -> word(property, "spline_fit");
                case MODULE ->
                        number(
                                property,
                                "spline_module_used",
                                "ABS(<b>-<j>)><same_module>*MAX(<b>,<j>)",
                                Pieces.of("decimals", MatingWording.MODULE_DECIMALS)
                                        .in(
                                                "FIXED(ROUND(ROUND(<cell>,8),<decimals>),<decimals>,1)"));
                case PRESSURE_ANGLE ->
                        number(
                                property,
                                "spline_angle_read",
                                "ABS(<b>-<j>)><same_angle>",
                                Phrases.angle("<cell>"));
            };
        }

        private static Column word(Property property, String name) {
            String said = "INDEX(" + name + ",<row>)";
            return new Column(property, name + "_number", "<b>*<j>>0", "<b><><j>", said);
        }

        private static Column number(
                Property property, String name, String differs, String written) {
            String said = Pieces.of("cell", "INDEX(" + name + ",<row>)").in(written);
            return new Column(property, name, "COUNT(<b>,<j>)=2", differs, said);
        }

        /** A condition of the cells of rows {@code <blank>} and {@code <joint>}. */
        private String of(String open) {
            return Pieces.of("b", "INDEX(" + name + ",<blank>)")
                    .and("j", "INDEX(" + name + ",<joint>)")
                    .in(open);
        }

        String isKnown() {
            return of(known);
        }

        String isOther() {
            return of("IF(" + known + "," + differs + ",FALSE)");
        }

        String words() {
            return (quoted(property.words() + " ") + "&" + Pieces.of("row", "<blank>").in(said))
                    + ("&<joints>&" + Pieces.of("row", "<joint>").in(said));
        }
    }

    /**
     * Whether anything beyond the count of two rows was compared, as a formula; 0 for a row means
     * that nothing is known.
     */
    static String compared(String blank, String joint) {
        return Pieces.of("blank", blank)
                .and("joint", joint)
                .in(
                        "IF(<blank>*<joint>=0,FALSE,OR("
                                + joined(",", Property.values(), each -> Column.of(each).isKnown())
                                + "))");
    }
}
