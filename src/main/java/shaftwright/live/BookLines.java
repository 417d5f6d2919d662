package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.formula.FormulaText.number;
import static shaftwright.formula.FormulaText.quoted;

import java.util.function.Function;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;

/** The workbook's unit, and single typed cells as numbers. */
final class BookLines {
    private BookLines() {}

    static void declare(LiveLines lines) {
        LineSet<LengthUnit> set =
                LineSet.in(lines, Section.BOOK_WORK, BOOK).of((sizing, index) -> sizing.unit());
        set.mm("tape_mm", "Unit of bare numbers")
                .is(byUnit(unit -> number(unit.mm())), LengthUnit::mm);
        // For the formulas of older workbooks; LibreOffice drops its space when it loads the file.
        set.text("unit_word", "Unit as written")
                .is(byUnit(unit -> quoted(" " + unit.symbol())), unit -> " " + unit.symbol());
        set.since(2)
                .text("unit_symbol", "Unit in sentences")
                .is(byUnit(unit -> quoted(unit.symbol())), LengthUnit::symbol);
        set.whole("unit_decimals", "Decimals in sentences")
                .is(byUnit(unit -> number(Wording.decimals(unit))), Wording::decimals);
        ReadLines.declare(
                LineSet.in(lines, Section.BOOK_WORK, BOOK), BOOK, (input, index) -> input.name());
    }

    private static String byUnit(Function<LengthUnit, String> written) {
        return "IF(unit=\"inch\","
                + written.apply(LengthUnit.INCH)
                + ","
                + written.apply(LengthUnit.MILLIMETRE)
                + ")";
    }
}
