package shaftwright.live;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.TravelSteps;
import shaftwright.units.LengthUnit;

/**
 * Declares live lines that share section, grid, contract version and what they are about. Where
 * that is not known, all of them show the same, and where they are guarded, so do their formulas. A
 * formula may say {@code <row_from_0>} or {@code <row_from_1>} for the number of its row, and
 * {@code <mirror>} where the right side's has the opposite sign.
 *
 * <p>The core gives numbers in mm and rad, which are shown in the unit of the line's quantity, and
 * NaN for an empty cell. Lines without a formula hold values that a fill writes.
 *
 * @param <T> what the core answers from
 */
final class LineSet<T> {
    /** A number by the core. */
    interface Figure<T> {
        double of(T from, Index index);
    }

    /** A number by the core for a row, from 0. */
    interface RowFigure<T> {
        double of(T from, int row);
    }

    /** A cell by the core. */
    interface Cell<T> {
        CellValue of(T from, Index index);
    }

    /** A cell by the core, in a workbook. */
    private interface Shown<T> {
        CellValue of(T from, Sizing sizing, Index index);
    }

    /** Where the lines stand, and which contract versions brought and last changed them. */
    private record Place(Section section, Grid grid, int since, int revised) {}

    /** Lines that are declared once more: under names of their own, about cells of their own. */
    interface Again {
        /** Lines that are declared once only. */
        Again SAME =
                new Again() {
                    @Override
                    public String name(String name) {
                        return name;
                    }

                    @Override
                    public String formula(String formula) {
                        return formula;
                    }
                };

        /** What a line is called. */
        String name(String name);

        /** A formula with places of its own. */
        String formula(String formula);
    }

    private static final int FIRST_VERSION = 1;

    /** Rows of a position table, for all formulas. */
    private static final Pieces CONSTANTS =
            Pieces.of("droop", TravelSteps.DROOP)
                    .and("ride", TravelSteps.RIDE)
                    .and("bump", TravelSteps.BUMP);

    private final LiveLines lines;
    private final Place place;

    /** What becomes of names and formulas where lines are declared once more for other cells. */
    private final Again again;

    /** What names, labels and formulas are put together from. */
    private final Pieces pieces;

    private final Known.Source<T> source;

    /** Condition of all formulas, empty for none. */
    private final String guard;

    /** What the formulas show without it. */
    private final Lacking lacking;

    /** What the core shows without its source. */
    private final LiveLine.Core nothing;

    /** Puts a formula into the conditions that it has by itself. */
    private final UnaryOperator<String> needs;

    private LineSet(
            LiveLines lines,
            Place place,
            Again again,
            Pieces pieces,
            Known.Source<T> source,
            String guard,
            Lacking lacking,
            LiveLine.Core nothing,
            UnaryOperator<String> needs) {
        this.lines = lines;
        this.place = place;
        this.again = again;
        this.pieces = pieces;
        this.source = source;
        this.guard = guard;
        this.lacking = lacking;
        this.nothing = nothing;
        this.needs = needs;
    }

    /** A set of lines that are about the whole workbook. */
    static LineSet<Sizing> in(LiveLines lines, Section section, Grid grid) {
        return new LineSet<>(
                lines,
                new Place(section, grid, FIRST_VERSION, FIRST_VERSION),
                Again.SAME,
                CONSTANTS,
                (sizing, index) -> Optional.of(sizing),
                "",
                Lacking.EMPTY,
                (sizing, index) -> Lacking.EMPTY.value(),
                UnaryOperator.identity());
    }

    /** The same about something else, whose absence the formulas see by themselves. */
    <U> LineSet<U> about(Known.Source<U> other, CellValue otherwise) {
        return about(other, (sizing, index) -> otherwise);
    }

    private <U> LineSet<U> about(Known.Source<U> other, LiveLine.Core otherwise) {
        return new LineSet<>(lines, place, again, pieces, other, guard, lacking, otherwise, needs);
    }

    /** The same, every formula and value only where something is known. */
    <U> LineSet<U> only(Known<U> known, Lacking otherwise) {
        return new LineSet<>(
                lines,
                place,
                again,
                pieces,
                known.source(),
                pieces.whole(known.condition()),
                otherwise,
                (sizing, index) -> otherwise.value(),
                needs);
    }

