package shaftwright.template;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SharedFormula;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg;
import shaftwright.book.CellPlace;
import shaftwright.xlsx.DefinedName;
import shaftwright.xlsx.FormulaBook;
import shaftwright.xlsx.StoredFormula;

/** The parsed formulas of a file, those that can be relied on; each is parsed once. */
final class TrustedFormulas {
    private static final SharedFormula SHIFT = new SharedFormula(SpreadsheetVersion.EXCEL2007);

    private final FormulaBook book;

    /** Knows sheets and names, which is all that parsing asks for. */
    private final StoredWorkbook parsing;

    private final Map<CellPlace, Ptg[]> cells = new HashMap<>();
    private final Map<DefinedName, Ptg[]> names = new HashMap<>();
    private final Set<CellPlace> untrusted = new HashSet<>();

    TrustedFormulas(FormulaBook book) {
        this.book = book;
        this.parsing = new StoredWorkbook(book, this, Set.of(), Map.of(), PackFunctions.finder());
    }

    /** From now on a formula is not relied on, nor any that reads its cell. */
    void distrust(CellPlace place) {
        untrusted.add(place);
    }

    /**
     * The tokens of a cell's formula, with guards where programs differ.
     *
     * @throws UntrustedFormulaException if the formula cannot be relied on
     */
    Ptg[] tokens(CellPlace place) {
        if (untrusted.contains(place)) {
            throw new UntrustedFormulaException("was computed otherwise");
        }
        Ptg[] tokens = cells.get(place);
        if (tokens == null) {
            tokens = parsed(place);
            cells.put(place, tokens);
        }
        return tokens;
    }

    private Ptg[] parsed(CellPlace place) {
        StoredFormula formula = book.formula(place).orElseThrow();
        if (formula.kind() != StoredFormula.Kind.CELL || formula.text().isEmpty()) {
            throw new UntrustedFormulaException("is an array formula or a what-if table");
        }
        int sheet = parsing.getSheetIndex(place.sheet());
        Ptg[] tokens = parse(formula.text(), FormulaType.CELL, sheet, formula.home().row());
        if (formula.isShifted(place)) {
            for (Ptg token : tokens) {
                if (token instanceof Pxg) {
                    throw new UntrustedFormulaException("shares a reference to another sheet");
                }
            }
            tokens =
                    SHIFT.convertSharedFormulas(
                            tokens,
                            place.row() - formula.home().row(),
                            place.column() - formula.home().column());
        }
        FormulaTrust.check(tokens);
        return guarded(tokens, FormulaType.CELL, sheet, place.row());
    }

    /**
     * The tokens of a name's formula.
     *
     * @throws UntrustedFormulaException if it cannot be relied on
     */
    Ptg[] tokens(DefinedName name) {
        Ptg[] tokens = names.get(name);
        if (tokens == null) {
            int sheet = name.sheet().isEmpty() ? -1 : parsing.getSheetIndex(name.sheet());
            tokens = parse(name.formula(), FormulaType.NAMEDRANGE, sheet, 0);
            FormulaTrust.checkName(tokens);
            if (tokens.length > 1) {
                tokens = guarded(tokens, FormulaType.NAMEDRANGE, sheet, 0);
            }
            names.put(name, tokens);
        }
        return tokens;
    }

    private Ptg[] guarded(Ptg[] tokens, FormulaType type, int sheet, int row) {
        return Guards.areNeeded(tokens)
                ? parse(Guards.around(parsing, tokens), type, sheet, row)
                : tokens;
    }

    private Ptg[] parse(String text, FormulaType type, int sheet, int row) {
        return FormulaParser.parse(text, parsing, type, sheet, row);
    }
}
