package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import shaftwright.study.Finding;

/**
 * One scenario over a grid of two of its inputs, each cell computed in full for both sides; the
 * graver side's finding and the tighter side's window stand for it.
 */
public final class Sweep {
    /**
     * One cell.
     *
     * @param obstacle the gravest finding that keeps a shaft from being cut, empty when both sides'
     *     can be cut from a blank of the list
     * @param width length window of the tighter side, mm, negative when no shaft fits; NaN where
     *     nothing can be computed
     */
    public record Cell(Optional<Finding> obstacle, double width) {
        /** Whether the path was not measured as far as the wheel would travel. */
        public boolean beyondHeights() {
            return obstacle.isPresent() && obstacle.get() == Finding.BEYOND_PATH;
        }

        public boolean fits() {
            return obstacle.isEmpty();
        }
    }

    private final SweepAxis across;
    private final SweepAxis down;
    private final Cell[][] cells;

    private Sweep(SweepAxis across, SweepAxis down, Cell[][] cells) {
        this.across = across;
        this.down = down;
        this.cells = cells;
    }

    /**
     * Computes the grid.
     *
     * @param sizing the workbook
     * @param scenario the scenario to vary
     * @throws IllegalArgumentException if both axes vary the same input
     */
    public static Sweep of(Sizing sizing, int scenario, SweepAxis across, SweepAxis down) {
        if (across.input().name().equals(down.input().name())) {
            throw new IllegalArgumentException(
                    "a sweep varies two inputs; have " + down.input().name() + " twice");
        }
        Cell[][] cells = new Cell[down.values()][across.values()];
        for (int row = 0; row < cells.length; row++) {
            for (int column = 0; column < cells[row].length; column++) {
                cells[row][column] =
                        cell(
                                sizing.trial(
                                        scenario,
                                        List.of(
                                                change(down, row, scenario),
                                                change(across, column, scenario))));
            }
        }
        return new Sweep(across, down, cells);
    }

    private static Change change(SweepAxis axis, int step, int scenario) {
        return Change.number(axis.input().name(), scenario, axis.value(step));
    }

    private static Cell cell(ScenarioOutcome outcome) {
        return new Cell(outcome.shaftVerdict().obstacle(), outcome.narrowerWindow());
    }

    public SweepAxis across() {
        return across;
    }

    public SweepAxis down() {
        return down;
    }

    /** What comes of a value down and one across, by step. */
    public Cell cell(int row, int column) {
        return cells[row][column];
    }
}
