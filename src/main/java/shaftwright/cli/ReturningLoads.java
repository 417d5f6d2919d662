package shaftwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import shaftwright.build.Side;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.TorqueCycles;
import shaftwright.study.Cautions;
import shaftwright.study.FatiguePart;
import shaftwright.study.ShaftFatigue;
import shaftwright.study.StrengthStudy;
import shaftwright.study.Wording;

/** Loads that come back, in the terminal: what of them is known, and its cautions. */
record ReturningLoads(ResultPage page, StrengthStudy strength) {
    /** The most tired section alone, with its side where both are shown. */
    void summary(List<Side> sides) {
        if (sides.size() == 1) {
            ShaftFatigue fatigue = strength.fatigue(sides.get(0));
            fatigue.least()
                    .ifPresent(part -> tired(fatigue.factor(part).orElseThrow(), part.words()));
        } else {
            strength.mostTired().ifPresent(tired -> tired(tired.factor(), tired.part()));
        }
    }

    private void tired(double factor, String section) {
        page.row("in fatigue", "factor " + Wording.factor(factor) + ", " + section);
    }

    /** All of one side. */
    void print(Side side) {
        ends(
                "life index",
                " h",
                strength.life(side, ShaftEnd.INNER),
                strength.life(side, ShaftEnd.OUTER));
        ends(
                "rpm × degrees",
                "",
                strength.speedAngle(side, ShaftEnd.INNER),
                strength.speedAngle(side, ShaftEnd.OUTER));
        ShaftFatigue fatigue = strength.fatigue(side);
        if (fatigue.least().isEmpty()) {
            return;
        }
        page.row("comes back", cycles());
        for (FatiguePart part : FatiguePart.values()) {
            fatigue.factor(part)
                    .ifPresent(
                            factor ->
                                    page.row(
                                            "  fatigue",
                                            "factor "
                                                    + Wording.factor(factor)
                                                    + ": "
                                                    + part.words()
                                                    + ", Kfs "
                                                    + ResultPage.rounded(
                                                            fatigue.notch(part).orElseThrow(), 2)));
        }
        page.row(
                "  Kfs",
                fatigue.notchesMean()
                        ? "on alternating and mean stress: the blank is hardened"
                        : "on the alternating stress alone");
    }

    private void ends(String label, String unit, OptionalDouble inner, OptionalDouble outer) {
        List<String> ends = new ArrayList<>();
        inner.ifPresent(value -> ends.add("inner " + ResultPage.rounded(value, 0) + unit));
        outer.ifPresent(value -> ends.add("outer " + ResultPage.rounded(value, 0) + unit));
        if (!ends.isEmpty()) {
            page.row(label, String.join(", ", ends));
        }
    }

    private String cycles() {
        TorqueCycles cycles = strength.cycles();
        List<String> torques = new ArrayList<>();
        if (cycles.reversed() > 0) {
            torques.add(page.torque(cycles.reversed()) + " both ways");
        }
        if (cycles.repeated() > 0) {
            torques.add(page.torque(cycles.repeated()) + " on and off");
        }
        return String.join(", ", torques) + ", without shock";
    }

    /** What to keep in mind beside what these scenarios show of them. */
    static Set<String> cautions(List<ScenarioOutcome> scenarios, List<Side> sides, boolean all) {
        Set<String> cautions = new LinkedHashSet<>();
        for (ScenarioOutcome scenario : scenarios) {
            StrengthStudy strength = scenario.strength();
            if (strength.mostTired().isPresent()) {
                cautions.add(Cautions.FATIGUE);
            }
            if (all
                    && sides.stream()
                            .anyMatch(side -> strength.life(side, ShaftEnd.INNER).isPresent())) {
                cautions.add(Cautions.LIFE);
            }
            if (all
                    && sides.stream()
                            .anyMatch(
                                    side ->
                                            strength.speedAngle(side, ShaftEnd.INNER)
                                                    .isPresent())) {
                cautions.add(Cautions.SPEED_ANGLE);
            }
            if (all
                    && (strength.torques().braking().isPresent()
                            || strength.torques().reversing().isPresent())) {
                cautions.add(Cautions.OTHER_WAY);
            }
        }
        return cautions;
    }
}
