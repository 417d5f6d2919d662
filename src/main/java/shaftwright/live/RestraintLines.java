package shaftwright.live;

import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.RestraintInputs;
import shaftwright.formula.Cases;
import shaftwright.reading.InputValues;
import shaftwright.reading.SideRestraints;
import shaftwright.reading.Sizing;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.travel.TravelEnds;

/**
 * The rows of dampers, straps and tubes as numbers: whether they are in use and which words were
 * chosen; fingerprints of them, a side's mark of all that moves them, and how they move.
 */
final class RestraintLines {
    /** No row has more terms. */
    private static final int TERMS = 10;

    private static final EngineBlock BLOCK =
            new EngineBlock("restraint", Grid.SIDE, Section.PATH_WORK, Section.RESTRAINT_BLOCK);

    private static final Known<SideRestraints> MOVING =
            new Known<>(
                    "AND(SUM(restraint_on)>0,COUNT({inner_offset_used})=1,{path_ready}=1)",
                    (sizing, index) -> moving(sizing, index, anyRestraint(sizing)));

    private RestraintLines() {}

    /** A table of things, row by row. */
    private record Table(
            LineSet<Sizing> rows, String name, BiPredicate<InputValues, Integer> isTyped) {
        void on(String numbers) {
            rows.whole(name + "_on", "In use")
                    .yes(
                            "IF(COUNT(" + numbers + ")>0,1,0)",
                            (sizing, index) -> isTyped.test(sizing.inputs(), index.row()));
        }

        void word(String line, String label, String column) {
            String words = name + column;
            rows.whole(name + line, label)
                    .is(
                            number(words, "{" + name + "_slot}"),
                            (sizing, index) ->
                                    RestraintInputs.number(
                                            Contract.input(words),
                                            sizing.inputs().text(words, index)));
        }

        /** A row's fingerprint, with weights that no other row has. */
        void print(Fingerprint print) {
            rows.about(
                            (sizing, index) ->
                                    Optional.of(sizing)
                                            .filter(all -> isTyped.test(all.inputs(), index.row())),
                            Lacking.ZERO.value())
                    .rowPrint(name + "_row_print", name + "_on", print, TERMS);
        }
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> rows = LineSet.in(lines, Section.PARTS_WORK, Grid.RESTRAINT_SLOT);
        Table restraints = new Table(rows, "restraint", SideRestraints::isTyped);
        Table tubes =
                new Table(
                        rows.in(Section.PARTS_WORK, Grid.TUBE_SLOT),
                        "tube",
                        SideRestraints::isTubeTyped);
        String carrier = "What carries it, by number";
        restraints.on("{restraint_fixed_ahead_read>restraint_longest_read}");
        restraints.word("_kind_number", "Kind by number", "_kind");
        restraints.word("_by_number", carrier, "_carried_by");
        tubes.on("{tube_first_ahead_read>tube_diameter_read}");
        tubes.word("_by_number", carrier, "_carried_by");
        restraints.print(
                new Fingerprint(lines)
                        .measured("restraint_fixed_ahead_read", "restraint_fixed_out_read")
                        .measured("restraint_fixed_height_read", "restraint_moving_ahead_read")
                        .measured("restraint_moving_out_read", "restraint_moving_height_read")
                        .measured("restraint_shortest_read", "restraint_longest_read")
                        .measured("restraint_kind_number", "restraint_by_number"));
        tubes.print(
                new Fingerprint(lines)
                        .measured("tube_first_ahead_read", "tube_first_out_read")
                        .measured("tube_first_height_read", "tube_second_ahead_read")
                        .measured("tube_second_out_read", "tube_second_height_read")
                        .measured("tube_diameter_read", "tube_by_number"));
    }

    /** Which of the offered words a row has, from 1; the first for an empty cell. */
    static String number(String column, String slot) {
        String cell = "INDEX(" + column + "," + slot + ")";
        return new Cases()
                .when(slot + ">ROWS(" + column + ")", 1)
                .when(cell + "=\"\"", 1)
                .words(cell, Contract.input(column).choices())
                .otherwise("0");
    }

