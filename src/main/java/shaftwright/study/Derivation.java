package shaftwright.study;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shaftwright.joint.BenchTable;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Binding;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.LengthChoice;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.Position;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.WindowCorrection;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.HubAxes;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Vector;

/**
 * How one side's length came about: the figures of each {@link DerivationStep} for its shaft, at
 * the position that sets the longest shaft and at that which sets the shortest.
 */
public final class Derivation {
    /** Said where no scenario was chosen. */
    public static final String NO_SCENARIO =
            "No scenario is on the shop cards: choose one on the left card.";

    /** Said where a limit may be that of another position than the one worked through. */
    public static final String ALL_STATES =
            "All states are asked for: the figures are of the one state shown, the longest and the"
                    + " shortest race spacing of them all.";

    /** One of the two positions: which way the races go there, and how far. */
    private record Limit(
            Binding bound,
            Position position,
            int innerWay,
            int outerWay,
            PlungeState state,
            double margin,
            ToDoubleFunction<Position> withMargin) {
        /** Only there both races go in. */
        boolean isLongest() {
            return innerWay + outerWay == 2;
        }

        int way(ShaftEnd end) {
            return end == ShaftEnd.INNER ? innerWay : outerWay;
        }
    }

    private final SideStudy side;
    private final SideResult shaft;
    private final CardPrint shown;
    private final Limit longest;
    private final Limit shortest;

    private Derivation(SideStudy side, SideResult shaft, CardPrint shown) {
        this.side = side;
        this.shaft = shaft;
        this.shown = shown;
        SideSetup setup = shaft.setup();
        Binding most = at(shaft.window().longest(), shaft.window().ownLongest());
        Position inward = shaft.positions().get(most.row());
        longest =
                new Limit(
                        most,
                        inward,
                        1,
                        1,
                        inward.inward(),
                        setup.marginInward(),
                        Position::longest);
        shortest = outward(at(shaft.window().shortest(), shaft.window().ownShortest()));
    }

    /**
     * Of a side's shaft; empty while there is none.
     *
     * @param shown what its card may print: lengths that follow from the window stay empty where it
     *     may not
     */
    public static Optional<Derivation> of(SideStudy side, CardPrint shown) {
        return side.result().map(shaft -> new Derivation(side, shaft, shown));
    }

    /**
     * An end of the window at the row of the position table that asks for most: where several
     * states are asked for at once, the end may be another state's, and the row is that of the one
     * shown.
     */
    private static Binding at(Binding end, Binding shown) {
        return new Binding(end.value(), shown.row(), end.travel(), end.state());
    }

    /** A stop that is not hard may ask for a longer shaft than pull-out does. */
    private Limit outward(Binding least) {
        Position position = shaft.positions().get(least.row());
        double pulledOut = position.outward().spacing();
        double inner = spacing(position.innerPulled());
        double outer = spacing(position.outerPulled());
        boolean innerBinds = inner > pulledOut && inner >= outer;
        boolean outerBinds = outer > pulledOut && !innerBinds;
        PlungeState state =
                innerBinds
                        ? position.innerPulled().orElseThrow()
                        : outerBinds ? position.outerPulled().orElseThrow() : position.outward();
        return new Limit(
                least,
                position,
                outerBinds ? 1 : -1,
                innerBinds ? 1 : -1,
                state,
                shaft.setup().marginOutward(),
                Position::shortest);
    }

    private static double spacing(Optional<PlungeState> pulled) {
        return pulled.map(PlungeState::spacing).orElse(Double.NEGATIVE_INFINITY);
    }

    /**
     * Figures of a line, the first group before the second.
     *
     * @return one a place, mm, rad or plain; NaN where there is nothing to tell
     */
    public double[] figures(DerivationLine line) {
        double[] figures = new double[DerivationLine.PLACES];
        Arrays.fill(figures, Double.NaN);
        put(figures, 0, first(line));
        put(figures, DerivationStep.FIGURES, second(line));
        return figures;
    }

    /** Before how many rows of the inner joint's bench table the page has no room for. */
    public static final String LEFT_OUT = "Bench rows of steeper angles not shown: inner end ";

    /** Before the same of the outer joint's. */
    public static final String LEFT_OUT_OUTER = ", outer end ";

    /** Where they stand. */
    public static final String LEFT_OUT_WHERE = "; see the sheet Parts.";

