package shaftwright.contract;

import shaftwright.build.Side;

/**
 * Which of a quantity's cells is meant.
 *
 * @param side left for everything that is not sided
 * @param scenario zero-based, 0 for everything that all scenarios share
 * @param row zero-based row inside the side and scenario
 */
public record Index(Side side, int scenario, int row) {
    /** The place in a grid that stands at this offset among the cells of its defined name. */
    public static Index at(Grid grid, Side side, int offset, int scenarioCount) {
        if (!grid.perScenario()) {
            return new Index(side, 0, offset);
        }
        return grid.block()
                ? new Index(side, offset % scenarioCount, offset / scenarioCount)
                : new Index(side, offset / grid.rows(), offset % grid.rows());
    }

    /** Offset among the cells of one defined name of this grid. */
    public int offset(Grid grid, int scenarioCount) {
        if (!grid.perScenario()) {
            return row;
        }
        return grid.block() ? row * scenarioCount + scenario : scenario * grid.rows() + row;
    }
}
