package shaftwright.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.doubt.SlackChances;
import shaftwright.jobs.ScenarioTexts;
import shaftwright.joint.Boot;
import shaftwright.joint.BootStretch;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideLinkage;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.SideRestraints;
import shaftwright.reading.Sizing;
import shaftwright.reading.StopSentence;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.StatesResult;
import shaftwright.shaft.Treatment;
import shaftwright.study.CardPrint;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.study.Finding;
import shaftwright.study.MatingWording;
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

/** All results of scenarios, one block a side. */
final class ResultTable {
    private final ResultPage page;
    private final Sizing sizing;

    ResultTable(ResultPage page, Sizing sizing) {
        this.page = page;
        this.sizing = sizing;
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
                page.title("Hub path, " + side.word());
                page.sentence(
                        (linkage.isChosen()
                                        ? "From the linkage, a "
                                        : "From the readings. The linkage, a ")
                                + linkage.status());
                if (!linkage.agreement().isEmpty()) {
                    page.sentence(linkage.agreement());
                    page.sentence(linkage.offsets());
                    page.sentence(linkage.untold());
                }
                page.gap();
            }
        }
    }

    private void restraints(Side side) {
        List<SideRestraints.Row> rows = sizing.path(side).restraints().rows();
        if (rows.isEmpty()) {
            return;
        }
        page.title("Dampers and straps, " + side.word());
        for (SideRestraints.Row row : rows) {
            RestraintCourse course = row.course();
            page.sentence(
                    course.restraint().span().name()
                            + ": "
                            + page.length(course.lengthAtRide())
                            + " at ride, motion ratio "
                            + ResultPage.rounded(Math.abs(course.ratioAtRide()), 2)
                            + inBump(course)
                            + stop(course.alone().up(), " up")
                            + stop(course.alone().down(), " down"));
        }
        page.gap();
    }

    private static String inBump(RestraintCourse course) {
        boolean shorter = course.ratioAtRide() < 0;
        return switch (course.restraint().kind()) {
            case STRAP -> shorter ? ", slackens in bump" : ", tightens in bump";
            case DAMPER, BUMP_STOP -> shorter ? ", closes in bump" : ", opens in bump";
        };
    }

    private String stop(TravelEnds.End end, String way) {
        return end.stop().isRestraint()
                ? "; " + end.stop().words() + " at " + page.length(Math.abs(end.travel())) + way
                : "";
    }

    /** One scenario's blocks. */
    void print(ScenarioOutcome scenario, List<Side> sides) {
        ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
        for (Side side : sides) {
            page.title(texts.title() + ", " + side.word());
            Optional<Verdict> verdict = sizing.verdict(new Index(side, scenario.number(), 0));
            verdict.ifPresentOrElse(this::verdict, () -> page.sentence("Not used."));
            sizing.ownPath(side, scenario.number())
                    .map(own -> "With pick-up points of its own, " + own.linkage().status())
                    .ifPresent(page::sentence);
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
                strength(scenario.strength(), side, sides);
                new ReturningLoads(page, scenario.strength()).print(side);
            }
            page.gap();
        }
        if (scenario.used()) {
            vehicle(scenario, texts);
            page.gap();
        }
    }

    private void verdict(Verdict verdict) {
        page.sentence(verdict.heading(page.unit()));
        for (Finding finding : verdict.findings()) {
            page.item(verdict.sentence(finding, page.unit()));
        }
    }

    /** Lengths as far as the shop card would print them: nobody is to cut by others. */
    private void shaft(SideResult r, CardPrint card) {
        if (card.allows(CardPrint.LENGTHS)) {
            page.row("end to end, E", threeWays(r.length().endToEnd()));
            page.row("clip to clip, K", threeWays(r.length().clipToClip()));
        }
        page.row("window", page.length(r.window().width()) + window(r, card));
        r.states().ifPresent(all -> page.row("all states", bounds(all)));
        if (card.allows(CardPrint.LENGTHS)) {
            cuts(r.plan());
        }
        page.row(
                "slack",
                page.length(r.leastSlackIn().value())
                        + " before bottoming "
                        + page.at(r.leastSlackIn())
                        + "; "
                        + page.length(r.leastSlackOut().value())
                        + " before pull-out "
                        + page.at(r.leastSlackOut()));
        page.row(
                "end play",
                "least "
                        + page.length(r.leastFreePlay().value())
                        + " "
                        + page.at(r.leastFreePlay()));
    }

    /** Which states set the ends of the window, and where the joints stand steepest. */
    private String bounds(StatesResult all) {
        return "shortest set "
                + page.at(all.window().shortest())
                + "; longest set "
                + page.at(all.window().longest())
                + "; inner joint at most "
                + ResultPage.angle(all.steepestInner().value())
                + " "
                + page.at(all.steepestInner())
                + "; outer joint at most "
                + ResultPage.angle(all.steepestOuter().value())
                + " "
                + page.at(all.steepestOuter());
    }

    private String window(SideResult r, CardPrint card) {
        if (!r.window().fits()) {
            return ": no length fits";
        }
        return card.allows(CardPrint.WINDOW)
                ? ": E from "
                        + page.length(r.choice().shortest().endToEnd())
                        + " to "
                        + page.length(r.choice().longest().endToEnd())
                : "";
    }

    private void cuts(Optional<CutPlan> plan) {
        page.row("blank", plan.map(cut -> named(cut.blank())).orElse("none"));
        if (plan.isPresent()) {
            CutPlan cut = plan.get();
            page.row(
                    "cut off",
                    "inner end "
                            + page.length(cut.inner().cut())
                            + grooved(cut.inner())
                            + "; outer end "
                            + page.length(cut.outer().cut())
                            + grooved(cut.outer()));
        }
    }

    private static String named(Blank blank) {
        return blank.treatment() == Treatment.UNKNOWN
                ? blank.name()
                : blank.name() + " (" + blank.treatment().words() + ")";
    }

    private String grooved(EndCut cut) {
        if (cut.groove() == GrooveUse.EXISTING) {
            return ", existing groove";
        }
        return ", new groove"
                + cut.inboardGroove().map(old -> left("inboard", old)).orElse("")
                + cut.outboardGroove().map(old -> left("outboard", old)).orElse("");
    }

    private String left(String side, GrooveWalls old) {
        return ", old one left "
                + side
                + " at "
                + page.length(Math.max(0, old.outer()))
                + " to "
                + page.length(old.inner());
    }

    private void travel(SideResult r) {
        FittedPosition[] places = {r.atBump(), r.atRide(), r.atDroop()};
        page.row("inner joint", angles(places, ShaftEnd.INNER, r.setup()));
        page.row("outer joint", angles(places, ShaftEnd.OUTER, r.setup()));
        page.row(
                "travel",
                page.length(r.setup().bump())
                        + " bump, "
                        + page.length(-r.setup().droop())
                        + " droop; plunge used "
                        + page.length(r.plungeUsed()));
    }

    private void allowed(TravelRange range) {
        page.row(
                "shaft allows",
                range.empty()
                        ? "no travel; at ride: " + range.upStop().words()
                        : page.length(range.up())
                                + " up ("
                                + range.upStop().words()
                                + "), "
                                + page.length(range.down())
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
                        .append(page.length(reach(stops, thing, up)));
            }
            page.row(
                    up ? "limit by limit" : "",
                    (up ? "bump: " : "droop: ")
                            + (text.isEmpty() ? "nothing is met" : text.toString()));
        }
    }

    private static double reach(StopsAlone stops, StopsAlone.Thing thing, boolean up) {
        StopAlone alone = stops.of(thing).orElse(StopAlone.NEVER);
        return up ? alone.up() : alone.down();
    }

    private void longest(Optional<LongestTravel> found, CardPrint card) {
        if (found.isEmpty()) {
            page.row("most travel", "any blank: nothing with the margins kept");
            return;
        }
        LongestTravel longest = found.get();
        TravelRange range = longest.range();
        page.row(
                "most travel",
                "any blank, "
                        + page.length(range.total())
                        + ": "
                        + page.length(range.up())
                        + " up ("
                        + range.upStop().words()
                        + "), "
                        + page.length(range.down())
                        + " down ("
                        + range.downStop().words()
                        + ")");
        page.row(
                "",
                "margins kept, with "
                        + (card.allows(CardPrint.LENGTHS)
                                ? "E "
                                        + page.length(longest.plan().length().endToEnd())
                                        + ", K "
                                        + page.length(longest.plan().length().clipToClip())
                                        + " from "
                                : "a shaft from ")
                        + longest.plan().blank().name());
    }

    /** Nothing of what was not typed. */
    private void stops(SideOutcome outcome, Side side) {
        SideStops stops = outcome.stops().orElseThrow();
        if (!sizing.path(side).restraints().rows().isEmpty()) {
            page.row("dampers, straps", StopSentence.of(stops, outcome, sizing));
        }
        stops.gap(ShaftEnd.INNER).ifPresent(gap -> gap("inner boot", outcome, gap));
        stops.gap(ShaftEnd.OUTER).ifPresent(gap -> gap("outer boot", outcome, gap));
        boolean compared = false;
        for (ShaftEnd end : ShaftEnd.values()) {
            compared |= mating(outcome, end);
        }
        if (compared) {
            page.row("flanges, splines", "same within " + MatingWording.sameWithin(sizing.unit()));
        }
    }

    /** Likewise; whether anything is known of both flanges. */
    private boolean mating(SideOutcome outcome, ShaftEnd end) {
        SideResult result = outcome.result().orElseThrow();
        MountedJoint joint = outcome.joint(end);
        String flange = MatingWording.flange(joint, sizing.drivenFlange(end), sizing.unit());
        if (!flange.isEmpty()) {
            page.row(end.word() + " flange", flange);
        }
        String thread = MatingWording.thread(joint, sizing.drivenFlange(end), sizing.unit());
        if (!thread.isEmpty() && joint.cupSpacer() + joint.joint().spacer() > 0) {
            page.row(end.word() + " bolts", thread + ", behind the spacers");
        }
        if (joint.boot().seats().isPresent()) {
            page.row(
                    end.word() + " boot fibres",
                    page.length(-result.greatestOfBoot(end, at -> -at.shortest()).value())
                            + " to "
                            + page.length(result.greatestOfBoot(end, BootStretch::longest).value())
                            + taken(joint.boot()));
        }
        return !flange.isEmpty();
    }

    private String taken(Boot boot) {
        String least = boot.shortestFibre().stream().mapToObj(page::length).findAny().orElse("?");
        String most = boot.longestFibre().stream().mapToObj(page::length).findAny().orElse("?");
        return boot.shortestFibre().isEmpty() && boot.longestFibre().isEmpty()
                ? ""
                : "; takes " + least + " to " + most;
    }

    private void gap(String label, SideOutcome outcome, SideStops.Gap gap) {
        page.row(
                label,
                (gap.least() < 0 ? "touches the tube of row " : "clears the tube of row ")
                        + (outcome.tubeRow(gap) + 1)
                        + " by "
                        + page.length(Math.abs(gap.least()))
                        + " "
                        + page.at(gap.leastAt()));
    }

    /** Nothing unless trials were asked for. */
    private void chances(SlackChances chances) {
        page.row(
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
                ? "none (below about " + ResultPage.rounded(100 * 3.0 / trials, 1) + " %)"
                : ResultPage.rounded(100 * chance, 1) + " %";
    }

    /** Nothing unless a torque and a part that takes one are known. */
    private void strength(StrengthStudy strength, Side side, List<Side> sides) {
        if (strength.weakest().isEmpty()) {
            return;
        }
        page.row("torque, one shaft", page.torque(strength.torques().needed().orElseThrow()));
        List<String> parts = parts(strength, side);
        if (side == Side.RIGHT
                && sides.contains(Side.LEFT)
                && parts.equals(parts(strength, Side.LEFT))) {
            page.row("  takes", "same as left");
            return;
        }
        for (String part : parts) {
            page.row("  takes", part);
        }
    }

    private List<String> parts(StrengthStudy strength, Side side) {
        List<String> parts = new ArrayList<>();
        for (ShaftPart part : ShaftPart.values()) {
            part(part.words(), strength.shaft(side).capacity(part), strength).ifPresent(parts::add);
        }
        for (SharedPart part : SharedPart.values()) {
            part(part.words(), strength.capacity(part), strength).ifPresent(parts::add);
        }
        return parts;
    }

    private Optional<String> part(String words, OptionalDouble capacity, StrengthStudy strength) {
        return capacity.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        page.torque(capacity.getAsDouble())
                                + ", factor "
                                + Wording.factor(strength.factor(capacity).orElseThrow())
                                + ": "
                                + words);
    }

    private static String angles(FittedPosition[] places, ShaftEnd end, SideSetup setup) {
        Joint joint = setup.joint(end).joint();
        StringBuilder text = new StringBuilder();
        String[] words = {"bump ", ", ride ", ", droop "};
        for (int i = 0; i < places.length; i++) {
            text.append(words[i]).append(ResultPage.angle(places[i].angle(end)));
        }
        text.append("; limit ").append(ResultPage.angle(joint.angleMax()));
        // A joint without a running limit of its own has the other one for it.
        if (joint.angleContinuous() < joint.angleMax()) {
            text.append(", running ").append(ResultPage.angle(joint.angleContinuous()));
        }
        return text.toString();
    }

    private void vehicle(ScenarioOutcome scenario, ScenarioTexts texts) {
        page.title(texts.title() + ", vehicle");
        known("tyre diameter", scenario.tyreDiameter());
        if (!Double.isNaN(scenario.clearanceAtRide())) {
            page.row(
                    "ground clearance",
                    page.length(scenario.clearanceAtRide())
                            + " at ride"
                            + (Double.isNaN(scenario.clearanceAtBump())
                                    ? ""
                                    : ", " + page.length(scenario.clearanceAtBump()) + " at bump"));
        }
        known("track", scenario.track());
        if (!Double.isNaN(scenario.overallWidth())) {
            String note = texts.widthNote();
            page.row(
                    "overall width",
                    page.length(scenario.overallWidth())
                            + (note.isEmpty() ? "" : "; the limit: " + note));
        }
        SetCost cost = scenario.cost();
        page.row(
                "cost",
                cost.total().words()
                        + ": shafts "
                        + cost.shafts().words()
                        + ", joints "
                        + cost.joints().words()
                        + ", boots "
                        + cost.boots().words()
                        + ", other costs "
                        + ResultPage.rounded(cost.other(), 2));
    }

    private void known(String label, double mm) {
        if (!Double.isNaN(mm)) {
            page.row(label, page.length(mm));
        }
    }

    private String threeWays(double mm) {
        return page.length(mm)
                + " = "
                + new Length(mm).format(LengthStyle.SIXTY_FOURTHS)
                + (page.unit() == LengthUnit.INCH
                        ? " = " + new Length(mm).format(LengthStyle.MILLIMETRES)
                        : " = " + new Length(mm).format(LengthStyle.DECIMAL_INCH));
    }
}
