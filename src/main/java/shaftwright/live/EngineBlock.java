package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import shaftwright.contract.Grid;

/**
 * A block of figures that a fill writes, with a stamp over it, and what that is made from: {@code
 * NAME_print}, the live {@link Fingerprint} of all that the figures follow from; {@code
 * NAME_print_filled}, the same as it was when they were written; {@code NAME_stamp}, which says
 * whether the two are equal. Where there is nothing to compute both are {@link Fingerprint#NOTHING}
 * and the stamp is empty.
 *
 * @param name of the block, with which its lines' names begin
 * @param grid how often the block occurs
 * @param working section of the fingerprints
 * @param shown section of the block
 * @param since contract version that brought it
 */
record EngineBlock(String name, Grid grid, Section working, Section shown, int since) {
    static final String CURRENT = "current";
    static final String OUT_OF_DATE = "out of date: fill again";

    /** A block of the first version. */
    EngineBlock(String name, Grid grid, Section working, Section shown) {
        this(name, grid, working, shown, 1);
    }

    /** The same brought by a later version. */
    EngineBlock since(int version) {
        return new EngineBlock(name, grid, working, shown, version);
    }

    /**
     * Declares fingerprints and stamp.
     *
     * @param print of all that the figures follow from
     * @param revised contract version that last changed that
     * @param known what there are figures of
     */
    void stamp(LiveLines lines, Fingerprint print, int revised, Known<?> known) {
        String live = name + "_print";
        String filled = live + "_filled";
        LineSet<?> work =
                LineSet.in(lines, working, grid).since(since).only(known, Lacking.NO_FIGURES);
        work.revised(revised).print(live, "Fingerprint of inputs: " + name, print);
        work.filledPrint(filled, "The same at the last fill: " + name, print);
        LineSet.in(lines, shown, grid)
                .since(since)
                .about(known.source(), Lacking.EMPTY.value())
                .text(name + "_stamp", "The figures below are")
                .is(stamp("{" + live + "}", "{" + filled + "}"), figures -> CURRENT);
    }

    private static String stamp(String live, String filled) {
        String old = quoted(OUT_OF_DATE);
        String equal =
                "IF(" + live + "=" + quoted(Fingerprint.NOTHING) + ",\"\"," + quoted(CURRENT) + ")";
        return "IFERROR(IF(" + live + "=" + filled + "," + equal + "," + old + ")," + old + ")";
    }

    /** Figures of the block, asked for only where there are some. */
    <T> LineSet<T> figures(LiveLines lines, Known.Source<T> source) {
        return LineSet.in(lines, shown, grid)
                .since(since)
                .about(source, Lacking.NO_FIGURES.value());
    }
}
