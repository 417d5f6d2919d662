package shaftwright.cli;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.doubt.SlackChances;
import shaftwright.joint.Joint;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideLinkage;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.SideRestraints;
import shaftwright.reading.Sizing;
import shaftwright.reading.StopSentence;
import shaftwright.shaft.Binding;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;
import shaftwright.study.Cautions;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.study.Finding;
import shaftwright.study.SetCost;
import shaftwright.study.ShaftPart;
import shaftwright.study.SharedPart;
import shaftwright.study.SideStops;
import shaftwright.study.StopsAlone;
import shaftwright.study.StrengthStudy;
import shaftwright.study.Verdict;
import shaftwright.study.Wording;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;
import shaftwright.travel.TravelRange;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/** Results for reading in a terminal of 100 columns: one block a side, a unit on every number. */
final class ResultTable {
    private static final int WIDTH = 98;
    private static final int LABEL = 20;

    private final PrintStream out;
    private final Sizing sizing;
    private final LengthStyle style;

    ResultTable(PrintStream out, Sizing sizing) {
        this.out = out;
        this.sizing = sizing;
        style =
                sizing.unit() == LengthUnit.INCH
                        ? LengthStyle.DECIMAL_INCH
                        : LengthStyle.MILLIMETRES;
    }

    /** What to keep in mind beside every verdict. */
    void printCaution() {
        wrapped(Cautions.LINE);
        out.println();
    }

    /**
     * Where each side's hub path comes from, and its dampers and straps; nothing of what was not
     * typed.
     */
    void printPaths(List<Side> sides) {
        for (Side side : sides) {
            restraints(side);
            SideLinkage linkage = sizing.path(side).linkage();
            if (linkage.isChosen() || linkage.isTyped()) {
                out.println("Hub path, " + side.word());
                wrapped(
                        (linkage.isChosen()
                                        ? "From the linkage, a "
                                        : "From the readings. The linkage, a ")
                                + linkage.status());
                if (!linkage.agreement().isEmpty()) {
                    wrapped(linkage.agreement());
                    wrapped(linkage.offsets());
                    wrapped(linkage.untold());
                }
                out.println();
            }
        }
    }

    private void restraints(Side side) {
        List<SideRestraints.Row> rows = sizing.path(side).restraints().rows();
        if (rows.isEmpty()) {
            return;
        }
        out.println("Dampers and straps, " + side.word());
        for (SideRestraints.Row row : rows) {
            RestraintCourse course = row.course();
            wrapped(
                    course.restraint().span().name()
                            + ": "
                            + length(course.lengthAtRide())
                            + " at ride, motion ratio "
                            + rounded(Math.abs(course.ratioAtRide()), 2)
                            + (course.ratioAtRide() < 0 ? ", bump closes it" : ", bump opens it")
                            + stop(course.alone().up(), " up")
                            + stop(course.alone().down(), " down"));
        }
        out.println();
    }

    private String stop(TravelEnds.End end, String way) {
        return end.stop().isRestraint()
                ? "; " + end.stop().words() + " at " + length(Math.abs(end.travel())) + way
                : "";
    }

    /** One scenario's blocks. */
    void print(ScenarioOutcome scenario, List<Side> sides) {
        ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
        for (Side side : sides) {
            out.println(texts.title() + ", " + side.word());
            Optional<Verdict> verdict = sizing.verdict(new Index(side, scenario.number(), 0));
            verdict.ifPresentOrElse(this::verdict, () -> wrapped("Not used."));
            sizing.ownPath(side, scenario.number())
                    .map(own -> "With pick-up points of its own, " + own.linkage().status())
                    .ifPresent(this::wrapped);
            Optional<SideResult> found = scenario.side(side).result();
            if (found.isPresent() && verdict.isPresent()) {
                SideResult result = found.get();
                CardPrint card = verdict.get().card();
                shaft(result, card);
                travel(result);
                allowed(scenario.side(side).travelAllowed().orElseThrow());
                alone(scenario.side(side).stopsAlone().orElseThrow());
                longest(scenario.side(side).longestTravel(), card);
                stops(scenario.side(side), side);
                scenario.side(side).chances().ifPresent(this::chances);
                strength(scenario.strength(), side);
            }
            out.println();
        }
        if (scenario.used()) {
            vehicle(scenario, texts);
            out.println();
        }
    }

