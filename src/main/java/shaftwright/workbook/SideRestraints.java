package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.RestraintInputs;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.Member;
import shaftwright.suspension.Vector;
import shaftwright.travel.BootGap;
import shaftwright.travel.CarriedPoint;
import shaftwright.travel.LinkageMotion;
import shaftwright.travel.Motion;
import shaftwright.travel.PathMotion;
import shaftwright.travel.Restraint;
import shaftwright.travel.Span;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;

/**
 * One side's dampers, straps, bump stops and tubes near a boot. Their points move as the side's
 * linkage does where there is one, else as the upright on the hub path. Points stand as typed,
 * without a scenario's shift of the hub. Worked out when first asked for.
 */
public final class SideRestraints {
    /**
     * One row that could be worked out.
     *
     * @param row zero-based
     * @param alone how far the wheel goes when only this stops it
     * @param lengthAtRide mm
     * @param ratioAtRide change of its length with the outer datum's height, negative when bump
     *     closes it
     */
    public record Row(
            int row,
            Restraint restraint,
            TravelEnds alone,
            double lengthAtRide,
            double ratioAtRide) {}

    /** A tube, and its row from 0. */
    record TubeRow(int row, BootGap.Tube tube) {}

    private final InputValues inputs;
    private final Side source;
    private final SideLinkage linkage;
    private final Optional<HubPath> path;
    private Motion motion;
    private List<Row> rows;
    private TravelEnds ends;

    SideRestraints(
            InputValues inputs, Side source, SideLinkage linkage, Optional<HubPath> chosenPath) {
        this.inputs = inputs;
        this.source = source;
        this.linkage = linkage;
        path = chosenPath;
    }

    /** Whether anything is typed into a row of the table of restraints. */
    public static boolean isTyped(InputValues inputs, int row) {
        return isTyped(inputs, Grid.RESTRAINT, row);
    }

    /** The same of the table of tubes. */
    public static boolean isTubeTyped(InputValues inputs, int row) {
        return isTyped(inputs, Grid.TUBE, row);
    }

    private static boolean isTyped(InputValues inputs, Grid grid, int row) {
        for (Input input : Contract.inputs(grid)) {
            if (input.kind().numeric()
                    && !Double.isNaN(inputs.number(input.name(), Side.LEFT, row))) {
                return true;
            }
        }
        return false;
    }

    /** Whether points can be carried: there is a path, and it is known how far out it begins. */
    public boolean canMove() {
        return path.isPresent() && !Double.isNaN(inputs.number("inner_offset", source, 0));
    }

    /** How everything moves; asked for only where it {@link #canMove can}. */
    Motion motion() {
        if (motion == null) {
            Optional<Linkage> solved =
                    linkage.path().isPresent() ? linkage.linkage() : Optional.empty();
            motion =
                    solved.isPresent()
                            ? new LinkageMotion(solved.get())
                            : new PathMotion(
                                    path.orElseThrow(), inputs.number("inner_offset", source, 0));
        }
        return motion;
    }

    /** As far as the path goes. */
    private TravelEnds known() {
        HubPath known = path.orElseThrow();
        return linkage.isChosen() ? TravelEnds.ofLinkage(known) : TravelEnds.ofReadings(known);
    }

    /** Travel over which points can be carried: the path's, less where the linkage ends before. */
    TravelEnds carried() {
        TravelEnds known = known();
        LinkagePath solved = linkage.path().orElse(null);
        if (solved == null) {
            return known;
        }
        return new TravelEnds(
                new TravelEnds.End(
                        Math.max(known.low(), solved.path().tMin()), known.down().stop()),
                new TravelEnds.End(
                        Math.min(known.high(), solved.path().tMax()), known.up().stop()));
    }

    /** Whether points can be carried over this travel. */
    boolean covers(double low, double high) {
        TravelEnds known = carried();
        return low >= known.low() - NEAR && high <= known.high() + NEAR;
    }

    /** Travels nearer than this count as equal, mm. */
    private static final double NEAR = 5e-7;

    /** How far the wheel goes whatever the shaft; asked for only where there is a path. */
    TravelEnds ends() {
        if (ends == null) {
            ends = known();
            for (Row row : rows()) {
                ends = ends.stoppedBy(row.alone);
            }
        }
        return ends;
    }

    /** Where the first of them stops the wheel, null when there is none. */
    StopAlone aloneOrNull() {
        StopAlone met = null;
        for (Row row : rows()) {
            TravelEnds.End up = row.alone.up();
            TravelEnds.End down = row.alone.down();
            StopAlone alone =
                    new StopAlone(
                            up.stop().isRestraint() ? up.travel() : Double.POSITIVE_INFINITY,
                            down.stop().isRestraint() ? -down.travel() : Double.POSITIVE_INFINITY);
            met = met == null ? alone : met.or(alone);
        }
        return met;
    }

