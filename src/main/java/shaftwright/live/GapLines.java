package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.RowGaps;

/** The places halfway between neighbouring rows, from the highest down, and the least known one. */
enum GapLines implements LiveLine.Formula, LiveLine.Core {
    HEIGHT(
            "gap_height",
            READING_SLOT,
            "Halfway to the next row",
            MILLIMETRE,
            "(LARGE({row_height:all},{row_slot})+LARGE({row_height:all},{row_slot}+1))/2"),
    NORM(
            "gap_norm",
            READING_SLOT,
            "The same, normalised",
            NUMBER,
            "(2*({gap_height}-{ride_height_used})-{fit_high}-{fit_low})/({fit_high}-{fit_low})"),
    DEVIATION(
            "gap_deviation",
            READING_SLOT,
            "How well it is known",
            NUMBER,
            "ROUND(SQRT(MAX(0," + PathLines.horner("fit_hat", "{gap_norm}") + ")),6)"),
    LEAST_KNOWN(
            "gap_least_known",
            SIDE,
            "Best height for one more row",
            MILLIMETRE,
            "INDEX({gap_height:all},MATCH(MAX({gap_deviation:all}),{gap_deviation:all},0))");

    private final String name;
    private final Grid grid;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    GapLines(String name, Grid grid, String label, Quantity quantity, String formula) {
        this.name = name;
        this.grid = grid;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (GapLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.PATH_WORK,
                            line.grid,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public int since() {
        return 2;
    }

    @Override
    public String at(Index index) {
        String ready = this == LEAST_KNOWN ? "1" : "IF({row_slot}<{path_rows},1,0)";
        return "IF({fit_ready}*" + ready + "=1," + formula + ",0)";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        MeasuredPath path = sizing.readings(index.side()).path().orElse(null);
        if (path == null) {
            return CellValue.of(0);
        }
        RowGaps gaps = path.gaps();
        boolean has = index.row() < gaps.count();
        return CellValue.of(
                switch (this) {
                    case HEIGHT -> has ? gaps.height(index.row()) : 0;
                    case NORM -> has ? gaps.normalised(index.row()) : 0;
                    case DEVIATION -> has ? gaps.deviation(index.row()) : 0;
                    case LEAST_KNOWN -> gaps.leastKnown();
                });
    }
}