    private void verdict(Verdict verdict) {
        wrapped(verdict.heading(sizing.unit()));
        for (Finding finding : verdict.findings()) {
            wrapped("- ", verdict.sentence(finding, sizing.unit()));
        }
    }

    /** Lengths as far as the shop card would print them: nobody is to cut by others. */
    private void shaft(SideResult r, CardPrint card) {
        if (card.allows(CardPrint.LENGTHS)) {
            row("end to end, E", threeWays(r.length().endToEnd()));
            row("clip to clip, K", threeWays(r.length().clipToClip()));
        }
        row("window", length(r.window().width()) + window(r, card));
        if (card.allows(CardPrint.LENGTHS)) {
            cuts(r.plan());
        }
        row(
                "slack",
                length(r.leastSlackIn().value())
                        + " before bottoming "
                        + at(r.leastSlackIn())
                        + "; "
                        + length(r.leastSlackOut().value())
                        + " before pull-out "
                        + at(r.leastSlackOut()));
        row("end play", "least " + length(r.leastFreePlay().value()) + " " + at(r.leastFreePlay()));
    }

    private String window(SideResult r, CardPrint card) {
        if (!r.window().fits()) {
            return ": no length fits";
        }
        return card.allows(CardPrint.WINDOW)
                ? ": E from "
                        + length(r.choice().shortest().endToEnd())
                        + " to "
                        + length(r.choice().longest().endToEnd())
                : "";
    }

    private void cuts(Optional<CutPlan> plan) {
        row("blank", plan.isPresent() ? plan.get().blank().name() : "none");
        if (plan.isPresent()) {
            CutPlan cut = plan.get();
            row(
                    "cut off",
                    "inner end "
                            + length(cut.inner().cut())
                            + grooved(cut.inner())
                            + "; outer end "
                            + length(cut.outer().cut())
                            + grooved(cut.outer()));
        }
    }

    private String grooved(EndCut cut) {
        if (cut.groove() == GrooveUse.EXISTING) {
            return ", groove there is";
        }
        return ", new groove"
                + cut.inboardGroove().map(old -> left("inboard", old)).orElse("")
                + cut.outboardGroove().map(old -> left("outboard", old)).orElse("");
    }

    private String left(String side, GrooveWalls old) {
        return ", old one left "
                + side
                + " at "
                + length(Math.max(0, old.outer()))
                + " to "
                + length(old.inner());
    }

    private void travel(SideResult r) {
        FittedPosition[] places = {r.atBump(), r.atRide(), r.atDroop()};
        row("inner joint", angles(places, true, r.setup().inner().joint()));
        row("outer joint", angles(places, false, r.setup().outer().joint()));
        row(
                "travel",
                length(r.setup().bump())
                        + " bump, "
                        + length(-r.setup().droop())
                        + " droop; plunge used "
                        + length(r.plungeUsed()));
    }

    private void allowed(TravelRange range) {
        row(
                "shaft allows",
                range.empty()
                        ? "no travel; at ride: " + range.upStop().words()
                        : length(range.up())
                                + " up ("
                                + range.upStop().words()
                                + "), "
                                + length(range.down())
                                + " down ("
                                + range.downStop().words()
                                + ")");
    }

