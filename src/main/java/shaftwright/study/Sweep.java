package shaftwright.study;

import java.util.ArrayList;
import java.util.List;

/**
 * One scenario over a grid of two of its figures, each cell computed in full for both sides.
 *
 * @param rows cells by step down, then by step across
 */
public record Sweep(SweepAxis across, SweepAxis down, List<List<SweepCell>> rows) {
    public Sweep {
        rows = rows.stream().map(List::copyOf).toList();
    }

    static Sweep of(ScenarioVariants variants, SweepAxis across, SweepAxis down) {
        if (across.figure() == down.figure()) {
            throw new IllegalArgumentException(
                    "a sweep varies two figures; have " + down.figure() + " twice");
        }
        List<List<SweepCell>> rows = new ArrayList<>();
        for (int row = 0; row < down.values(); row++) {
            List<SweepCell> cells = new ArrayList<>();
            for (int column = 0; column < across.values(); column++) {
                double atRow = down.value(row);
                double atColumn = across.value(column);
                cells.add(
                        SweepCell.of(
                                variants.tried(
                                        now ->
                                                across.figure()
                                                        .set(
                                                                down.figure().set(now, atRow),
                                                                atColumn))));
            }
            rows.add(cells);
        }
        return new Sweep(across, down, rows);
    }

    /** What comes of a value down and one across, by step. */
    public SweepCell cell(int row, int column) {
        return rows.get(row).get(column);
    }
}