    /** The same about a part of it that is always there. */
    <U> LineSet<U> of(BiFunction<T, Index, U> part) {
        return about(
                (sizing, index) -> source.of(sizing, index).map(whole -> part.apply(whole, index)),
                nothing);
    }

    /** The same about a part that may be missing, which the formulas see by themselves. */
    <U> LineSet<U> ofAny(BiFunction<T, Index, Optional<U>> part, CellValue otherwise) {
        return about(
                (sizing, index) ->
                        source.of(sizing, index).flatMap(whole -> part.apply(whole, index)),
                (sizing, index) ->
                        source.of(sizing, index).isPresent()
                                ? otherwise
                                : nothing.at(sizing, index));
    }

    /** The same. */
    <U> LineSet<U> ofAny(BiFunction<T, Index, Optional<U>> part, Lacking otherwise) {
        return ofAny(part, otherwise.value());
    }

    /** The same where cells without it are empty. */
    <U> LineSet<U> ofAny(BiFunction<T, Index, Optional<U>> part) {
        return ofAny(part, Lacking.EMPTY);
    }

    /** The same whose formulas show an empty text where a cell, or its formula, is no number. */
    LineSet<T> given(String cell) {
        return inside(formula -> Given.number(cell, formula));
    }

    /** The same where one of several is none. */
    LineSet<T> givenAll(String... cells) {
        return inside(formula -> Given.all(formula, cells));
    }

    /** The same where a condition does not hold. */
    LineSet<T> when(String condition) {
        return inside(formula -> Given.when(condition, formula));
    }

    /** The same where the scenario is not in use. */
    LineSet<T> whenUsed() {
        return inside(Given::used);
    }

    /** The same where a row of a table is 0, which stands for none. */
    LineSet<T> inRow(String row) {
        return inside(formula -> Given.row(row, formula));
    }

    /** The core tells by itself where such conditions do not hold; the first is the outermost. */
    private LineSet<T> inside(UnaryOperator<String> condition) {
        return new LineSet<>(
                lines,
                place,
                again,
                pieces,
                source,
                guard,
                lacking,
                nothing,
                formula -> needs.apply(condition.apply(formula)));
    }

    private LineSet<T> at(Place other) {
        return new LineSet<>(lines, other, again, pieces, source, guard, lacking, nothing, needs);
    }

    /** The same with pieces for names, labels and formulas that say {@code <name>}. */
    LineSet<T> with(Pieces more) {
        return new LineSet<>(
                lines, place, again, pieces.and(more), source, guard, lacking, nothing, needs);
    }

    /** The same once more elsewhere. */
    LineSet<T> again(Again other) {
        return new LineSet<>(lines, place, other, pieces, source, guard, lacking, nothing, needs);
    }

    /** The same for an end of the shaft. */
    LineSet<T> at(ShaftEnd end) {
        return with(EndText.of(end));
    }

    /** The same elsewhere. */
    LineSet<T> in(Section section, Grid grid) {
        return at(new Place(section, grid, place.since, place.revised));
    }

    /** The same for lines that this contract version brought. */
    LineSet<T> since(int version) {
        return at(new Place(place.section, place.grid, version, Math.max(version, place.revised)));
    }

    /** The same for lines whose formulas this contract version last changed. */
    LineSet<T> revised(int version) {
        return at(new Place(place.section, place.grid, place.since, version));
    }

    /** A working length, mm. */
    NumberLine<T> mm(String name, String label) {
        return of(Quantity.MILLIMETRE, name, label);
    }

    /** A length as a builder reads it; the core has mm. */
    NumberLine<T> shown(String name, String label) {
        return of(Quantity.SHOWN_LENGTH, name, label);
    }

    /** A working angle, rad. */
    NumberLine<T> rad(String name, String label) {
        return of(Quantity.RADIAN, name, label);
    }

    /** An angle as a builder reads it; the core has rad. */
    NumberLine<T> deg(String name, String label) {
        return of(Quantity.DEGREE, name, label);
    }

    /** A number with its own meaning. */
    NumberLine<T> number(String name, String label) {
        return of(Quantity.NUMBER, name, label);
    }

    /** A count, a row, or 1 for yes and 0 for no. */
    NumberLine<T> whole(String name, String label) {
        return of(Quantity.WHOLE, name, label);
    }

    /** A torque in the workbook's unit; the core has N·m. */
    NumberLine<T> torque(String name, String label) {
        return new NumberLine<>(this, name, label, Quantity.TORQUE);
    }