    /** What binds next once the first is dealt with: all that is met, nearest first. */
    private void alone(StopsAlone stops) {
        for (boolean up : new boolean[] {true, false}) {
            List<StopsAlone.Thing> met = new ArrayList<>();
            for (StopsAlone.Thing thing : StopsAlone.Thing.values()) {
                if (Double.isFinite(reach(stops, thing, up))) {
                    met.add(thing);
                }
            }
            met.sort(Comparator.comparingDouble(thing -> reach(stops, thing, up)));
            StringBuilder text = new StringBuilder();
            for (StopsAlone.Thing thing : met) {
                text.append(text.isEmpty() ? "" : ", ")
                        .append(thing.words())
                        .append(' ')
                        .append(length(reach(stops, thing, up)));
            }
            row(
                    up ? "each alone, up" : "each alone, down",
                    text.isEmpty() ? "nothing is met" : text.toString());
        }
    }

    private static double reach(StopsAlone stops, StopsAlone.Thing thing, boolean up) {
        StopAlone alone = stops.of(thing).orElse(StopAlone.NEVER);
        return up ? alone.up() : alone.down();
    }

    private void longest(Optional<LongestTravel> found, CardPrint card) {
        if (found.isEmpty()) {
            row("any blank allows", "nothing with the margins kept");
            return;
        }
        LongestTravel longest = found.get();
        TravelRange range = longest.range();
        row(
                "any blank allows",
                length(range.total())
                        + ": "
                        + length(range.up())
                        + " up ("
                        + range.upStop().words()
                        + "), "
                        + length(range.down())
                        + " down ("
                        + range.downStop().words()
                        + ")");
        row(
                "",
                "margins kept, with "
                        + (card.allows(CardPrint.LENGTHS)
                                ? "E "
                                        + length(longest.plan().length().endToEnd())
                                        + ", K "
                                        + length(longest.plan().length().clipToClip())
                                        + " from "
                                : "a shaft from ")
                        + longest.plan().blank().name());
    }

    /** Nothing of what was not typed. */
    private void stops(SideOutcome outcome, Side side) {
        SideStops stops = outcome.stops().orElseThrow();
        if (!sizing.path(side).restraints().rows().isEmpty()) {
            row("dampers, straps", StopSentence.of(stops, outcome, sizing));
        }
        stops.gap(ShaftEnd.INNER).ifPresent(gap -> gap("inner boot", outcome, gap));
        stops.gap(ShaftEnd.OUTER).ifPresent(gap -> gap("outer boot", outcome, gap));
    }

    private void gap(String label, SideOutcome outcome, SideStops.Gap gap) {
        row(
                label,
                (gap.least() < 0 ? "touches the tube of row " : "clears the tube of row ")
                        + (outcome.tubeRow(gap) + 1)
                        + " by "
                        + length(Math.abs(gap.least()))
                        + " "
                        + at(gap.leastAt()));
    }

    /** Nothing unless trials were asked for. */
    private void chances(SlackChances chances) {
        row(
                "chances",
                chance(chances.bottoming(), chances.trials())
                        + " bottom, "
                        + chance(chances.pullOut(), chances.trials())
                        + " pull out, of "
                        + chances.trials()
                        + " trials");
    }

    /** None seen in n trials leaves, at 95 %, a chance of up to {@code 3/n} (the rule of three). */
    private static String chance(double chance, int trials) {
        return chance == 0
                ? "none (below about " + rounded(100 * 3.0 / trials, 1) + " %)"
                : rounded(100 * chance, 1) + " %";
    }

    /** Nothing unless a torque and a part that takes one are known. */
    private void strength(StrengthStudy strength, Side side) {
        if (strength.weakest().isEmpty()) {
            return;
        }
        row("torque, one shaft", torque(strength.torques().needed().orElseThrow()));
        for (ShaftPart part : ShaftPart.values()) {
            part(part.words(), strength.shaft(side).capacity(part), strength);
        }
        for (SharedPart part : SharedPart.values()) {
            part(part.words(), strength.capacity(part), strength);
        }
    }

    private void part(String words, OptionalDouble capacity, StrengthStudy strength) {
        if (capacity.isPresent()) {
            row(
                    "  takes",
                    torque(capacity.getAsDouble())
                            + ", factor "
                            + Wording.factor(strength.factor(capacity).orElseThrow())
                            + ": "
                            + words);
        }
    }

