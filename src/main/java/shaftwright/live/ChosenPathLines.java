package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.reading.SidePath;
import shaftwright.reading.Sizing;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;

/**
 * Single figures of one side's hub path, from the source that the builder chose: readings or
 * linkage.
 */
enum ChosenPathLines implements LiveLine.Formula, LiveLine.Core {
    USED("linkage_used", "Path from the linkage", WHOLE),
    TROUBLE("path_trouble", "What keeps the path from use", TEXT),
    READY("path_ready", "Path usable", WHOLE),
    JUDGED("path_judged", "Good enough for a verdict", WHOLE),
    LOW("path_low", "Lowest travel", MILLIMETRE),
    HIGH("path_high", "Highest travel", MILLIMETRE),
    RIDE_RISE("ride_rise", "Outer above inner at ride", MILLIMETRE),
    VARIANCE_DISTANCE("variance_distance", "Variance of a distance", NUMBER),
    VARIANCE_HEIGHT("variance_height", "Variance of a height", NUMBER),
    CURVE_ALLOWANCE("curve_allowance", "Curve allowance", MILLIMETRE);

    private final String name;
    private final String label;
    private final Quantity quantity;

    ChosenPathLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (ChosenPathLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.PATH_WORK,
                            SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case USED -> used(index.side());
            case TROUBLE -> "IF({linkage_used}=1," + linkageTrouble() + ",{fit_trouble})";
            case READY -> "IF({path_trouble}=\"\",1,0)";
            case JUDGED -> "IF(OR({linkage_used}=1,{path_rows}>=3),{path_ready},0)";
            case LOW -> either("{linkage_low}", "{fit_low}");
            case HIGH -> either("{linkage_high}", "{fit_high}");
            case RIDE_RISE -> "IF({path_ready}=1,{ride_height_used}-{inner_height_used},NA())";
            case VARIANCE_DISTANCE -> either("0", "{fit_variance_distance}");
            case VARIANCE_HEIGHT -> either("0", "{fit_variance_height}");
            case CURVE_ALLOWANCE -> either("{linkage_doubt}", "{fit_allowance}");
        };
    }

    private static String used(Side side) {
        return ReadLines.ownOrLeft(
                side,
                "IF(path_source" + Contract.suffix(side) + "=\"linkage\",1,0)",
                "{linkage_used@left}");
    }

    /** The figures of the last fill serve as long as nothing that they follow from was changed. */
    private static String linkageTrouble() {
        return "IF(COUNT({linkage_low},{linkage_high},{linkage_doubt})<3,\""
                + Sizing.NO_LINKAGE
                + "\",IF({linkage_stamp}<>\""
                + EngineBlock.CURRENT
                + "\",\"the linkage was changed: fill again\","
                + "IF(COUNT(inner_tilt_read,inner_sweep_read,shop_increment_read,"
                + "hub_face_offset_read,ring_thickness_read,groove_width_read,groove_depth_read,"
                + "spline_runout_read,shaft_end_diameter_inner_read,"
                + "shaft_end_diameter_outer_read)<10,\"a setting can't be read\",\"\")))";
    }

    private static String either(String linkage, String measured) {
        return "IF({path_ready}=1,IF({linkage_used}=1," + linkage + "," + measured + "),NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SidePath side = sizing.path(index.side());
        HubPath path = side.chosen().orElse(null);
        return switch (this) {
            case USED -> CellValue.of(side.linkage().isChosen() ? 1 : 0);
            case TROUBLE -> CellValue.of(path == null ? none(side) : "");
            case READY -> CellValue.of(path == null ? 0 : 1);
            case JUDGED -> CellValue.of(side.mayGiveVerdict() ? 1 : 0);
            case VARIANCE_DISTANCE, VARIANCE_HEIGHT ->
                    path == null ? CellValue.NOT_AVAILABLE : CellValue.of(variance(side));
            default -> path == null ? CellValue.NOT_AVAILABLE : CellValue.of(core(path));
        };
    }

    private double variance(SidePath side) {
        if (side.linkage().isChosen()) {
            return 0;
        }
        MeasuredPath measured = side.readings().path().orElseThrow();
        return this == VARIANCE_DISTANCE
                ? PathFigureLines.distanceVariance(measured)
                : PathFigureLines.heightVariance(measured);
    }

    /** What is said of a side without a path. */
    static String none(SidePath side) {
        return side.linkage().isChosen() ? Sizing.NO_LINKAGE : Sizing.NO_READINGS;
    }

    private double core(HubPath path) {
        return switch (this) {
            case LOW -> path.tMin();
            case HIGH -> path.tMax();
            case RIDE_RISE -> path.rideRise();
            case CURVE_ALLOWANCE -> path.doubt().allowance();
            default -> throw new IllegalStateException(name + " needs no path");
        };
    }
}
