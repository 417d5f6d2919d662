package shaftwright.live;

import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.travel.TravelEnds;

/** How dampers and straps move on a side, row by row: an engine block. */
enum RestraintLines implements LiveLine.Core {
    RIDE("restraint_ride", "Length at ride", SHOWN_LENGTH),
    RATIO("restraint_ratio", "Length per height at ride", NUMBER),
    UP("restraint_up", "Stops the wheel, up", SHOWN_LENGTH),
    DOWN("restraint_down", "Stops the wheel, down", SHOWN_LENGTH);

    private static final EngineBlock BLOCK =
            new EngineBlock("restraint", Grid.SIDE, Section.PATH_WORK, Section.RESTRAINT_BLOCK);

    private final String name;
    private final String label;
    private final Quantity quantity;

    RestraintLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        BLOCK.stamp(
                lines,
                new Fingerprint(lines).whole("restraint_mark").measured("tape_mm"),
                "AND(SUM(restraint_on)>0,COUNT({inner_offset_used})=1,{path_ready}=1)",
                Known.MOVING);
        lines.add(
                new LiveLine(
                        "restraint_label",
                        Section.RESTRAINT_ROWS,
                        Grid.RESTRAINT_SIDE,
                        "Damper, strap or bump stop",
                        TEXT,
                        Known.MOVING,
                        Known.MOVING));
        for (RestraintLines line : values()) {
            lines.add(
                    LiveLine.engine(
                            line.name,
                            Section.RESTRAINT_ROWS,
                            Grid.RESTRAINT_SIDE,
                            line.label,
                            line.quantity,
                            line));
        }
    }

    /** What must be known for figures; and the words before a row. */
    private enum Known implements EngineBlock.Present, LiveLine.Formula, LiveLine.Core {
        MOVING;

        @Override
        public boolean has(Sizing sizing, Index index) {
            return RestraintSlotLines.anyOn(sizing, RestraintSlotLines.ON)
                    && sizing.path(index.side()).restraints().canMove();
        }

        @Override
        public String at(Index index) {
            int row = index.row() + 1;
            return "IF(ROWS(restraint_name)<"
                    + row
                    + ",\"\",INDEX(restraint_name,"
                    + row
                    + ")&\"\")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(
                    sizing.inputs()
                            .text(
                                    "restraint_name",
                                    new Index(shaftwright.build.Side.LEFT, 0, index.row())));
        }
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return sizing.path(index.side())
                .restraints()
                .row(index.row())
                .map(course -> of(course, sizing.unit().mm()))
                .orElse(CellValue.of(Fingerprint.NOTHING));
    }

    private CellValue of(RestraintCourse course, double unit) {
        return switch (this) {
            case RIDE -> CellValue.of(course.lengthAtRide() / unit);
            case RATIO -> CellValue.of(course.ratioAtRide());
            case UP -> stop(course.alone().up(), unit);
            case DOWN -> stop(course.alone().down(), unit);
        };
    }

    private static CellValue stop(TravelEnds.End end, double unit) {
        return end.stop().isRestraint()
                ? CellValue.of(Math.abs(end.travel()) / unit)
                : CellValue.of(Fingerprint.NOTHING);
    }
}
