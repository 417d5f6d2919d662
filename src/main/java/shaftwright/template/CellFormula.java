package shaftwright.template;

/**
 * A cell's formula as a file holds it (CT_CellFormula, ECMA-376 part 1, 18.3.1.40).
 *
 * @param text empty in a cell that shares another one's
 * @param shared number of the shared formula, {@link #ALONE} of one that is not shared
 * @param cells of all that share it, in the cell that holds its text; else empty
 */
record CellFormula(String text, int shared, String cells) {
    /** Number of no shared formula. */
    static final int ALONE = -1;

    /** Of one cell only. */
    static CellFormula alone(String text) {
        return new CellFormula(text, ALONE, "");
    }

    /** Of the first of several cells. */
    static CellFormula first(String text, int shared, String cells) {
        return new CellFormula(text, shared, cells);
    }

    /** Of the others. */
    static CellFormula following(int shared) {
        return new CellFormula("", shared, "");
    }

    boolean isShared() {
        return shared != ALONE;
    }
}
