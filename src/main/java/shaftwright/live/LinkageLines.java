package shaftwright.live;

import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.SideLinkage;
import shaftwright.reading.Sizing;
import shaftwright.study.Wording;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.OffsetEstimate;

/**
 * The hub path of a side's linkage, solved by a fill, and how it agrees with the readings: an
 * engine block, and the fingerprints of all that it follows from.
 */
enum LinkageLines implements EngineBlock.Figure, EngineBlock.Present {
    STATUS("status", "The points", TEXT),
    AGREEMENT("agreement", "Tape and linkage", TEXT),
    OFF_BEFORE("off_before", "Readings off the linkage, as a rule", SHOWN_LENGTH),
    TAPE("tape_share", "… of which the tape explains", SHOWN_LENGTH),
    OFF_AFTER("off_after", "… left with the offsets below", SHOWN_LENGTH),
    FLANGE_OUT("flange_out", "Output flange farther out than typed", SHOWN_LENGTH),
    FLANGE_OUT_DOUBT("flange_out_uncertainty", "… ± (one standard uncertainty)", SHOWN_LENGTH),
    FLANGE_UP("flange_up", "Output flange higher than typed", SHOWN_LENGTH),
    FLANGE_UP_DOUBT("flange_up_uncertainty", "… ± (one standard uncertainty)", SHOWN_LENGTH),
    DATUM_OUT("datum_out", "Outer datum farther out than typed", SHOWN_LENGTH),
    DATUM_OUT_DOUBT("datum_out_uncertainty", "… ± (one standard uncertainty)", SHOWN_LENGTH),
    TOGETHER("together", "Told only together, ± one standard uncertainty", TEXT),
    TOLD("told", "How well the readings tell offsets (singular values)", TEXT),
    UNTOLD("untold", "What they can't tell", TEXT),
    LOW("low", "Lowest travel solved", MILLIMETRE),
    HIGH("high", "Highest travel solved", MILLIMETRE),
    LENGTH_ERROR("length_error", "Curves off the linkage, thousandths of a mm", NUMBER),
    ANGLE_ERROR("angle_error", "Camber and toe off it, thousandths of a degree", NUMBER),
    DOUBT("doubt", "Doubt by the readings", MILLIMETRE);

    private static final EngineBlock BLOCK =
            new EngineBlock("linkage", SIDE, Section.PATH_WORK, Section.LINKAGE_BLOCK);
    private static final int POINT_TERMS = 3;

    private final String figure;
    private final String label;
    private final Quantity quantity;

    LinkageLines(String figure, String label, Quantity quantity) {
        this.figure = figure;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        lines.add(rowPrint(lines, "point_print", LINKAGE_POINT, "point_x", "point_y", "point_z"));
        lines.add(
                rowPrint(
                                lines,
                                "row_print",
                                READING_SLOT,
                                "row_height",
                                "row_counted",
                                "row_variance")
                        .revised(2));
        Fingerprint all =
                new Fingerprint(lines)
                        .sum("point_print")
                        .sum("row_print")
                        .whole("linkage_kind_number", "path_rows")
                        .whole("reach_out1", "reach_out2", "reach_out3")
                        .whole("reach_out4", "reach_out5", "reach_out6")
                        .measured("inner_ahead_used", "inner_height_used", "inner_offset_used")
                        .measured("outer_ahead_used", "outer_out_used", "ride_height_used")
                        .measured("static_camber_used", "static_toe_used")
                        .measured("linkage_up_read", "linkage_down_read", "tape_mm");
        BLOCK.revised(2).stamp(lines, all, "COUNT({point_height_used:all})>0", STATUS);
        for (LinkageLines line : values()) {
            EngineBlock block = line.isOfVersionThree() ? BLOCK.since(3) : BLOCK;
            block.figure(lines, line.figure, line.label, line.quantity, line, line);
        }
        for (HubCurve curve : HubCurve.values()) {
            lines.add(
                    LiveLine.engine(
                            "linkage_" + curve.word,
                            Section.LINKAGE_CURVES,
                            POWER,
                            curve.label,
                            NUMBER,
                            new Curve(curve)));
        }
    }

    private static LiveLine rowPrint(
            LiveLines lines, String name, Grid grid, String first, String second, String third) {
        RowPrint print = new RowPrint(new Fingerprint(lines).measured(first, second, third));
        return new LiveLine(
                name, Section.PATH_WORK, grid, "Fingerprint of the row", WHOLE, print, print);
    }

    private static SideLinkage of(Sizing sizing, Index index) {
        return sizing.path(index.side()).linkage();
    }