    /** A safety factor or a share. */
    NumberLine<T> factor(String name, String label) {
        return new NumberLine<>(this, name, label, Quantity.FACTOR);
    }

    /** An amount in the builder's currency. */
    NumberLine<T> money(String name, String label) {
        return of(Quantity.MONEY, name, label);
    }

    /** A number of another quantity. */
    NumberLine<T> of(Quantity quantity, String name, String label) {
        return new NumberLine<>(this, name, label, quantity);
    }

    /** The numbers of a table's rows, from 1: constants, by which rows are found again. */
    void ordinal(String name, String label) {
        ordinal(name, label, 1);
    }

    /** The same from another first number. */
    void ordinal(String name, String label, int first) {
        add(
                name,
                label,
                Quantity.ORDINAL,
                index -> String.valueOf(index.row() + first),
                (sizing, index) -> CellValue.of(index.row() + first));
    }

    /** A text. */
    TextLine<T> text(String name, String label) {
        return new TextLine<>(this, name, label);
    }

    /** A line with a number, once it is said what it is. */
    record NumberLine<T>(LineSet<T> set, String name, String label, Quantity quantity) {
        /** Declares it. */
        void is(String formula, ToDoubleFunction<T> core) {
            is(formula, (from, index) -> core.applyAsDouble(from));
        }

        /** The same where the core tells by row. */
        void is(String formula, Figure<T> core) {
            set.add(name, label, quantity, set.constant(formula), set.number(quantity, core));
        }

        /** The same where that is all that matters. */
        void byRow(String formula, RowFigure<T> core) {
            is(formula, (from, index) -> core.of(from, index.row()));
        }

        /** The same where the formula differs by row. */
        void byRow(IntFunction<String> formula, RowFigure<T> core) {
            is(index -> formula.apply(index.row()), (from, index) -> core.of(from, index.row()));
        }

        /** The same where the formula differs by side or row. */
        void is(LiveLine.Formula formula, Figure<T> core) {
            set.add(name, label, quantity, set.filled(formula), set.number(quantity, core));
        }

        /** Declares one that is 1 for yes and 0 for no. */
        void yes(String formula, Predicate<T> core) {
            is(formula, from -> core.test(from) ? 1 : 0);
        }

        /** The same where the core tells by row. */
        void yes(String formula, BiPredicate<T, Index> core) {
            is(formula, (from, index) -> core.test(from, index) ? 1 : 0);
        }

        /** The same where the formula differs by side or row. */
        void yes(LiveLine.Formula formula, BiPredicate<T, Index> core) {
            is(formula, (from, index) -> core.test(from, index) ? 1 : 0);
        }

        /** Declares one that may not be known. */
        void ifKnown(String formula, Function<T, OptionalDouble> core) {
            is(formula, from -> core.apply(from).orElse(Double.NaN));
        }

        /** The same where the core tells by row. */
        void ifKnown(String formula, BiFunction<T, Index, OptionalDouble> core) {
            is(formula, (from, index) -> core.apply(from, index).orElse(Double.NaN));
        }

        /** Declares one whose cells may hold words in place of a number. */
        void cell(String formula, Cell<T> core) {
            set.add(name, label, quantity, set.constant(formula), set.value(core));
        }

        /** The same where the formula differs by side or row. */
        void cell(LiveLine.Formula formula, Cell<T> core) {
            set.add(name, label, quantity, set.filled(formula), set.value(core));
        }

        /** Declares one that a fill writes. */
        void filled(ToDoubleFunction<T> core) {
            filled((from, index) -> core.applyAsDouble(from));
        }

        /** The same, told by row. */
        void filled(Figure<T> core) {
            set.add(name, label, quantity, LiveLine.NONE, set.number(quantity, core));
        }

        /** Declares one that a fill writes, whose cells may hold words in place of a number. */
        void filledCell(Cell<T> core) {
            set.add(name, label, quantity, LiveLine.NONE, set.value(core));
        }
    }

    /** A line with a text, once it is said what it is. */
    record TextLine<T>(LineSet<T> set, String name, String label) {
        /** Declares it. */
        void is(String formula, Function<T, String> core) {
            is(formula, (from, index) -> core.apply(from));
        }

        /** The same where the core tells by row. */
        void is(String formula, BiFunction<T, Index, String> core) {
            add(set.constant(formula), core);
        }

