package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.reading.StopSentence;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.SideStops;
import shaftwright.travel.TravelEnds;

/** What dampers, straps and tubes make of each scenario's wanted travel: an engine block. */
enum StopLines implements EngineBlock.Present, EngineBlock.Figure {
    SAY("say", "Dampers and straps", TEXT),
    UP_AT("up_at", "… end bump at", SHOWN_LENGTH),
    UP_BY("up_by", "… by", TEXT),
    DOWN_AT("down_at", "… end droop at", SHOWN_LENGTH),
    DOWN_BY("down_by", "… by", TEXT),
    IN_GAP("gap_in", "Inner boot to tube, least gap", SHOWN_LENGTH),
    IN_AT("gap_at_in", "… at travel, bump +", SHOWN_LENGTH),
    IN_RIDE("gap_ride_in", "… the same at ride", SHOWN_LENGTH),
    IN_TUBE("gap_tube_in", "… tube of row", WHOLE),
    OUT_GAP("gap_out", "Outer boot to tube, least gap", SHOWN_LENGTH),
    OUT_AT("gap_at_out", "… at travel, bump +", SHOWN_LENGTH),
    OUT_RIDE("gap_ride_out", "… the same at ride", SHOWN_LENGTH),
    OUT_TUBE("gap_tube_out", "… tube of row", WHOLE);

    private static final EngineBlock BLOCK =
            new EngineBlock("stop", SCENARIO_SIDE, Section.SIDE_WORK, Section.STOP_BLOCK);

    private final String figure;
    private final String label;
    private final Quantity quantity;

    StopLines(String figure, String label, Quantity quantity) {
        this.figure = figure;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (ShaftEnd end : ShaftEnd.values()) {
            for (Boot.Size size : Boot.Size.values()) {
                Boot boot = new Boot(end, size);
                lines.add(
                        new LiveLine(
                                size.column + "_" + end.shortWord(),
                                Section.SIDE_WORK,
                                SCENARIO_SIDE,
                                size.label + ", " + end.word(),
                                MILLIMETRE,
                                boot,
                                boot));
            }
        }
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("restraint_mark", "own_sum")
                        .measured("t_low", "t_high", "tape_mm")
                        .whole("stance_print")
                        .measured("centre_in", "centre_out")
                        .measured("boot_length_in", "boot_length_out")
                        .measured("boot_diameter_in", "boot_diameter_out");
        BLOCK.stamp(
                lines,
                all,
                "AND(SUM(restraint_on)+SUM(tube_on)>0,COUNT({inner_offset_used})=1,{ready}=1)",
                SAY);
        for (StopLines line : values()) {
            EngineBlock block = line.isEnd() ? BLOCK.since(2) : BLOCK;
            block.figure(lines, line.figure, line.label, line.quantity, line, line);
        }
        for (Course course : Course.values()) {
            lines.add(
                    LiveLine.engine(
                            course.name,
                            Section.STOP_TABLE,
                            Grid.RESTRAINT_TABLE,
                            course.label,
                            SHOWN_LENGTH,
                            course));
        }
    }

    private static Optional<SideStops> stops(Sizing sizing, Index index) {
        boolean on =
                RestraintSlotLines.anyOn(sizing, RestraintSlotLines.ON)
                        || RestraintSlotLines.anyOn(sizing, RestraintSlotLines.TUBE_ON);
        return on && sizing.path(index.side()).restraints().canMove()
                ? SideLines.outcome(sizing, index).stops()
                : Optional.empty();
    }

    @Override
    public boolean has(Sizing sizing, Index index) {
        return stops(sizing, index).filter(this::has).isPresent();
    }

    private boolean has(SideStops stops) {
        return switch (this) {
            case SAY -> true;
            case UP_AT, UP_BY -> stops.wheelEnds().up().stop().isRestraint();
            case DOWN_AT, DOWN_BY -> stops.wheelEnds().down().stop().isRestraint();
            default -> stops.gap(end()).isPresent();
        };
    }

    /** Where dampers and straps end the travel, whatever is wanted. */
    private boolean isEnd() {
        return switch (this) {
            case UP_AT, UP_BY, DOWN_AT, DOWN_BY -> true;
            default -> false;
        };
    }

    private ShaftEnd end() {
        return switch (this) {
            case OUT_GAP, OUT_AT, OUT_RIDE, OUT_TUBE -> ShaftEnd.OUTER;
            default -> ShaftEnd.INNER;
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideStops stops = stops(sizing, index).orElseThrow();
        SideOutcome side = SideLines.outcome(sizing, index);
        double unit = sizing.unit().mm();
        if (this == SAY) {
            return CellValue.of(
                    sizing.path(index.side()).restraints().rows().isEmpty()
                            ? Fingerprint.NOTHING
                            : StopSentence.of(stops, side, sizing));
        }
        if (isEnd()) {
            TravelEnds ends = stops.wheelEnds();
            return switch (this) {
                case UP_AT -> CellValue.of(ends.high() / unit);
                case UP_BY -> CellValue.of(ends.up().stop().words());
                case DOWN_AT -> CellValue.of(ends.low() / unit);
                default -> CellValue.of(ends.down().stop().words());
            };
        }
        SideStops.Gap gap = stops.gap(end()).orElseThrow();
        return switch (this) {
            case IN_GAP, OUT_GAP -> CellValue.of(gap.least() / unit);
            case IN_AT, OUT_AT -> CellValue.of(gap.leastAt() / unit);
            case IN_RIDE, OUT_RIDE -> CellValue.of(gap.atRide() / unit);
            default -> CellValue.of(side.tubeRow(gap) + 1);
        };
    }

    /** How long a row gets over the travel. */
    private enum Course implements LiveLine.Core {
        LONGEST("span_longest", "Longest over the travel"),
        SHORTEST("span_shortest", "Shortest over the travel");

        private final String name;
        private final String label;

        Course(String name, String label) {
            this.name = name;
            this.label = label;
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return SideLines.outcome(sizing, index)
                    .course(index.row())
                    .map(course -> this == LONGEST ? course.longest() : course.shortest())
                    .map(length -> CellValue.of(length / sizing.unit().mm()))
                    .orElse(CellValue.of(Fingerprint.NOTHING));
        }
    }

    /** A size of a scenario's boot, empty when it is not known. */
    private record Boot(ShaftEnd end, Size size) implements LiveLine.Formula, LiveLine.Core {
        enum Size {
            LENGTH("boot_length", "Boot's length"),
            DIAMETER("boot_diameter", "Boot's diameter");

            final String column;
            final String label;

            Size(String column, String label) {
                this.column = column;
                this.label = label;
            }
        }

        @Override
        public String at(Index index) {
            String row = "{boot_row_" + end.shortWord() + "}";
            return "IF({setup_ready}=1,IF("
                    + row
                    + "=0,\"\",INDEX("
                    + size.column
                    + "_read,"
                    + row
                    + ")),NA())";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideOutcome side = SideLines.outcome(sizing, index);
            if (!side.isSetUp()) {
                return CellValue.NOT_AVAILABLE;
            }
            shaftwright.joint.Boot boot = side.joint(end).boot();
            OptionalDouble known = size == Size.LENGTH ? boot.length() : boot.diameter();
            return ReadLines.shown(known.orElse(Double.NaN));
        }
    }
}