    /**
     * A side's mark: a fingerprint of the rows of dampers and straps, and of what moves them; 0
     * while there is nothing to move.
     */
    static void mark(LiveLines lines) {
        LineSet<Sizing> side = LineSet.in(lines, Section.PATH_WORK, Grid.SIDE);
        // The linkage moves points whatever the path comes from.
        side.whole("linkage_mark", "Fingerprint of the linkage, 0 without")
                .cell(
                        "IF(ISNUMBER({linkage_print}),{linkage_print},0)",
                        (sizing, index) -> {
                            CellValue print = lines.line("linkage_print").core().at(sizing, index);
                            return print instanceof CellValue.Numeric ? print : CellValue.of(0);
                        });
        Fingerprint print =
                new Fingerprint(lines)
                        .sum("restraint_row_print")
                        .sum("tube_row_print")
                        .whole("path_print", "linkage_mark")
                        .measured("inner_ahead_used", "inner_offset_used", "inner_height_used");
        side.whole("restraint_mark", "Fingerprint of dampers, straps and tubes")
                .cell(
                        "IF(SUM(restraint_on)+SUM(tube_on)=0,0,IF({path_ready}=1,"
                                + print.formula(0)
                                + ",NA()))",
                        (sizing, index) -> {
                            if (!anyInUse(sizing)) {
                                return CellValue.of(0);
                            }
                            return sizing.path(index.side()).chosen().isPresent()
                                    ? CellValue.of(print.of(sizing, index, 0))
                                    : CellValue.NOT_AVAILABLE;
                        });
    }

    /** Whether any row of dampers, straps and bump stops is in use. */
    private static boolean anyRestraint(Sizing sizing) {
        return IntStream.range(0, Grid.RESTRAINT_SLOT.rows())
                .anyMatch(row -> SideRestraints.isTyped(sizing.inputs(), row));
    }

    /** The same of tubes too. */
    static boolean anyInUse(Sizing sizing) {
        return anyRestraint(sizing)
                || IntStream.range(0, Grid.TUBE_SLOT.rows())
                        .anyMatch(row -> SideRestraints.isTubeTyped(sizing.inputs(), row));
    }

    /** What moves on a side, empty while nothing does or nothing of it is in use. */
    static Optional<SideRestraints> moving(Sizing sizing, Index index, boolean inUse) {
        return Optional.of(sizing.path(index.side()).restraints())
                .filter(restraints -> inUse && restraints.canMove());
    }

    /** How they move on a side, row by row: an engine block. */
    static void declareCourses(LiveLines lines) {
        BLOCK.stamp(
                lines,
                new Fingerprint(lines).whole("restraint_mark").measured("tape_mm"),
                1,
                MOVING);
        LineSet<Sizing> rows = LineSet.in(lines, Section.RESTRAINT_ROWS, Grid.RESTRAINT_SIDE);
        RowNameLines.OF_RESTRAINTS.is(
                rows.revised(5).text("restraint_label", "Damper, strap or bump stop"));
        LineSet<RestraintCourse> course =
                rows.about(
                        (sizing, index) -> sizing.path(index.side()).restraints().row(index.row()),
                        Lacking.NO_FIGURES.value());
        course.shown("restraint_ride", "Length at ride").filled(RestraintCourse::lengthAtRide);
        course.number("restraint_ratio", "Length per height at ride")
                .filled(RestraintCourse::ratioAtRide);
        stop(course.of((row, index) -> row.alone().up()))
                .shown("restraint_up", "Stops the wheel, up")
                .filled(end -> Math.abs(end.travel()));
        stop(course.of((row, index) -> row.alone().down()))
                .shown("restraint_down", "Stops the wheel, down")
                .filled(end -> Math.abs(end.travel()));
    }

    /** An end of the travel that a restraint makes by itself. */
    static LineSet<TravelEnds.End> stop(LineSet<TravelEnds.End> ends) {
        return ends.ofAny(
                (end, index) -> Optional.of(end).filter(met -> met.stop().isRestraint()),
                Lacking.NO_FIGURES);
    }
}
