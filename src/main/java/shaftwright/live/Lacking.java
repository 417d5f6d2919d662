package shaftwright.live;

import shaftwright.book.CellValue;

/** What cells show while what they are about is not known. */
enum Lacking {
    /** An error that spreads, which charts leave out. */
    NOT_AVAILABLE("NA()", CellValue.NOT_AVAILABLE),
    /** An empty text. */
    EMPTY("\"\"", CellValue.of("")),
    ZERO("0", CellValue.of(0)),
    /** What a block of figures holds that a fill found none for. */
    NO_FIGURES("\"" + Fingerprint.NOTHING + "\"", CellValue.of(Fingerprint.NOTHING));

    private final String formula;
    private final CellValue value;

    Lacking(String formula, CellValue value) {
        this.formula = formula;
        this.value = value;
    }

    CellValue value() {
        return value;
    }

    /** A formula that shows this unless a condition holds. */
    String unless(String condition, String formula) {
        return "IF(" + condition + "," + formula + "," + this.formula + ")";
    }
}
