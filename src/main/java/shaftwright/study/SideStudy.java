package shaftwright.study;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.AllStates;
import shaftwright.build.Build;
import shaftwright.build.BumpRule;
import shaftwright.build.DriveUnitMove;
import shaftwright.build.Margins;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.Stock;
import shaftwright.build.Uncertainty;
import shaftwright.doubt.SlackChances;
import shaftwright.doubt.SlackTrials;
import shaftwright.mockup.MockUpUse;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.StateSetup;
import shaftwright.shaft.WindowCorrection;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;
import shaftwright.travel.ClearanceRule;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.TravelRange;

/**
 * One side of one scenario: where its flange and its travel are, and the shaft that follows. There
 * is none while something is lacking, or while the travel wanted leaves the known path.
 */
public final class SideStudy {
    /** Travels nearer than this count as equal, mm. */
    private static final double NEAR = 5e-7;

    /** Ground clearances nearer than this count as equal, mm. */
    private static final double SAME_CLEARANCE = 1e-3;

    private final Build build;
    private final Scenario scenario;
    private final Side side;
    private final CornerStudy corner;
    private final PathStudy source;
    private final HubPath path;
    private final WheelFigures wheel;
    private final InnerFlange flange;
    private final List<Double> bumpSteps;
    private final Optional<Lack> lack;
    private final Optional<PathFacts.Beyond> beyond;
    private final Optional<SideResult> result;

    /** All worked out when they are first asked for: trials of many variants never do. */
    private Optional<SideStops> stops;

    private Optional<StopsAlone> stopsAlone;
    private Optional<TravelRange> travelAllowed;
    private Optional<LongestTravel> longestTravel;

    private SideStudy(
            Build build, Scenario scenario, Side side, PathStudy source, CornerStudy corner) {
        this.build = build;
        this.scenario = scenario;
        this.side = side;
        this.source = source;
        this.corner = corner;
        path = corner.motion().path();
        wheel =
                WheelFigures.of(
                        build.vehicle().clearance(),
                        build.vehicle().hubFaceOffset(),
                        scenario.wheel());
        flange = flange(scenario.driveUnit());
        bumpSteps = limitedBump();
        lack = findLack();
        beyond = lack.isPresent() ? Optional.empty() : findBeyond();
        result = lack.isPresent() || beyond.isPresent() ? Optional.empty() : Optional.of(compute());
    }

    /**
     * Studies a side.
     *
     * @param source what tells where its hub goes
     * @param corner its hub on that way, and among what
     * @throws shaftwright.units.ContradictionException if no shaft can join the joints' centres
     *     somewhere, or the path has no lateral reach
     */
    public static SideStudy of(
            Build build, Scenario scenario, Side side, PathStudy source, CornerStudy corner) {
        return new SideStudy(build, scenario, side, source, corner);
    }

    private InnerFlange flange(DriveUnitMove move) {
        int leftward = side.leftward();
        return build.vehicle()
                .flange()
                .moved(new Vector(move.forward(), leftward * move.left(), move.up()))
                .rolled(leftward * move.roll(), centreToDatum().orElse(0));
    }

    /** Empty where a rule by the ground can't be followed. */
    private List<Double> limitedBump() {
        if (scenario.travel().bump() instanceof BumpRule.Clearance rule) {
            return wheel.leaving(rule.left()).map(ground -> ground.steps(path)).orElse(List.of());
        }
        BumpRule.Stop stop = (BumpRule.Stop) scenario.travel().bump();
        return Collections.nCopies(ClearanceRule.STEPS, stop.travel());
    }

    private Optional<Lack> findLack() {
        boolean steered =
                scenario.steerAngle() != 0
                        || scenario.allStates().map(AllStates::steers).orElse(false);
        if (steered && build.kingpin(side).isEmpty()) {
            return Optional.of(Lack.KINGPIN);
        }
        if (bumpSteps.isEmpty()) {
            return Optional.of(Lack.CLEARANCE);
        }
        boolean rolled =
                scenario.driveUnit().roll() != 0
                        || scenario.allStates().map(AllStates::rolls).orElse(false);
        if (rolled && centreToDatum().isEmpty()) {
            return Optional.of(Lack.CENTRE);
        }
        return bump() <= 0 ? Optional.of(Lack.BUMP) : Optional.empty();
    }

