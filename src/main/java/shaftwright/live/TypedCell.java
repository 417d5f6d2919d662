package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import shaftwright.contract.Contract;

/** How sentences name a typed cell, such as "Parts E5": it follows when the cell is moved. */
final class TypedCell {
    private TypedCell() {}

    /**
     * As a formula.
     *
     * @param input name of the input, without side suffix
     * @param reference to the cell, as a formula
     */
    static String named(String input, String reference) {
        return title(input) + "&ADDRESS(ROW(" + reference + "),COLUMN(" + reference + "),4)";
    }

    /** The sheet's name and a blank, as a literal. */
    static String title(String input) {
        return quoted(Contract.sheet(Contract.input(input)).title() + " ");
    }
}
