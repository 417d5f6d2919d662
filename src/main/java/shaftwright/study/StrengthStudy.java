package shaftwright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Drive;
import shaftwright.build.Driveline;
import shaftwright.build.Duty;
import shaftwright.build.InboardBrakes;
import shaftwright.build.JointRating;
import shaftwright.build.Loads;
import shaftwright.build.Side;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.strength.FlangeBolts;
import shaftwright.strength.Gears;
import shaftwright.strength.JointLife;
import shaftwright.strength.RatingRow;
import shaftwright.strength.TorqueCycles;
import shaftwright.strength.TorquePath;
import shaftwright.strength.TravelShares;
import shaftwright.strength.TyreGrip;
import shaftwright.strength.WeakestPart;
import shaftwright.tyre.Tyre;

/**
 * One scenario's parts against the torque that reaches them. Whatever needs a figure that is not
 * known is empty; a part whose capacity is not known has no row.
 */
public final class StrengthStudy {
    /** Nothing is known. */
    public static final StrengthStudy UNKNOWN =
            of(Loads.UNKNOWN, Drive.UNKNOWN, Optional.empty(), Optional.empty(), Optional.empty());

    private final Loads loads;
    private final Drive drive;
    private final Optional<Tyre> tyre;
    private final Optional<SideStudy> left;
    private final Optional<SideStudy> right;
    private final Optional<Gears> gears;
    private final TorquePath torques;
    private final OptionalDouble straightLife;
    private final TorqueCycles cycles;
    private final Map<Side, ShaftStrength> shafts = new EnumMap<>(Side.class);
    private final Map<Side, ShaftFatigue> fatigues = new EnumMap<>(Side.class);