    private Optional<PathFacts.Beyond> findBeyond() {
        if (bump() - path.tMax() >= NEAR) {
            return Optional.of(new PathFacts.Beyond(PathFacts.Way.BUMP, bump(), path.tMax()));
        }
        return path.tMin() - droop() >= NEAR
                ? Optional.of(new PathFacts.Beyond(PathFacts.Way.DROOP, -droop(), path.tMin()))
                : Optional.empty();
    }

    private SideResult compute() {
        SideSetup setup =
                new SideSetup(
                        path,
                        flange,
                        scenario.inner(),
                        scenario.outer(),
                        scenario.hubShift(),
                        steer(scenario.steerAngle()),
                        margins().inward(),
                        margins().outward(),
                        droop(),
                        bump(),
                        mockUp().map(MockUpUse::correction).orElse(WindowCorrection.NONE));
        return SideResult.of(
                setup,
                states(setup),
                lengthRule(),
                build.stock().ring(),
                build.stock().blanks(),
                scenario.onlyBlank());
    }

    private List<StateSetup> states(SideSetup own) {
        return scenario.states().stream()
                .map(
                        state ->
                                new StateSetup(
                                        StateWords.of(scenario.allStates().orElseThrow(), state),
                                        own.inState(
                                                flange(state.driveUnit()), steer(state.turn()))))
                .toList();
    }

    private Steer steer(double leftward) {
        double outward = side.leftward() * leftward;
        return outward == 0
                ? Steer.STRAIGHT
                : Steer.of(build.kingpin(side).orElseThrow(), outward, path.at(0));
    }

    private OptionalDouble centreToDatum() {
        return build.readings(side).centreToDatum();
    }

    /** How its length is chosen. */
    public LengthRule lengthRule() {
        return new LengthRule(scenario.bias(), build.stock().increment());
    }

    /** What the scenario asks for without a figure that it needs; empty when all is there. */
    public Optional<Lack> lack() {
        return lack;
    }

    /** Travel that leaves the known path; empty when none does, or something is lacking. */
    public Optional<PathFacts.Beyond> beyond() {
        return beyond;
    }

    /** The shaft; empty while something is lacking or the travel leaves the path. */
    public Optional<SideResult> result() {
        return result;
    }

    /** Where the inner flange is. */
    public InnerFlange flange() {
        return flange;
    }

    /** Travel at full droop, mm, below zero. */
    public double droop() {
        return -scenario.travel().droop();
    }

    /** Travel at full bump, mm; only where no clearance is {@link #lack() lacking}. */
    public double bump() {
        return bumpSteps.get(bumpSteps.size() - 1);
    }

    /** Bump limit after each step of the clearance rule, mm; a typed one is the same in all. */
    public List<Double> bumpSteps() {
        return bumpSteps;
    }

    /** What was measured at it. */
    public Readings readings() {
        return build.readings(side);
    }

    /** What its shaft is made from. */
    public Stock stock() {
        return build.stock();
    }

    /** The scenario that it is a side of. */
    public Scenario scenario() {
        return scenario;
    }

    /** Ground clearance at full bump, mm; empty without a shaft, or while none was measured. */
    public OptionalDouble clearanceAtBump() {
        Optional<ClearanceRule> ground = wheel.leaving(0);
        return result.isEmpty() || ground.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(ground.get().clearance(path, bump()));
    }

    /**
     * Vehicle's centre plane to the hub's mounting face at ride, mm; empty without a shaft, or
     * while a measure of it is not known.
     */
    public OptionalDouble hubFace() {
        OptionalDouble offset = build.vehicle().hubFaceOffset();
        if (result.isEmpty() || centreToDatum().isEmpty() || offset.isEmpty()) {
            return OptionalDouble.empty();
        }
        HubPoint ride = result.get().atRide().position().hub();
        return OptionalDouble.of(
                centreToDatum().getAsDouble()
                        + ride.reach()
                        + scenario.hubShift()
                        + offset.getAsDouble() * SideSetup.stubAxis(ride).y());
    }

    /** What dampers, straps, bump stops and tubes make of it; empty without a shaft. */
    public Optional<SideStops> stops() {
        if (stops == null) {
            stops = result.map(shaft -> new SideStops(corner, shaft.setup()));
        }
        return stops;
    }

    /** Where each thing would end its travel alone; empty without a shaft. */
    public Optional<StopsAlone> stopsAlone() {
        if (stopsAlone == null) {
            stopsAlone =
                    stops().map(met -> new StopsAlone(result.orElseThrow(), met, clearanceRule()));
        }
        return stopsAlone;
    }