    private String torque(double newtonMetres) {
        return rounded(InputKind.TORQUE.typed(newtonMetres, sizing.unit()), 0)
                + " "
                + InputKind.TORQUE.symbol(sizing.unit());
    }

    private static String angles(FittedPosition[] places, boolean inner, Joint joint) {
        StringBuilder text = new StringBuilder();
        String[] words = {"bump ", ", ride ", ", droop "};
        for (int i = 0; i < places.length; i++) {
            text.append(words[i])
                    .append(angle(inner ? places[i].innerAngle() : places[i].outerAngle()));
        }
        text.append("; limit ").append(angle(joint.angleMax()));
        // A joint without a running limit of its own has the other one for it.
        if (joint.angleContinuous() < joint.angleMax()) {
            text.append(", running ").append(angle(joint.angleContinuous()));
        }
        return text.toString();
    }

    private void vehicle(ScenarioOutcome scenario, ScenarioTexts texts) {
        out.println(texts.title() + ", vehicle");
        known("tyre diameter", scenario.tyreDiameter());
        if (!Double.isNaN(scenario.clearanceAtRide())) {
            row(
                    "ground clearance",
                    length(scenario.clearanceAtRide())
                            + " at ride"
                            + (Double.isNaN(scenario.clearanceAtBump())
                                    ? ""
                                    : ", " + length(scenario.clearanceAtBump()) + " at bump"));
        }
        known("track", scenario.track());
        if (!Double.isNaN(scenario.overallWidth())) {
            String note = texts.widthNote();
            row(
                    "overall width",
                    length(scenario.overallWidth())
                            + (note.isEmpty() ? "" : "; the limit: " + note));
        }
        SetCost cost = scenario.cost();
        row(
                "cost",
                cost.total().words()
                        + ": shafts "
                        + cost.shafts().words()
                        + ", joints "
                        + cost.joints().words()
                        + ", boots "
                        + cost.boots().words()
                        + ", other costs "
                        + rounded(cost.other(), 2));
    }

    private void known(String label, double mm) {
        if (!Double.isNaN(mm)) {
            row(label, length(mm));
        }
    }

    private String threeWays(double mm) {
        return length(mm)
                + " = "
                + new Length(mm).format(LengthStyle.SIXTY_FOURTHS)
                + (style == LengthStyle.DECIMAL_INCH
                        ? " = " + new Length(mm).format(LengthStyle.MILLIMETRES)
                        : " = " + new Length(mm).format(LengthStyle.DECIMAL_INCH));
    }

    private String length(double mm) {
        return new Length(mm).format(style);
    }

    private String at(Binding binding) {
        return at(binding.travel());
    }

    private String at(double travel) {
        if (Math.abs(travel) < 0.05) {
            return "at ride height";
        }
        return "at " + length(Math.abs(travel)) + (travel > 0 ? " bump" : " droop");
    }

    private static String angle(double radians) {
        return rounded(Math.toDegrees(radians), 1) + "°";
    }

    private static String rounded(double number, int places) {
        return Double.isNaN(number)
                ? "unknown"
                : BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    private void row(String label, String text) {
        StringBuilder line = new StringBuilder("  ").append(label);
        while (line.length() < LABEL) {
            line.append(' ');
        }
        out.println(line.append(text));
    }

    private void wrapped(String sentence) {
        wrapped("", sentence);
    }

    /** A sentence behind a mark, its further lines set in as far as its first. */
    private void wrapped(String mark, String sentence) {
        int width = WIDTH - 2 - mark.length();
        String indent = mark;
        String rest = sentence;
        while (rest.length() > width) {
            int space = rest.lastIndexOf(' ', width);
            int end = space <= 0 ? width : space;
            out.println("  " + indent + rest.substring(0, end));
            rest = rest.substring(end).trim();
            indent = " ".repeat(mark.length());
        }
        out.println("  " + indent + rest);
    }
}