    /** The rows that could be worked out, in order. */
    public List<Row> rows() {
        if (rows == null) {
            rows = new ArrayList<>();
            for (int row = 0; row < Grid.RESTRAINT_SLOT.rows(); row++) {
                Restraint restraint = restraintOrNull(row);
                if (restraint != null) {
                    rows.add(worked(row, restraint));
                }
            }
        }
        return rows;
    }

    private Row worked(int row, Restraint restraint) {
        TravelEnds alone = restraint.within(carried(), motion());
        return new Row(
                row,
                restraint,
                alone,
                restraint.span().lengthAt(motion(), 0),
                restraint.span().ratioAt(motion(), 0));
    }

    /** The row worked out, null when it could not be. */
    public Row rowOrNull(int row) {
        for (Row each : rows()) {
            if (each.row == row) {
                return each;
            }
        }
        return null;
    }

    private Restraint restraintOrNull(int row) {
        if (!canMove() || !isTyped(inputs, row)) {
            return null;
        }
        String part = RestraintInputs.part(text("restraint_carried_by", row));
        Vector fixed = point("restraint_fixed", row);
        Vector moving = point("restraint_moving", row);
        Restraint.Kind kind = kind(inputs, row);
        double shortest = kind.closes() ? number("restraint_shortest", row) : Double.NaN;
        double longest = kind.opens() ? number("restraint_longest", row) : Double.NaN;
        double least = Double.isNaN(shortest) ? 0 : shortest;
        double most = Double.isNaN(longest) ? Double.POSITIVE_INFINITY : longest;
        if (!carries(part)
                || Double.isNaN(fixed.plus(moving).norm())
                || (least == 0 && Double.isInfinite(most))
                || !(most > least)) {
            return null;
        }
        String name = text("restraint_name", row);
        return new Restraint(
                new Span(
                        name.isEmpty() ? kind.word() + " " + (row + 1) : name,
                        new CarriedPoint(Linkage.FRAME, fixed),
                        new CarriedPoint(part, moving)),
                kind,
                least,
                most);
    }

    /** What a row of the table is. */
    static Restraint.Kind kind(InputValues inputs, int row) {
        String word = inputs.text("restraint_kind", new Index(Side.LEFT, 0, row));
        for (Restraint.Kind kind : Restraint.Kind.values()) {
            if (kind.word().equals(word.toLowerCase(Locale.ROOT))) {
                return kind;
            }
        }
        return Restraint.Kind.DAMPER;
    }

    /** Whether something moves points that are fast to this part. */
    boolean carries(String part) {
        if (part.equals(Linkage.FRAME) || part.equals(Linkage.HUB)) {
            return true;
        }
        if (linkage.path().isPresent()) {
            for (Member member : linkage.linkage().orElseThrow().members()) {
                if (member.name().equals(part)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Tubes with all their sizes. */
    List<TubeRow> tubes() {
        List<TubeRow> tubes = new ArrayList<>();
        for (int row = 0; canMove() && row < Grid.TUBE_SLOT.rows(); row++) {
            String part = RestraintInputs.part(text("tube_carried_by", row));
            Vector first = point("tube_first", row);
            Vector second = point("tube_second", row);
            double radius = number("tube_diameter", row) / 2;
            if (carries(part) && !Double.isNaN(first.plus(second).norm() + radius)) {
                tubes.add(
                        new TubeRow(
                                row,
                                new BootGap.Tube(
                                        new CarriedPoint(part, first),
                                        new CarriedPoint(part, second),
                                        radius)));
            }
        }
        return tubes;
    }

    /** What they make of a scenario that has a result. */
    SideStops of(SideOutcome side) {
        return new SideStops(inputs, this, side);
    }

    /** A typed point as seen from the inner datum and the vehicle's centre plane. */
    private Vector point(String name, int row) {
        return new Vector(
                number(name + "_ahead", row) - inputs.number("inner_ahead", source, 0),
                number(name + "_out", row),
                number(name + "_height", row) - inputs.number("inner_height", source, 0));
    }

    /** The inner datum, in the frame of the points. */
    Vector innerDatum() {
        return new Vector(0, inputs.number("inner_offset", source, 0), 0);
    }

    /** A size of a boot by its row from 1, mm, NaN when it is not known. */
    double boot(String column, int row) {
        return number(column, row - 1);
    }

    private double number(String name, int row) {
        return inputs.number(name, Side.LEFT, row);
    }

    private String text(String name, int row) {
        return inputs.text(name, new Index(Side.LEFT, 0, row));
    }
}
