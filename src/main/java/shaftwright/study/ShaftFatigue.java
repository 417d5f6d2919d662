package shaftwright.study;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.FatigueUse;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.strength.Bar;
import shaftwright.strength.Fatigue;
import shaftwright.strength.TorqueCycles;
import shaftwright.strength.TorsionChart;

/**
 * How torque that comes back tires one side's shaft, section by section: factors to compare
 * variants by. A section of which a size, the notch or the material's tensile strength is not known
 * has none.
 */
public final class ShaftFatigue {
    /** Of a side without a shaft, or whose shaft has no blank. */
    static final ShaftFatigue UNKNOWN = new ShaftFatigue();

    private final Map<FatiguePart, Double> notches = new EnumMap<>(FatiguePart.class);
    private final Map<FatiguePart, Double> factors = new EnumMap<>(FatiguePart.class);
    private boolean hardened;
    private OptionalDouble endurance = OptionalDouble.empty();

    private ShaftFatigue() {}

    /** Of a shaft. */
    static ShaftFatigue of(SideResult shaft, RingSpec ring, FatigueUse use, TorqueCycles cycles) {
        if (shaft.plan().isEmpty()) {
            return UNKNOWN;
        }
        CutPlan plan = shaft.plan().get();
        Blank blank = plan.blank();
        FatigueUse.Notches places = use.notches();
        ShaftFatigue fatigue = new ShaftFatigue();
        fatigue.hardened = blank.treatment().hardened();
        fatigue.endurance =
                blank.material().tensile().stream()
                        .map(mpa -> Fatigue.endurance(mpa, use.surface(), use.otherFactors()))
                        .findAny();
        Sections sections = new Sections(blank, use, cycles, fatigue);
        sections.add(FatiguePart.BAR, blank.diameter(), OptionalDouble.of(places.bar()));
        for (ShaftEnd end : ShaftEnd.values()) {
            sections.add(
                    end.either(FatiguePart.RUNOUT_INNER, FatiguePart.RUNOUT_OUTER),
                    blank.end(end).root(),
                    places.runout().concentration());
            blank.shoulder(end)
                    .ifPresent(
                            step ->
                                    sections.add(
                                            end.either(
                                                    FatiguePart.SHOULDER_INNER,
                                                    FatiguePart.SHOULDER_OUTER),
                                            OptionalDouble.of(step.smaller()),
                                            places.shoulder()
                                                    .factor(
                                                            TorsionChart.SHOULDER,
                                                            step.larger(),
                                                            step.smaller())));
            OptionalDouble neck = plan.neck(end, ring);
            sections.add(
                    end.either(FatiguePart.GROOVE_INNER, FatiguePart.GROOVE_OUTER),
                    neck,
                    neck.isEmpty()
                            ? neck
                            : places.groove()
                                    .factor(
                                            TorsionChart.GROOVE,
                                            blank.end(end).outside(),
                                            neck.getAsDouble()));
        }
        return fatigue;
    }

    /** What all sections of a shaft have in common. */
    private record Sections(
            Blank blank, FatigueUse use, TorqueCycles cycles, ShaftFatigue fatigue) {
        void add(FatiguePart part, OptionalDouble diameter, OptionalDouble concentration) {
            if (diameter.isEmpty()
                    || concentration.isEmpty()
                    || !(diameter.getAsDouble() > blank.bore())) {
                return;
            }
            double notch =
                    Fatigue.notchFactor(concentration.getAsDouble(), use.notches().sensitivity());
            fatigue.notches.put(part, notch);
            if (blank.material().tensile().isPresent() && cycles.any()) {
                fatigue.factors.put(part, factor(diameter.getAsDouble(), notch));
            }
        }

        private double factor(double diameter, double notch) {
            double tensile = blank.material().tensile().getAsDouble();
            return cycles.factor(
                    Bar.shearStress(1, diameter, blank.bore()),
                    notch,
                    blank.treatment().hardened() ? notch : 1,
                    fatigue.endurance.orElseThrow() * Fatigue.sizeFactor(diameter),
                    Fatigue.ULTIMATE_SHEAR_SHARE * tensile);
        }
    }

    /** Notch factor of a section, {@code K_fs}. */
    public OptionalDouble notch(FatiguePart part) {
        return of(notches, part);
    }

    /** Safety factor of a section on the Goodman line. */
    public OptionalDouble factor(FatiguePart part) {
        return of(factors, part);
    }

    private static OptionalDouble of(Map<FatiguePart, Double> figures, FatiguePart part) {
        Double known = figures.get(part);
        return known == null ? OptionalDouble.empty() : OptionalDouble.of(known);
    }

    /** Endurance limit in shear of its steel but for size, MPa. */
    public OptionalDouble endurance() {
        return endurance;
    }

    /** Whether notches weigh on the mean stress as well, as they do in hardened steel. */
    public boolean notchesMean() {
        return hardened;
    }

    /** The section with the least factor, the first of equals; empty when there is none. */
    public Optional<FatiguePart> least() {
        return factors.entrySet().stream()
                .min(Comparator.comparingDouble(Map.Entry::getValue))
                .map(Map.Entry::getKey);
    }
}