    /** What rows of the bench tables are not among the figures, and where; empty when all are. */
    public String benchRowsLeftOut() {
        int inner = leftOut(ShaftEnd.INNER);
        int outer = leftOut(ShaftEnd.OUTER);
        return inner + outer == 0 ? "" : LEFT_OUT + inner + LEFT_OUT_OUTER + outer + LEFT_OUT_WHERE;
    }

    private int leftOut(ShaftEnd end) {
        return Math.max(0, joint(end).joint().bench().rows().size() - DerivationStep.BENCH_ROWS);
    }

    /** Whether a line has any figure. */
    public boolean tells(DerivationLine line) {
        return !Arrays.stream(figures(line)).allMatch(Double::isNaN);
    }

    /**
     * Height of the outer datum at one of the positions, mm.
     *
     * @param first whether at that of the longest shaft
     */
    public double outerHeight(boolean first) {
        return height(first ? longest : shortest);
    }

    private double height(Limit limit) {
        return side.readings().rideHeight() + limit.position().travel();
    }

    private static void put(double[] figures, int at, double... some) {
        System.arraycopy(some, 0, figures, at, some.length);
    }

    private double[] first(DerivationLine line) {
        return switch (line.step().topic()) {
            case GIVEN -> given(line, ShaftEnd.INNER);
            case POSITIONS -> at(line.step(), longest);
            case CHOICE -> choice(line.step());
        };
    }

    private double[] second(DerivationLine line) {
        return switch (line.step().topic()) {
            case GIVEN -> given(line, ShaftEnd.OUTER);
            case POSITIONS -> at(line.step(), shortest);
            case CHOICE ->
                    line.step() == DerivationStep.SLACK && shown.allows(CardPrint.LENGTHS)
                            ? of(shaft.length().spacing() - shortest.state().spacing())
                            : of();
        };
    }

    private double[] given(DerivationLine line, ShaftEnd end) {
        SideSetup setup = shaft.setup();
        MountedJoint joint = joint(end);
        boolean inner = end == ShaftEnd.INNER;
        return switch (line.step()) {
            case HEIGHT ->
                    of(end.either(side.readings().innerHeight(), side.readings().rideHeight()));
            case MOVED -> inner ? of(setup.flange().shift()) : of(setup.hubShift());
            case AXIS -> inner ? of(setup.flange().axis()) : of();
            case CENTRE -> of(joint.datumToCentre());
            case SEAT -> of(joint.seatOffset());
            case STUB -> of(joint.stub());
            case OVERHANG -> of(joint.overhang());
            case END_RADIUS -> of(joint.endDiameter() / 2);
            case CUP -> of(finite(joint.joint().cupBottom()));
            case BOOT -> of(joint.boot().outwardChange());
            case BENCH -> bench(joint.joint().bench().rows(), line.row());
            default -> throw new IllegalArgumentException(line + " is not given");
        };
    }

    private static double[] bench(List<BenchTable.Row> rows, int row) {
        return row < rows.size()
                ? of(rows.get(row).angle(), rows.get(row).inward(), rows.get(row).outward())
                : of();
    }

    private double[] at(DerivationStep step, Limit limit) {
        Position position = limit.position();
        HubPoint hub = position.hub();
        return switch (step) {
            case ROW -> of(limit.bound().row() + 1);
            case TRAVEL -> of(position.travel());
            case OUTER_HEIGHT -> of(height(limit));
            case NEAREST ->
                    nearest(position)
                            .map(row -> of(row.row().number(), row.row().height()))
                            .orElse(of());
            case READ ->
                    nearest(position)
                            .map(row -> of(row.distance(), row.distance() - row.residual()))
                            .orElse(of());
            case BY_CURVE -> of(hub.foreAft(), hub.reach(), hub.rise());
            case DISTANCE -> of(hub.distance());
            case TILT -> of(hub.camber(), hub.toe());
            case STUB_AXIS -> of(position.line().n());
            case STEERED -> of(steered(hub));
            case APART -> of(position.line().d());
            case CENTRE_DISTANCE -> of(position.distance());
            case MIDDLE_ANGLES -> ends(limit.position()::angle);
            case WAY -> ends(limit::way);
            case FIRST_TRAVEL ->
                    ends(end -> travel(joint(end), limit.way(end), limit.position().angle(end)));
            case ANGLES -> ends(limit.state()::angle);
            case RACE -> ends(end -> race(joint(end), limit.way(end), limit.state().angle(end)));
            case SHAFT_END ->
                    ends(
                            end ->
                                    limit.way(end) > 0
                                            ? finite(joint(end).endInward(limit.state().angle(end)))
                                            : Double.NaN);
            case TRAVELS -> ends(limit.state()::travel);
            case MOCK_UP -> of(mockUp(limit));
            case SPACING -> of(limit.state().spacing());
            case MARGIN -> of(limit.margin(), position.doubt());
            case WITH_MARGIN -> of(limit.withMargin().applyAsDouble(position));
            case BESIDE_TRAVEL -> beside(limit, Position::travel);
            case BESIDE -> beside(limit, limit.withMargin());
            case BOUND -> of(limit.bound().value());
            case WINDOW -> window(limit);
            default -> throw new IllegalArgumentException(step + " is not of a position");
        };
    }