    private Optional<ClearanceRule> clearanceRule() {
        OptionalDouble wanted = scenario.travel().bump().clearance();
        return wanted.isPresent() ? wheel.leaving(wanted.getAsDouble()) : Optional.empty();
    }

    /** Travel that its shaft allows, whatever is wanted; empty without a shaft. */
    public Optional<TravelRange> travelAllowed() {
        if (travelAllowed == null) {
            travelAllowed = stops().map(met -> TravelRange.of(result.orElseThrow(), met.ends()));
        }
        return travelAllowed;
    }

    /** Longest travel that any shaft from the blanks allows; empty when there is none. */
    public Optional<LongestTravel> longestTravel() {
        if (longestTravel == null) {
            longestTravel =
                    stops().flatMap(
                                    met ->
                                            LongestTravel.of(
                                                    result.orElseThrow().setup(),
                                                    lengthRule(),
                                                    stock().ring(),
                                                    stock().blanks(),
                                                    met.ends()));
        }
        return longestTravel;
    }

    /**
     * What else than the shaft ends its travel, as a verdict needs it.
     *
     * @param clearanceAtBump ground clearance at full bump, mm, empty while it is not known
     */
    private TravelFacts travelFacts(OptionalDouble clearanceAtBump) {
        TravelFacts free = TravelFacts.FREE.with(tooLow(clearanceAtBump));
        return stops().map(met -> free.with(met, bump(), droop())).orElse(free);
    }

    /** A bump limit by the clearance rule leaves what is wanted. */
    private Optional<TravelFacts.Clearance> tooLow(OptionalDouble atBump) {
        BumpRule rule = scenario.travel().bump();
        if (rule instanceof BumpRule.Clearance
                || rule.clearance().isEmpty()
                || atBump.isEmpty()
                || !(rule.clearance().getAsDouble() - atBump.getAsDouble() > SAME_CLEARANCE)) {
            return Optional.empty();
        }
        return Optional.of(
                new TravelFacts.Clearance(atBump.getAsDouble(), rule.clearance().getAsDouble()));
    }

    /** Its drawing, seen from the inner datum's fore-aft place and height. */
    public SideDrawing drawing() {
        return SideDrawing.of(
                new SideDrawing.Shown(
                        corner.motion(),
                        Vector.ZERO,
                        flange,
                        SideDrawing.Wheel.of(wheel, scenario.wheel()),
                        Optional.of(this)));
    }

    /** Its hub path. */
    public PathStudy path() {
        return source;
    }

    /** The margins that it keeps: the scenario's own, or those that are built up. */
    public Margins margins() {
        return build.uncertainty().counting(scenario.margins());
    }

    /** Chances of running out of travel; empty without a shaft, or when no trials are wanted. */
    public Optional<SlackChances> chances() {
        Uncertainty uncertainty = build.uncertainty();
        return result.flatMap(
                shaft ->
                        uncertainty
                                .trials()
                                .map(
                                        trials ->
                                                SlackTrials.run(
                                                        source.slacks(shaft),
                                                        uncertainty.contributions(),
                                                        trials.seed(),
                                                        trials.count())));
    }

    /** Whether it is computed and inside its path, nothing said of the path's readings. */
    private PathFacts ownFacts() {
        PathFacts facts =
                source.mayGiveVerdict() ? PathFacts.SOUND : PathFacts.SOUND.ofTwoHeights();
        if (lack.isPresent()) {
            return facts.lacking(lack.get().words());
        }
        return beyond.map(facts::beyond).orElse(facts);
    }

    /** What a mock-up has to do with it; empty when nothing. */
    public Optional<MockUpUse> mockUp() {
        return scenario.mockUp(side);
    }

    /** The judgement on it. */
    public Verdict verdict(ScenarioFacts scenarios) {
        return Verdict.of(
                new SideFacts(
                        source.said(ownFacts()),
                        shaftFacts(),
                        scenarios.strength(),
                        travelFacts(scenarios.clearanceAtBump()),
                        scenarios.width(),
                        mockUp().flatMap(MockUpFacts::of)));
    }

    /** What the shaft alone decides, whatever else stands against it. */
    public Verdict shaftVerdict() {
        return Verdict.of(SideFacts.of(ownFacts(), shaftFacts()));
    }

    /** Its shaft as a verdict needs it; empty while there is none. */
    private Optional<ShaftFacts> shaftFacts() {
        return result.map(shaft -> ShaftFacts.of(shaft, lengthRule(), build.vehicle().driven()));
    }
}
