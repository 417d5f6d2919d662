package shaftwright.live;

import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;

/**
 * The stamp over figures that a fill writes, and what it is made from: {@code NAME_print}, the live
 * {@link Fingerprint} of all that the figures follow from; {@code NAME_print_filled}, the same as
 * it was when they were written; {@code NAME_stamp}, which says whether the two are equal. Where
 * there is nothing to compute both are {@link Fingerprint#NOTHING} and the stamp is empty.
 *
 * @param name of the block, with which its lines' names begin
 * @param grid how often the block occurs
 * @param working section of the fingerprints
 * @param shown section of the block
 * @param since contract version that brought what is declared through it
 * @param revised contract version that last changed its fingerprint
 */
record EngineBlock(String name, Grid grid, Section working, Section shown, int since, int revised) {
    private static final int FIRST_VERSION = 1;

    /** A block that the first contract version had. */
    EngineBlock(String name, Grid grid, Section working, Section shown) {
        this(name, grid, working, shown, FIRST_VERSION, FIRST_VERSION);
    }

    /** The same block, to declare what this contract version brought. */
    EngineBlock since(int version) {
        return new EngineBlock(name, grid, working, shown, version, version);
    }

    /** The same block, to declare its stamp over a fingerprint that this version changed. */
    EngineBlock revised(int version) {
        return new EngineBlock(name, grid, working, shown, since, version);
    }

    static final String CURRENT = "current";
    static final String OUT_OF_DATE = "out of date: fill again";

    /** Whether a cell of the block has figures. */
    interface Present {
        boolean has(Sizing sizing, Index index);
    }

    /** A figure of the block, asked for only where there are figures. */
    interface Figure {
        CellValue at(Sizing sizing, Index index);
    }

    /**
     * Declares fingerprints and stamp.
     *
     * @param print of all that the figures follow from
     * @param presentFormula the condition under which there are figures, as a formula
     * @param present the same by the core
     */
    void stamp(LiveLines lines, Fingerprint print, String presentFormula, Present present) {
        String live = name + "_print";
        String filled = live + "_filled";
        Print printed = new Print(print, presentFormula, present);
        lines.add(
                new LiveLine(
                                live,
                                working,
                                grid,
                                "Fingerprint of inputs: " + name,
                                WHOLE,
                                printed,
                                printed)
                        .since(since)
                        .revised(revised));
        lines.add(
                LiveLine.engine(
                                filled,
                                working,
                                grid,
                                "The same at the last fill: " + name,
                                WHOLE,
                                printed)
                        .since(since));
        Stamp stamp = new Stamp(live, filled, present);
        lines.add(
                new LiveLine(
                                name + "_stamp",
                                shown,
                                grid,
                                "The figures below are",
                                TEXT,
                                stamp,
                                stamp)
                        .since(since));
    }

    /** Declares a figure. */
    void figure(
            LiveLines lines,
            String figure,
            String label,
            Quantity quantity,
            Present present,
            Figure core) {
        lines.add(
                LiveLine.engine(
                                name + "_" + figure,
                                shown,
                                grid,
                                label,
                                quantity,
                                new OrNothing(present, core))
                        .since(since));
    }

    private record Print(Fingerprint print, String presentFormula, Present present)
            implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return "IF("
                    + presentFormula
                    + ","
                    + print.formula(0)
                    + ",\""
                    + Fingerprint.NOTHING
                    + "\")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return present.has(sizing, index)
                    ? CellValue.of(print.of(sizing, index, 0))
                    : CellValue.of(Fingerprint.NOTHING);
        }
    }

    private record Stamp(String live, String filled, Present present)
            implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            String place = "{" + live + "}";
            String old = "\"" + OUT_OF_DATE + "\"";
            String nothing = "\"" + Fingerprint.NOTHING + "\"";
            String equal = "IF(" + place + "=" + nothing + ",\"\",\"" + CURRENT + "\")";
            return "IFERROR(IF("
                    + place
                    + "={"
                    + filled
                    + "},"
                    + equal
                    + ","
                    + old
                    + "),"
                    + old
                    + ")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(present.has(sizing, index) ? CURRENT : "");
        }
    }

    private record OrNothing(Present present, Figure figure) implements LiveLine.Core {
        @Override
        public CellValue at(Sizing sizing, Index index) {
            return present.has(sizing, index)
                    ? figure.at(sizing, index)
                    : CellValue.of(Fingerprint.NOTHING);
        }
    }
}
