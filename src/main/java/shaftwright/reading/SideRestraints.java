package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.contract.Grid;
import shaftwright.study.CornerStudy;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.study.SideStops;
import shaftwright.travel.Span;

/**
 * One side's dampers, straps, bump stops and tubes: what the core makes of them, by their rows in
 * the tables.
 */
public final class SideRestraints {
    /**
     * One row that could be worked out.
     *
     * @param row zero-based
     */
    public record Row(int row, RestraintCourse course) {}

    private final RestraintRows rows;
    private final Optional<CornerStudy> corner;

    /**
     * @param corner empty while the side has no path
     */
    SideRestraints(RestraintRows rows, Optional<CornerStudy> corner) {
        this.rows = rows;
        this.corner = corner;
    }

    /** Whether anything is typed into a row of the table of restraints. */
    public static boolean isTyped(InputValues inputs, int row) {
        return RestraintRows.isTyped(inputs, Grid.RESTRAINT, row);
    }

    /** The same of the table of tubes. */
    public static boolean isTubeTyped(InputValues inputs, int row) {
        return RestraintRows.isTyped(inputs, Grid.TUBE, row);
    }

    /** Whether points can be carried: there is a path, and it is known how far out it begins. */
    public boolean canMove() {
        return corner.isPresent() && corner.get().motion().carriesPoints();
    }

    /** The rows that could be worked out, in order. */
    public List<Row> rows() {
        List<Row> all = new ArrayList<>();
        for (RestraintCourse course : corner.map(CornerStudy::restraints).orElse(List.of())) {
            all.add(new Row(rows.restraints().get(all.size()), course));
        }
        return all;
    }

    /** A row worked out, empty when it could not be. */
    public Optional<RestraintCourse> row(int row) {
        return rows().stream().filter(each -> each.row == row).map(Row::course).findFirst();
    }

    /**
     * How long a row gets over the travel that a scenario wants; empty when it could not be worked
     * out, or not over all of that travel.
     */
    public Optional<Span.Course> course(SideStops stops, int row) {
        int place = rows.restraints().indexOf(row);
        return canMove() && place >= 0 ? stops.course(place) : Optional.empty();
    }

    /** Row of the tube that comes nearest to a boot, zero-based. */
    public int tubeRow(SideStops.Gap gap) {
        return rows.tubes().get(gap.tube());
    }
}
