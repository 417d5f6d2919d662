package shaftwright.study;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.SplineUse;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.strength.Bar;
import shaftwright.strength.Spline;

/** What one side's shaft carries. Whatever needs a figure that is not known is empty. */
public final class ShaftStrength {
    /** Of a side without a shaft, or whose shaft has no blank. */
    static final ShaftStrength UNKNOWN = new ShaftStrength(Optional.empty(), 0);

    private final Optional<Bar> bar;
    private final double length;
    private final Map<ShaftPart, Double> capacities = new EnumMap<>(ShaftPart.class);

    private ShaftStrength(Optional<Bar> bar, double length) {
        this.bar = bar;
        this.length = length;
    }

    /**
     * Of a shaft.
     *
     * @param use how its races sit and how long its splines are to last
     */
    static ShaftStrength of(SideResult shaft, RingSpec ring, SplineUse use) {
        if (shaft.plan().isEmpty()) {
            return UNKNOWN;
        }
        CutPlan plan = shaft.plan().get();
        Blank blank = plan.blank();
        ShaftStrength strength = new ShaftStrength(blank.bar(), shaft.length().clipToClip());
        strength.put(ShaftPart.BAR, strength.bar);
        strength.put(ShaftPart.ROOT_INNER, at(blank, blank.inner().root()));
        strength.put(ShaftPart.ROOT_OUTER, at(blank, blank.outer().root()));
        strength.putTeeth(
                ShaftPart.TEETH_INNER,
                blank,
                blank.inner().spline(shaft.setup().inner().raceDepth(), blank.bore()),
                use);
        strength.putTeeth(
                ShaftPart.TEETH_OUTER,
                blank,
                blank.outer().spline(shaft.setup().outer().raceDepth(), blank.bore()),
                use);
        strength.put(ShaftPart.GROOVE_INNER, at(blank, plan.neck(ShaftEnd.INNER, ring)));
        strength.put(ShaftPart.GROOVE_OUTER, at(blank, plan.neck(ShaftEnd.OUTER, ring)));
        return strength;
    }

    private static Optional<Bar> at(Blank blank, OptionalDouble diameter) {
        return diameter.isPresent() ? blank.bar(diameter.getAsDouble()) : Optional.empty();
    }

    private void put(ShaftPart part, Optional<Bar> section) {
        section.ifPresent(round -> capacities.put(part, round.yieldTorque()));
    }

    private void putTeeth(ShaftPart part, Blank blank, Optional<Spline> spline, SplineUse use) {
        if (spline.isPresent() && blank.material().teeth().isPresent()) {
            capacities.put(
                    part,
                    spline.get()
                            .capacity(
                                    blank.material()
                                            .teeth()
                                            .get()
                                            .forLife(use.fatigueFactor(), use.wearFactor()),
                                    use.misalignment(),
                                    use.hold()));
        }
    }

    /** What a part takes, N·m. */
    public OptionalDouble capacity(ShaftPart part) {
        Double known = capacities.get(part);
        return known == null ? OptionalDouble.empty() : OptionalDouble.of(known);
    }

    /** How far it twists between its clips under a torque in N·m, rad. */
    OptionalDouble twist(double torque) {
        return bar.isPresent()
                ? OptionalDouble.of(bar.get().twist(torque, length))
                : OptionalDouble.empty();
    }

    /** First bending critical speed between its clips, rpm. */
    public OptionalDouble criticalSpeed() {
        return bar.isPresent()
                ? OptionalDouble.of(bar.get().criticalSpeed(length))
                : OptionalDouble.empty();
    }
}
