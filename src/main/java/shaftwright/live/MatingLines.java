package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.function.Function;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.MatingInputs;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.MatingFacts.UnmatedFlange;
import shaftwright.study.MatingWording;

/** Whether joints bolt to their flanges and shafts go into their races, in numbers and words. */
final class MatingLines {
    private static final int SINCE = 6;

    private MatingLines() {}

    /** A joint and what it is bolted to. */
    private record Bolted(MountedJoint joint, BoltPattern flange) {
        static Bolted of(Sizing sizing, Index index, ShaftEnd end) {
            return new Bolted(
                    SideLines.outcome(sizing, index).joint(end), sizing.drivenFlange(end));
        }
    }

    /** Which rows and measures a joint on its flange is held against. */
    static void sides(LineSet<Sizing> sides, ShaftEnd end) {
        LineSet<Sizing> set = sides.since(SINCE).at(end);
        set.whole("spline_row_<end>", "Row of the joint's spline, <inner>")
                .is(
                        "IFERROR(MATCH({joint_row_<end>},spline_of_joint,0),0)",
                        (sizing, index) ->
                                sizing.parts()
                                        .splines()
                                        .ofJoint(SideLines.outcome(sizing, index).jointRow(end)));
        LineSet<Bolted> joints = set.of((sizing, index) -> Bolted.of(sizing, index, end));
        joints.ofAny(
                        (bolted, index) ->
                                UnmatedFlange.withoutAdapter(bolted.joint, bolted.flange),
                        Lacking.ZERO)
                .whole(
                        "flange_differs_<end>",
                        "What joint and flange differ in, <inner> (0 nothing)")
                .is(differs(end), found -> found.part().number());
        joints.ofAny((bolted, index) -> UnmatedFlange.of(bolted.joint, bolted.flange), Lacking.ZERO)
                .whole("flange_part_<end>", "The same without an adapter, <inner>")
                .is(
                        "IF({cup_spacer_<inner>_read}>0,0,{flange_differs_<end>})",
                        found -> found.part().number());
    }

    private static String differs(ShaftEnd end) {
        Cases cases = new Cases().when("{rated_row_<end>}=0", 0);
        for (BoltPattern.Part part : BoltPattern.Part.values()) {
            cases.when(
                    Pieces.of("joint", joints(part))
                            .and("flange", flanges(part, end))
                            .and("same", part.same())
                            .in("IF(COUNT(<joint>,<flange>)=2,ABS(<joint>-<flange>)><same>,FALSE)"),
                    part.number());
        }
        return cases.otherwise("0");
    }

    private static String joints(BoltPattern.Part part) {
        String column =
                switch (part) {
                    case CIRCLE -> "circle";
                    case COUNT -> "count";
                    case SIZE -> "diameter";
                    case PILOT -> "pilot";
                };
        return "INDEX(bolt_" + column + "_read,{rated_row_<end>})";
    }

    private static String flanges(BoltPattern.Part part, ShaftEnd end) {
        return MatingInputs.flange(
                        end,
                        switch (part) {
                            case CIRCLE -> "circle";
                            case COUNT -> "bolts";
                            case SIZE -> "bolt_size";
                            case PILOT -> "pilot";
                        })
                + "_read";
    }

    /** The joint's measure that differs, in words. */
    static String jointHas() {
        return measure(MatingLines::joints);
    }

    /** The flange's. */
    static String flangeHas(ShaftEnd end) {
        return measure(part -> flanges(part, end));
    }

    private static String measure(Function<BoltPattern.Part, String> measures) {
        String lengths =
                "CHOOSE({flange_differs_<end>},"
                        + (joined(",", BoltPattern.Part.values(), measures) + ")");
        return Pieces.of("length", Phrases.fineLength(lengths))
                .and("count", measures.apply(BoltPattern.Part.COUNT))
                .and("circle", Phrases.length(measures.apply(BoltPattern.Part.CIRCLE)))
                .in(
                        """
                        IF({flange_differs_<end>}=1,<circle>,
                        IF({flange_differs_<end>}=2,FIXED(<count>,0,1),<length>))
                        """);
    }