        /** The same where the formula differs by side or row. */
        void is(LiveLine.Formula formula, BiFunction<T, Index, String> core) {
            add(set.filled(formula), core);
        }

        /** The same where the core asks for the workbook's unit of lengths. */
        void inUnit(String formula, BiFunction<T, LengthUnit, String> core) {
            inUnit(set.constant(formula), core);
        }

        private void inUnit(LiveLine.Formula formula, BiFunction<T, LengthUnit, String> core) {
            Shown<T> words = (from, sizing, index) -> CellValue.of(core.apply(from, sizing.unit()));
            set.add(name, label, Quantity.TEXT, formula, set.core(words));
        }

        /** Declares one that a fill writes. */
        void filled(Function<T, String> core) {
            add(LiveLine.NONE, (from, index) -> core.apply(from));
        }

        /** The same where the core asks for the workbook's unit of lengths. */
        void filledInUnit(BiFunction<T, LengthUnit, String> core) {
            inUnit(LiveLine.NONE, core);
        }

        private void add(LiveLine.Formula formula, BiFunction<T, Index, String> core) {
            Cell<T> cell = (from, index) -> CellValue.of(core.apply(from, index));
            set.add(name, label, Quantity.TEXT, formula, set.value(cell));
        }
    }

    /** A fingerprint of what is known. */
    void print(String name, String label, Fingerprint print) {
        print(name, label, print, 0);
    }

    /**
     * The same of a row that weighs other than the row above it.
     *
     * @param terms by how many weights a row begins after the row above it
     */
    void print(String name, String label, Fingerprint print, int terms) {
        add(
                name,
                label,
                Quantity.WHOLE,
                index -> print.formula(terms * index.row()),
                printed(print, terms));
    }

    /** Fingerprints of a table's rows; 0 where a cell of the row says that nothing counts. */
    void rowPrint(String name, String counts, Fingerprint print, int terms) {
        add(
                name,
                "Fingerprint of the row",
                Quantity.WHOLE,
                index ->
                        ("IF({" + counts + "}=0,0,IFERROR(")
                                + (print.formula(terms * index.row()) + ",0))"),
                printed(print, terms));
    }

    /** A fingerprint as it was when a fill wrote it. */
    void filledPrint(String name, String label, Fingerprint print) {
        add(name, label, Quantity.WHOLE, LiveLine.NONE, printed(print, 0));
    }

    private LiveLine.Core printed(Fingerprint print, int terms) {
        return core(
                (from, sizing, index) ->
                        CellValue.of(print.of(sizing, index, terms * index.row())));
    }

    private LiveLine.Formula constant(String formula) {
        if (formula.contains("<row_from_") || formula.contains("<mirror>")) {
            return filled(
                    index ->
                            Pieces.of("row_from_0", index.row())
                                    .and("row_from_1", index.row() + 1)
                                    .and("mirror", index.side() == Side.LEFT ? "" : "0-")
                                    .in(formula));
        }
        String filled = filled(formula);
        return index -> filled;
    }

    private LiveLine.Formula filled(LiveLine.Formula formula) {
        return index -> filled(formula.at(index));
    }

    private String filled(String formula) {
        return again.formula(pieces.whole(needs.apply(formula)));
    }

    private LiveLine.Formula guarded(LiveLine.Formula formula) {
        return guard.isEmpty() || formula == LiveLine.NONE
                ? formula
                : index -> lacking.unless(guard, formula.at(index));
    }

    private LiveLine.Core value(Cell<T> core) {
        return core((from, sizing, index) -> core.of(from, index));
    }

    private LiveLine.Core number(Quantity quantity, Figure<T> core) {
        return core(
                (from, sizing, index) ->
                        ReadLines.shown(quantity.shown(core.of(from, index), sizing.unit())));
    }

    private LiveLine.Core core(Shown<T> shown) {
        return (sizing, index) ->
                source.of(sizing, index)
                        .map(from -> shown.of(from, sizing, index))
                        .orElseGet(() -> nothing.at(sizing, index));
    }

    private void add(
            String name,
            String label,
            Quantity quantity,
            LiveLine.Formula formula,
            LiveLine.Core core) {
        lines.add(
                new LiveLine(
                        again.name(pieces.whole(name)),
                        place.section,
                        place.grid,
                        pieces.whole(label),
                        quantity,
                        guarded(formula),
                        core,
                        place.since,
                        place.revised));
    }
}