    private StrengthStudy(
            Loads loads,
            Drive drive,
            Optional<Tyre> tyre,
            Optional<SideStudy> left,
            Optional<SideStudy> right) {
        this.loads = loads;
        this.drive = drive;
        this.tyre = tyre;
        this.left = left;
        this.right = right;
        Driveline driveline = loads.driveline();
        gears =
                drive.ratio().isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                new Gears(
                                        drive.ratio().getAsDouble(),
                                        driveline.efficiency(),
                                        driveline.differential()));
        torques =
                new TorquePath(
                        throughGears(driveline.engineTorque()),
                        throughGears(driveline.clutchCapacity()),
                        grip(loads.wheel().driving()),
                        grip(loads.wheel().landing()),
                        driveline.shock(),
                        gears.isEmpty() ? OptionalDouble.empty() : drive.reverseStep(),
                        driveline.brakes().stream()
                                .flatMapToDouble(brakes -> braking(brakes).stream())
                                .findAny());
        cycles = returningTorques();
        straightLife = mixOfDuties();
        for (Side side : Side.values()) {
            shafts.put(side, cut(side));
            fatigues.put(side, tired(side));
        }
    }

    /**
     * Studies a scenario.
     *
     * @param tyre on the driven wheels, when its diameter is known
     * @param left its left side, when joints and travel are known; likewise the right
     */
    public static StrengthStudy of(
            Loads loads,
            Drive drive,
            Optional<Tyre> tyre,
            Optional<SideStudy> left,
            Optional<SideStudy> right) {
        return new StrengthStudy(loads, drive, tyre, left, right);
    }

    private OptionalDouble throughGears(OptionalDouble torque) {
        return torque.isPresent() && gears.isPresent()
                ? OptionalDouble.of(gears.get().shaftTorque(torque.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** The rolling radius stands for the loaded one, which is a little less. */
    private OptionalDouble grip(OptionalDouble load) {
        OptionalDouble friction = loads.wheel().friction();
        return friction.isEmpty() || load.isEmpty() || tyre.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        new TyreGrip(
                                        friction.getAsDouble(),
                                        load.getAsDouble(),
                                        tyre.get().rollingRadius())
                                .torque());
    }

    private OptionalDouble braking(InboardBrakes brakes) {
        return brakes.torque(
                loads.wheel().driving(), tyre.stream().mapToDouble(Tyre::rollingRadius).findAny());
    }

    /** The duties' torques, without shock; an inboard brake turns against the drive. */
    private TorqueCycles returningTorques() {
        return new TorqueCycles(
                Math.max(most(TorqueCycles.Kind.REVERSED), torques.brake().orElse(0)),
                most(TorqueCycles.Kind.REPEATED));
    }

    private double most(TorqueCycles.Kind cycle) {
        double part =
                loads.running().duties().stream()
                        .mapToDouble(duty -> duty.torqueComing(cycle))
                        .max()
                        .orElse(0);
        return part * torques.running().orElse(0);
    }

    /** Life of a straight joint whose capacity is the running torque, hours. */
    private OptionalDouble mixOfDuties() {
        List<Duty> duties = loads.running().duties();
        double whole = duties.stream().mapToDouble(Duty::share).sum();
        return tyre.isEmpty() || whole == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        JointLife.mixed(
                                duties.stream().mapToDouble(Duty::share).toArray(),
                                duties.stream().mapToDouble(this::straightLife).toArray()));
    }

    private double straightLife(Duty duty) {
        return JointLife.hours(1, duty.torque(), 0, tyre.orElseThrow().wheelSpeed(duty.speed()));
    }

    private ShaftStrength cut(Side side) {
        return result(side)
                .map(
                        shaft ->
                                ShaftStrength.of(
                                        shaft,
                                        study(side).orElseThrow().stock().ring(),
                                        loads.splines()))
                .orElse(ShaftStrength.UNKNOWN);
    }

    private ShaftFatigue tired(Side side) {
        return result(side)
                .map(
                        shaft ->
                                ShaftFatigue.of(
                                        shaft,
                                        study(side).orElseThrow().stock().ring(),
                                        loads.fatigue(),
                                        cycles))
                .orElse(ShaftFatigue.UNKNOWN);
    }

    private Optional<SideStudy> study(Side side) {
        return side == Side.LEFT ? left : right;
    }

    private Optional<SideResult> result(Side side) {
        return study(side).flatMap(SideStudy::result);
    }

    /** Torque of a shaft over the engine's, when the ratio is known. */
    public OptionalDouble torqueRatio() {
        return gears.stream().mapToDouble(Gears::torqueRatio).findAny();
    }

    /** Torque that comes to a shaft, by what limits it. */
    public TorquePath torques() {
        return torques;
    }

    /** Shaft speed at top speed, rpm. */
    public OptionalDouble topRpm() {
        OptionalDouble speed = loads.running().topSpeed();
        return speed.isEmpty() || tyre.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(tyre.get().wheelSpeed(speed.getAsDouble()));
    }

    /** Share of a straight joint's life that an hour of all duties uses at its full capacity. */
    public OptionalDouble lifeUsed() {
        return straightLife.stream().map(hours -> 1 / hours).findAny();
    }

    /** What a side's shaft carries. */
    public ShaftStrength shaft(Side side) {
        return shafts.get(side);
    }

    /** The greatest torques that come back in a shaft, without shock. */
    public TorqueCycles cycles() {
        return cycles;
    }

    /** How they tire a side's shaft. */
    public ShaftFatigue fatigue(Side side) {
        return fatigues.get(side);
    }

    /** The section that they tire most, the left one of equals; empty when no factor is known. */
    public Optional<StrengthFacts.Weakest> mostTired() {
        return Arrays.stream(Side.values())
                .flatMap(side -> mostTired(side).stream())
                .min(Comparator.comparingDouble(StrengthFacts.Weakest::factor));
    }

    private Optional<StrengthFacts.Weakest> mostTired(Side side) {
        ShaftFatigue fatigue = fatigue(side);
        return fatigue.least()
                .map(
                        part ->
                                new StrengthFacts.Weakest(
                                        part.words() + ", " + side.word(),
                                        fatigue.factor(part).orElseThrow()));
    }

    /** How far a side's shaft twists under the torque needed, rad. */
    public OptionalDouble twist(Side side) {
        OptionalDouble needed = torques.needed();
        return needed.isPresent() ? shaft(side).twist(needed.getAsDouble()) : needed;
    }

    /** Critical speed of a side's shaft over its speed at top speed. */
    public OptionalDouble criticalSpeedShare(Side side) {
        return ratio(shaft(side).criticalSpeed(), topRpm());
    }

    /**
     * Life of a side's joint at its angles at bump, ride and droop, each for its share of the time,
     * hours: an index to compare by.
     */
    public OptionalDouble life(Side side, ShaftEnd end) {
        OptionalDouble rated = end == ShaftEnd.INNER ? drive.inner().life() : drive.outer().life();
        OptionalDouble running = torques.running();
        Optional<SideResult> result = result(side);
        Optional<TravelShares> shares = loads.running().shares();
        if (straightLife.isEmpty()
                || rated.isEmpty()
                || running.isEmpty()
                || result.isEmpty()
                || shares.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                JointLife.hoursAt(
                        straightLife.getAsDouble(),
                        rated.getAsDouble(),
                        running.getAsDouble(),
                        shares.get()
                                .use(
                                        result.get().atBump().angle(end),
                                        result.get().atRide().angle(end),
                                        result.get().atDroop().angle(end))));
    }

    /** Speed times angle of a side's joint at ride height and top speed, rpm times degrees. */
    public OptionalDouble speedAngle(Side side, ShaftEnd end) {
        OptionalDouble rpm = topRpm();
        Optional<SideResult> result = result(side);
        return rpm.isEmpty() || result.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        JointLife.speedAngle(
                                rpm.getAsDouble(),
                                end.either(
                                        result.get().innerAtRide(), result.get().outerAtRide())));
    }

    /** What a part takes that both sides have alike, N·m. */
    public OptionalDouble capacity(SharedPart part) {
        return switch (part) {
            case JOINT_INNER -> drive.inner().peak();
            case JOINT_OUTER -> drive.outer().peak();
            case BOLTS_INNER -> friction(drive.inner());
            case BOLTS_OUTER -> friction(drive.outer());
            case OWN -> loads.ownFigures().stream().mapToDouble(RatingRow::capacity).min();
        };
    }

    private static OptionalDouble friction(JointRating joint) {
        return joint.bolts().stream().mapToDouble(FlangeBolts::frictionCapacity).findAny();
    }

    /** Safety factor of a capacity in N·m; empty while the torque is not known. */
    public OptionalDouble factor(OptionalDouble capacity) {
        return ratio(capacity, torques.needed());
    }

    private static OptionalDouble ratio(OptionalDouble above, OptionalDouble below) {
        return above.isEmpty() || below.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(above.getAsDouble() / below.getAsDouble());
    }

    /** One row a part: left shaft, right shaft, what both have alike, the builder's own figures. */
    public List<RatingRow> rows() {
        List<RatingRow> rows = new ArrayList<>();
        for (Side side : Side.values()) {
            for (ShaftPart part : ShaftPart.values()) {
                add(rows, part.words() + ", " + side.word(), shaft(side).capacity(part));
            }
        }
        for (SharedPart part : SharedPart.values()) {
            if (part != SharedPart.OWN) {
                add(rows, part.words(), capacity(part));
            }
        }
        rows.addAll(loads.ownFigures());
        return rows;
    }

    private static void add(List<RatingRow> rows, String part, OptionalDouble capacity) {
        capacity.ifPresent(torque -> rows.add(new RatingRow(part, torque)));
    }

    /** The parts, weakest first; empty while no torque or no part is known. */
    public Optional<WeakestPart> weakest() {
        List<RatingRow> rows = rows();
        OptionalDouble needed = torques.needed();
        return rows.isEmpty() || needed.isEmpty()
                ? Optional.empty()
                : Optional.of(new WeakestPart(needed.getAsDouble(), rows));
    }

    /** The least safety factor; empty where {@link #weakest} is. */
    public OptionalDouble leastFactor() {
        return weakest().stream().mapToDouble(WeakestPart::factor).findAny();
    }

    /** Least safety factor that the builder wants. */
    public double factorWanted() {
        return loads.factorWanted();
    }

    /** What a verdict needs of it. Bolts tightened too far hold nothing: a finding of their own. */
    public StrengthFacts facts() {
        return new StrengthFacts(
                drive.inner().bolts().map(StrengthStudy::facts),
                drive.outer().bolts().map(StrengthStudy::facts),
                weakest()
                        .filter(parts -> parts.factor() > 0)
                        .map(
                                parts ->
                                        new StrengthFacts.Weakest(
                                                parts.least().part(), parts.factor())),
                loads.factorWanted(),
                new ReturningFacts(
                        speedLimit(drive.inner()),
                        speedLimit(drive.outer()),
                        mostTired(),
                        loads.fatigue().factorWanted()));
    }

    private Optional<ReturningFacts.SpeedLimit> speedLimit(JointRating joint) {
        OptionalDouble rpm = topRpm();
        return rpm.isEmpty() || joint.speedAngle().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new ReturningFacts.SpeedLimit(
                                rpm.getAsDouble(), joint.speedAngle().getAsDouble()));
    }

    private static StrengthFacts.Bolts facts(FlangeBolts bolts) {
        return new StrengthFacts.Bolts(
                bolts.preloadShare(), FlangeBolts.MOST_PRELOAD, bolts.mostTorque());
    }
}