    /** What is said of each end of a scenario. */
    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.MATING, Grid.SCENARIO_SIDE).since(SINCE);
        LineSet<Sizing> setUp = all.only(Known.SETUP.inWorkbook(), Lacking.EMPTY);
        LineSet<SideResult> shafts = all.only(Known.RESULT, Lacking.EMPTY);
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<Bolted> joints =
                    setUp.at(end).of((sizing, index) -> Bolted.of(sizing, index, end));
            joints.text("mate_flange_<end>", "<Inner> joint on its flange")
                    .inUnit(
                            flange(end),
                            (bolted, unit) ->
                                    MatingWording.flange(bolted.joint, bolted.flange, unit));
            joints.text("mate_bolts_<end>", "<Inner> joint's bolts, behind spacers")
                    .inUnit(
                            thread(),
                            (bolted, unit) ->
                                    MatingWording.thread(bolted.joint, bolted.flange, unit));
            shafts.at(end)
                    .text("mate_spline_<end>", "Shaft in its <inner> race")
                    .is(spline(), shaft -> spline(shaft, end));
        }
    }

    private static String flange(ShaftEnd end) {
        BoltPattern.Part[] parts = BoltPattern.Part.values();
        String compared =
                joined(
                        ",",
                        parts,
                        part -> "COUNT(" + joints(part) + "," + flanges(part, end) + ")=2");
        String words = joined(",", parts, part -> quoted(part.words() + " "));
        return Pieces.of("compared", "OR(FALSE," + compared + ")")
                .and("words", "CHOOSE({flange_differs_<end>}," + words + ")")
                .and("joint", jointHas())
                .and("flange", flangeHas(end))
                .and("against", quoted(MatingWording.AGAINST))
                .and("adapter", quoted(MatingWording.ADAPTER))
                .and("mates", quoted(MatingWording.MATES))
                .in(
                        """
                        IF({rated_row_<end>}=0,"",IF({flange_differs_<end>}=0,
                        IF(<compared>,<mates>,""),
                        IF({cup_spacer_<inner>_read}>0,<adapter>,"")&<words>&<joint>&<against>&<flange>))
                        """);
    }

    private static String thread() {
        return Pieces.of("spacers", "({cup_spacer_<inner>_read}+{joint_spacer_<inner>_read})")
                .and("size", "INDEX(bolt_diameter_read,{rated_row_<end>})")
                .and("typed", "INDEX(bolt_engagement_read,{rated_row_<end>})")
                .and("engaged", "((<typed>-<spacers>)/<size>)")
                .and("words", quoted(MatingWording.THREAD))
                .and("longer", quoted(MatingWording.LONGER))
                .and("by", Phrases.excess("(1-<engaged>)*<size>"))
                .in(
                        """
                        IF({rated_row_<end>}=0,"",IF({flange_differs_<end>}>0,"",
                        IF(COUNT(<size>,<typed>)<2,"",
                        FIXED(ROUND(ROUND(<engaged>,8),2),2,1)&<words>
                        &IF(ROUND(<engaged>,6)<1,<longer>&<by>,""))))
                        """);
    }

    private static String spline() {
        return Pieces.of("row", "INDEX(blank_spline_row_<inner>,{plan_row})")
                .and("compared", SplineLines.compared("<row>", "{spline_row_<end>}"))
                .and("mates", quoted(MatingWording.MATES))
                .and("count_only", quoted(MatingWording.COUNT_ONLY))
                .and("not_compared", quoted(MatingWording.NOT_COMPARED))
                .in(
                        """
                        IF({plan_row}=0,"",IF(<compared>,<mates>,
                        IF(COUNT(INDEX(blank_splines_<inner>_read,{plan_row}),{splines_<end>})=2,
                        <count_only>,<not_compared>)))
                        """);
    }

    private static String spline(SideResult shaft, ShaftEnd end) {
        return shaft.plan()
                .map(
                        plan ->
                                MatingWording.spline(
                                        plan.blank().end(end), shaft.setup().joint(end).joint()))
                .orElse("");
    }
}
