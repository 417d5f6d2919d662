package shaftwright.validity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What Excel wants of any formula, wherever in a workbook it stands. */
final class FormulaRules {
    /** Builders' oldest version; named formulas of the pack need the newest. */
    static final int OLDEST = 2010;

    static final int NEWEST = 2024;

    private final Set<String> names;
    private final Set<String> sheets;

    /**
     * @param names defined names, in small letters
     * @param sheets names of sheets, in small letters
     */
    FormulaRules(Set<String> names, Set<String> sheets) {
        this.names = names;
        this.sheets = sheets;
    }

    /** What is wrong with a formula, without the equals sign. */
    List<String> wrong(String text, ScannedFormula formula, int newest) {
        List<String> wrong = new ArrayList<>();
        if (!formula.trouble().isEmpty()) {
            wrong.add(formula.trouble());
            return wrong;
        }
        limit(wrong, text.length(), ExcelLimits.FORMULA_CHARACTERS, "characters");
        limit(wrong, formula.bytes(), ExcelLimits.FORMULA_BYTES, "bytes when parsed");
        limit(wrong, formula.deepest(), ExcelLimits.NESTED_FUNCTIONS, "levels of functions");
        for (int length : formula.literals()) {
            limit(wrong, length, ExcelLimits.FORMULA_TEXT, "characters in a text");
        }
        for (ScannedFormula.Called called : formula.calls()) {
            limit(
                    wrong,
                    called.arguments(),
                    ExcelLimits.ARGUMENTS,
                    "arguments of " + called.name());
            if (!isOwn(called.name())) {
                String trouble = ExcelFunctions.wrong(called.name(), newest);
                if (!trouble.isEmpty()) {
                    wrong.add(trouble);
                }
            }
        }
        if (formula.hasLostReference()) {
            wrong.add("#REF! in a formula");
        }
        for (String name : formula.names()) {
            if (!isOwn(name)) {
                wrong.add("no name " + name);
            }
        }
        for (String sheet : formula.sheets()) {
            if (!sheets.contains(sheet.toLowerCase(Locale.ROOT)) && !sheet.startsWith("[")) {
                wrong.add("no sheet \"" + sheet + "\"");
            }
        }
        return wrong;
    }

    private boolean isOwn(String name) {
        return names.contains(name.toLowerCase(Locale.ROOT))
                || name.startsWith("_xlpm.")
                || name.startsWith("_xlop.");
    }

    private static void limit(List<String> wrong, int have, int most, String what) {
        if (have > most) {
            wrong.add(have + " " + what + "; at most " + most);
        }
    }

    /** What Excel never writes into a shared formula (MS-XLS 2.5.198.118, MS-XLSB 2.5.98.98). */
    static List<String> wrongWhenShared(ScannedFormula formula) {
        List<String> wrong = new ArrayList<>();
        if (formula.hasArrayConstant()) {
            wrong.add("array constant in a shared formula");
        }
        if (!formula.sheets().isEmpty()) {
            wrong.add("another sheet in a shared formula");
        }
        if (formula.hasUnion() || formula.hasIntersection()) {
            wrong.add("union or intersection in a shared formula");
        }
        return wrong;
    }
}