    private double[] choice(DerivationStep step) {
        if (!shown.allows(CardPrint.LENGTHS)) {
            return of();
        }
        LengthChoice choice = shaft.choice();
        return switch (step) {
            case PREFERENCE -> of(side.lengthRule().bias());
            case WANTED -> of(choice.target());
            case INCREMENT -> of(side.lengthRule().increment());
            case CHOSEN -> of(choice.chosen().endToEnd());
            case CLIP_TO_CLIP -> of(choice.chosen().clipToClip());
            case CARD_CLIP -> of(shaft.length().clipToClip());
            case CARD_STUB -> ends(this::cardStub);
            case CARD_END -> of(shaft.length().endToEnd());
            case CARD_SPACING -> of(shaft.length().spacing());
            case SLACK -> of(longest.state().spacing() - shaft.length().spacing());
            default -> throw new IllegalArgumentException(step + " is not of the choice");
        };
    }

    private MountedJoint joint(ShaftEnd end) {
        return shaft.setup().joint(end);
    }

    private double cardStub(ShaftEnd end) {
        return shaft.plan().map(plan -> plan.cut(end)).map(EndCut::stub).orElse(joint(end).stub());
    }

    private static double travel(MountedJoint joint, int way, double angle) {
        return way > 0 ? joint.inward(angle) : joint.outward(angle);
    }

    private static double race(MountedJoint joint, int way, double angle) {
        return way > 0 ? joint.joint().bench().inward(angle) : joint.outward(angle);
    }

    /** The reading nearest in height; empty where a linkage tells the path. */
    private Optional<FittedRow> nearest(Position position) {
        return side.path() instanceof PathStudy.Measured read
                ? read.measured().rows().stream()
                        .min(
                                Comparator.comparingDouble(
                                        row -> Math.abs(row.t() - position.travel())))
                : Optional.empty();
    }

    private double mockUp(Limit limit) {
        WindowCorrection correction = shaft.setup().correction();
        double travel = limit.position().travel();
        return limit.isLongest() ? correction.addedInward(travel) : correction.addedOutward(travel);
    }

    private Vector steered(HubPoint hub) {
        return shaft.setup().steer().datum(HubAxes.of(hub.camber(), hub.toe()));
    }

    private double[] beside(Limit limit, ToDoubleFunction<Position> column) {
        int row = limit.bound().row();
        List<Position> rows = shaft.positions();
        return of(
                row > 0 ? column.applyAsDouble(rows.get(row - 1)) : Double.NaN,
                row + 1 < rows.size() ? column.applyAsDouble(rows.get(row + 1)) : Double.NaN);
    }

    private double[] window(Limit limit) {
        if (!shown.allows(CardPrint.WINDOW)) {
            return of();
        }
        LengthChoice choice = shaft.choice();
        return of((limit.isLongest() ? choice.longest() : choice.shortest()).endToEnd());
    }

    private static double finite(double figure) {
        return Double.isInfinite(figure) ? Double.NaN : figure;
    }

    private static double[] ends(ToDoubleFunction<ShaftEnd> figure) {
        return of(figure.applyAsDouble(ShaftEnd.INNER), figure.applyAsDouble(ShaftEnd.OUTER));
    }

    private static double[] of(Vector vector) {
        return of(vector.x(), vector.y(), vector.z());
    }

    private static double[] of(double... figures) {
        return figures;
    }
}