    @Override
    public boolean has(Sizing sizing, Index index) {
        SideLinkage linkage = of(sizing, index);
        return switch (this) {
            case STATUS -> linkage.isTyped();
            case AGREEMENT, OFF_BEFORE, TAPE, OFF_AFTER, FLANGE_OUT, FLANGE_UP, DATUM_OUT, TOLD ->
                    linkage.calibration().isPresent();
            case FLANGE_OUT_DOUBT, FLANGE_UP_DOUBT, DATUM_OUT_DOUBT ->
                    linkage.calibration().isPresent()
                            && offset(linkage.calibration().get()).isTold();
            case TOGETHER -> !linkage.together().isEmpty();
            case UNTOLD -> !linkage.untold().isEmpty();
            case LOW, HIGH, LENGTH_ERROR, ANGLE_ERROR, DOUBT -> linkage.path().isPresent();
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideLinkage linkage = of(sizing, index);
        return switch (this) {
            case STATUS -> CellValue.of(linkage.status());
            case AGREEMENT -> CellValue.of(linkage.agreement());
            case UNTOLD -> CellValue.of(linkage.untold());
            case TOLD -> CellValue.of(told(linkage.calibration().get()));
            case TOGETHER -> CellValue.of(linkage.together());
            case OFF_BEFORE, TAPE, OFF_AFTER ->
                    CellValue.of(off(linkage.calibration().get()) / sizing.unit().mm());
            case FLANGE_OUT, FLANGE_UP, DATUM_OUT -> {
                OffsetEstimate offset = offset(linkage.calibration().get());
                yield offset.isTold()
                        ? CellValue.of(offset.value() / sizing.unit().mm())
                        : CellValue.of("not told alone");
            }
            case FLANGE_OUT_DOUBT, FLANGE_UP_DOUBT, DATUM_OUT_DOUBT ->
                    CellValue.of(
                            offset(linkage.calibration().get()).uncertainty() / sizing.unit().mm());
            case LOW, HIGH, LENGTH_ERROR, ANGLE_ERROR -> CellValue.of(figure(linkage.path().get()));
            case DOUBT -> CellValue.of(linkage.doubt());
        };
    }

    private static String told(Calibration calibration) {
        StringBuilder text = new StringBuilder();
        for (double value : calibration.singularValues()) {
            text.append(text.length() > 0 ? ", " : "").append(Wording.rounded(value, 2));
        }
        return text.toString();
    }

    private boolean isOfVersionThree() {
        return switch (this) {
            case FLANGE_OUT_DOUBT, FLANGE_UP_DOUBT, DATUM_OUT_DOUBT, TOGETHER -> true;
            default -> false;
        };
    }

    private double off(Calibration calibration) {
        return switch (this) {
            case OFF_BEFORE -> calibration.offBefore();
            case TAPE -> calibration.tape();
            case OFF_AFTER -> calibration.offAfter();
            default -> throw new IllegalStateException(figure + " is none of the comparison's");
        };
    }

    private OffsetEstimate offset(Calibration calibration) {
        return switch (this) {
            case FLANGE_OUT, FLANGE_OUT_DOUBT -> calibration.flangeOut();
            case FLANGE_UP, FLANGE_UP_DOUBT -> calibration.flangeUp();
            case DATUM_OUT, DATUM_OUT_DOUBT -> calibration.datumOut();
            default -> throw new IllegalStateException(figure + " is no offset");
        };
    }

    private double figure(LinkagePath path) {
        return switch (this) {
            case LOW -> path.path().tMin();
            case HIGH -> path.path().tMax();
            case LENGTH_ERROR -> 1000 * path.lengthError();
            case ANGLE_ERROR -> 1000 * Math.toDegrees(path.angleError());
            default -> throw new IllegalStateException(figure + " is none of the path's");
        };
    }

    /** A row's fingerprint, with weights that no other row has. */
    private record RowPrint(Fingerprint print) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return print.formula(POINT_TERMS * index.row());
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(print.of(sizing, index, POINT_TERMS * index.row()));
        }
    }

    /** A curve's coefficients in powers of the normalised travel. */
    private record Curve(HubCurve curve) implements LiveLine.Core {
        @Override
        public CellValue at(Sizing sizing, Index index) {
            LinkagePath path = of(sizing, index).path().orElse(null);
            return path == null
                    ? CellValue.of(Fingerprint.NOTHING)
                    : CellValue.of(curve.of(path.path(), path.pitch()).coefficient(index.row()));
        }
    }
}
