package shaftwright.contract;

import shaftwright.study.DerivationLine;
import shaftwright.study.DerivationStep.Topic;
import shaftwright.study.ViewPart;

/**
 * How often a named quantity occurs in a workbook: once, once a side, once a scenario, once a row
 * of some table, or a combination. A sided quantity has one defined name a side; the cells of one
 * name run over scenarios (when it has them) and, inside each, over rows.
 */
public enum Grid {
    BOOK(false, false, 1),
    SIDE(true, false, 1),
    /** A typed row of tape readings; the live cells that read them have spare rows. */
    READING(true, false, 15),
    READING_SLOT(true, false, 20),
    /** A term of an orthogonal-polynomial fit, degree 0 to 5. */
    TERM(true, false, 6),
    /** A power of the normalised travel in the hub path's polynomials, 0 to 11. */
    POWER(true, false, 12),
    /** A pick-up point of a linkage. */
    LINKAGE_POINT(true, false, 10),
    /** A pick-up point that a scenario has elsewhere. */
    OWN_POINT(false, false, 10),
    OWN_POINT_SLOT(false, false, 12),
    /** The same as it counts on one side. */
    OWN_POINT_SIDE(true, false, 12),
    /** A power of the normalised travel in a scenario's own hub path. */
    SCENARIO_POWER(true, true, 12),
    JOINT(false, false, 16),
    JOINT_SLOT(false, false, 20),
    BENCH(false, false, 40),
    BENCH_SLOT(false, false, 45),
    /**
     * A row of the sorted list of all joints' travel limits: bench rows and two a straight joint.
     */
    LIMIT(false, false, 85),
    BOOT(false, false, 8),
    BOOT_SLOT(false, false, 10),
    BLANK(false, false, 12),
    BLANK_SLOT(false, false, 15),
    /** A row that says how the teeth of a joint's or a blank's spline are shaped. */
    SPLINE(false, false, 10),
    SPLINE_SLOT(false, false, 12),
    /** A blank's row of that table beside a joint's: row of the blank's by row of the joint's. */
    SPLINE_PAIR(false, false, 144),
    MATERIAL(false, false, 8),
    MATERIAL_SLOT(false, false, 10),
    /** What a joint and its flange bolts carry. */
    RATED(false, false, 8),
    RATED_SLOT(false, false, 10),
    /** A part that the builder has a figure for. */
    RATING(false, false, 6),
    RATING_SLOT(false, false, 8),
    /** A duty of the joints: share of time, torque, speed. */
    DUTY(false, false, 5),
    DUTY_SLOT(false, false, 6),
    /** Something that may move a length. */
    DOUBT(false, false, 10),
    DOUBT_SLOT(false, false, 12),
    /** A finished shaft. */
    AS_CUT(true, false, 1),
    /** A wheel position at which the finished shaft is measured. */
    BUILT(true, false, 3),
    /** A mock-up stick. */
    STICK(true, false, 1),
    /** A wheel height at which it was read. */
    STICK_READING(true, false, 6),
    /** An entry of the service log. */
    SERVICE(false, false, 20),
    /** A damper, strap or bump stop. */
    RESTRAINT(false, false, 5),
    RESTRAINT_SLOT(false, false, 6),
    /** The same as it moves on one side. */
    RESTRAINT_SIDE(true, false, 6),
    /** The same over each scenario's travel, scenarios side by side. */
    RESTRAINT_TABLE(true, true, 6),
    /** A tube that a boot may rub on. */
    TUBE(false, false, 3),
    TUBE_SLOT(false, false, 4),
    SCENARIO(false, true, 1),
    SCENARIO_SIDE(true, true, 1),
    /** A travel position of a scenario's side. */
    POSITION(true, true, 25),
    /** The same position as shown in the tables, scenarios side by side. */
    TABLE(true, true, 25),
    /** A point of a limit line in a side's charts. */
    CHART_POINT(true, false, 25),
    /** A point of the drawing on a shop card. */
    DRAWN_POINT(true, false, 69),
    /** A wheel position of a side's drawing: full droop, ride, full bump. */
    VIEW_STAND(true, false, ViewPart.STANDS),
    /** A travel on the outer datum's way from droop to bump. */
    VIEW_WAY(true, false, ViewPart.WAY.size()),
    /** Where the line along a linkage goes, point by point. */
    VIEW_ORDER(false, false, 21),
    /** A point of a side's drawing. */
    VIEW_SPOT(true, false, 196),
    /** A square along an edge of it. */
    VIEW_TICK(true, false, ViewPart.SQUARES),
    /** A line of what is given on a side's page that shows how its length came about. */
    HOW_GIVEN(true, false, DerivationLine.of(Topic.GIVEN).size()),
    /** The same at the positions that set the limits. */
    HOW_POSITIONS(true, false, DerivationLine.of(Topic.POSITIONS).size()),
    /** The same of the choice. */
    HOW_CHOICE(true, false, DerivationLine.of(Topic.CHOICE).size()),
    BLANK_REVIEW(true, true, 15),
    BLANK_TABLE(true, true, 12),
    /** A row of that table, which names a blank. */
    BLANK_NAME(true, false, 12),
    /** A change that was tried on a scenario. */
    LEVER(false, false, 10),
    /** A value along one edge of the grid of variants. */
    SWEEP_STEP(false, false, 7),
    /** A cell of the grid of variants, row by row. */
    SWEEP_CELL(false, false, 49);

    private final boolean sided;
    private final boolean scenarios;
    private final int rows;

    Grid(boolean sided, boolean scenarios, int rows) {
        this.sided = sided;
        this.scenarios = scenarios;
        this.rows = rows;
    }

    /** Whether each side has its own. */
    public boolean sided() {
        return sided;
    }

    /** Whether each scenario has its own. */
    public boolean perScenario() {
        return scenarios;
    }

    /** Rows in each side and scenario. */
    public int rows() {
        return rows;
    }

    /**
     * Whether each typed row stands for something of its own, by its place in the table; of other
     * tables rows may be left empty, inserted and moved.
     */
    public boolean placed() {
        return this == LINKAGE_POINT || this == BUILT || this == STICK_READING;
    }

    /** Whether scenarios stand side by side and rows below each other in one block. */
    public boolean block() {
        return this == TABLE || this == BLANK_TABLE || this == RESTRAINT_TABLE;
    }

    /** Cells side by side in a block. */
    public int blockColumns(int scenarioCount) {
        return this == SWEEP_CELL ? SWEEP_STEP.rows() : scenarioCount;
    }

    /** Cells under one defined name in a workbook of so many scenarios. */
    public int cells(int scenarioCount) {
        return scenarios ? scenarioCount * rows : rows;
    }
}
