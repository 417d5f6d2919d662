package shaftwright.live;

import shaftwright.formula.Pieces;

/**
 * What a mock-up adds to the spacings and to the doubt of a row of positions, as formulas: pieces
 * {@code <added_in>}, {@code <added_out>} and {@code <added_doubt>}.
 */
final class StickCorrection {
    private static final String WHERE = "+IF({stick_use}<2,0,";

    /** Of a scenario that may be corrected. */
    static final Pieces PIECES =
            Pieces.of("added_in", WHERE + added("in", "out", "MIN") + ")")
                    .and("added_out", WHERE + added("out", "in", "MAX") + ")")
                    .and("added_doubt", WHERE + "{stick_doubt})");

    /** Where nothing is. */
    static final Pieces NO_PIECES =
            Pieces.of("added_in", "").and("added_out", "").and("added_doubt", "");

    private StickCorrection() {}

    /** Of an end of the window; one that was not read follows the other where that narrows it. */
    private static String added(String end, String other, String narrower) {
        return Pieces.of("own", line(end))
                .and("others", line(other))
                .and("end", end)
                .and("narrower", narrower)
                .in("IF({stick_count_<end>}>0,<own>,<narrower>(0,<others>))");
    }

    /** Held beyond the lowest and the highest height; 0 where nothing was read. */
    private static String line(String end) {
        return Pieces.of("end", end)
                .in(
                        """
                        ({stick_level_<end>}+{stick_slope_<end>}
                        *MAX({stick_low_<end>},MIN({travel},{stick_high_<end>})))
                        """);
    }
}
