package shaftwright.functions;

import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.LengthChoice;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.ShaftOrder;
import shaftwright.shaft.Treatment;
import shaftwright.strength.ShaftMaterial;

/** What is cut from a blank, where the grooves lie, and the mock-up stick. */
final class CuttingFunctions {
    private static final String SUMS = "plain addition";

    private CuttingFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "CUTTOTAL",
                                "What comes off a blank in all; #NUM! when the blank is the shorter.")
                        .length("blanklength", POSITIVE, "blank, end to end")
                        .length("endtoend", POSITIVE, "finished shaft, end to end")
                        .formula("blanklength-endtoend")
                        .only("blanklength>=endtoend")
                        .source(SUMS)
                        .example("660 − 623", 9, 660, 623, 37)
                        .number(CuttingFunctions::total),
                of("SPLINENEEDED", "Splined length that a race needs from the shaft's end.")
                        .length("halfwidth", POSITIVE, "half width of the race")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("runout", NOT_NEGATIVE, "spline run-out that does not count")
                        .length("counterbore", NOT_NEGATIVE, 0, "how deep the ring seat is sunk")
                        .formula("stub+2*halfwidth-counterbore+runout")
                        .only("counterbore<=2*halfwidth")
                        .source(SUMS)
                        .example("10 + 2 · 16 − 3 + 6", 9, 16, 10, 6, 3, 45)
                        .number(
                                a ->
                                        a.number("stub")
                                                + Lines.seated(a, "halfwidth", "counterbore")
                                                        .raceDepth()
                                                + a.number("runout")),
                of(
                                "CUTROOM",
                                "What may come off one end of a blank before its spline gets too short, negative when it is already.")
                        .length("splinelength", NOT_NEGATIVE, "splined length from the blank's end")
                        .length("halfwidth", POSITIVE, "half width of the race")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("runout", NOT_NEGATIVE, "spline run-out that does not count")
                        .length("counterbore", NOT_NEGATIVE, 0, "how deep the ring seat is sunk")
                        .formula("splinelength-(stub+2*halfwidth-counterbore+runout)")
                        .only("counterbore<=2*halfwidth")
                        .source(SUMS)
                        .example("70 − 45", 9, 70, 16, 10, 6, 3, 25)
                        .number(
                                a ->
                                        a.number("splinelength")
                                                - a.number("stub")
                                                - Lines.seated(a, "halfwidth", "counterbore")
                                                        .raceDepth()
                                                - a.number("runout")),
                of(
                                "CUTENDS",
                                "What comes off the inner and the outer end, side by side: all from one end where its spline stays long enough, else from both; #N/A when the blank will not do.")
                        .length("blanklength", POSITIVE, "blank, end to end")
                        .length("endtoend", POSITIVE, "finished shaft, end to end")
                        .length(
                                "splineinner",
                                NOT_NEGATIVE,
                                "splined length of the blank, inner end")
                        .length(
                                "splineouter",
                                NOT_NEGATIVE,
                                "splined length of the blank, outer end")
                        .length("neededinner", POSITIVE, "splined length needed, inner end")
                        .length("neededouter", POSITIVE, "splined length needed, outer end")
                        .source("cut plan of the workbook with two new grooves")
                        .example(
                                "37 in all, 5 at most from the inner end, 45 from the outer",
                                9,
                                660,
                                623,
                                50,
                                90,
                                45,
                                45,
                                new double[] {0, 37})
                        .block(CuttingFunctions::ends),
                of(
                                "GROOVEOUTERWALL",
                                "Shaft's end to the groove wall that the ring leans on; #NUM! when the stub is shorter than the ring is thick.")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("ringthickness", POSITIVE, "thickness of the ring")
                        .formula("stub-ringthickness")
                        .only("stub>=ringthickness")
                        .source(
                                "the ring's inboard face bears on the race, its other face on the wall")
                        .example("10 − 1.75", 9, 10, 1.75, 8.25)
                        .number(a -> wall(a)),
                of(
                                "GROOVEINNERWALL",
                                "Shaft's end to the groove's inner wall; #NUM! when the stub is shorter than the ring is thick, or the groove narrower.")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("ringthickness", POSITIVE, "thickness of the ring")
                        .length("groovewidth", POSITIVE, "width of the groove")
                        .formula("stub-ringthickness+groovewidth")
                        .only("stub>=ringthickness,groovewidth>=ringthickness")
                        .source("outer wall and width")
                        .example("10 − 1.75 + 1.85", 9, 10, 1.75, 1.85, 10.1)
                        .number(CuttingFunctions::innerWall),
                of("LANDWANTED", "Least land between a groove and the shaft's end.")
                        .length("groovedepth", NOT_NEGATIVE, "depth of the groove")
                        .formula("3*groovedepth")
                        .source("three groove depths, edge margin of DIN 471, from memory")
                        .example("3 · 1.1", 9, 1.1, 3.3)
                        .number(a -> new RingSpec(0, 0, a.number("groovedepth"), 0).landWanted()),
                of(
                                "MOCKUPHOLES",
                                "Distance of the cross holes of a mock-up stick, centre to centre.")
                        .length("cliptoclip", POSITIVE, "clip-to-clip length of the shaft")
                        .length("pindiameter", POSITIVE, "diameter of the pins")
                        .formula("cliptoclip+pindiameter")
                        .source("the races bear on the pins' sides")
                        .example("600 + 6", 9, 600, 6, 606)
                        .number(CuttingFunctions::holes));
    }

    private static Declaration of(String name, String meaning) {
        return new Declaration(Topic.CUTTING, name, meaning, Measure.LENGTH);
    }

    private static double total(Arguments a) {
        double total = a.number("blanklength") - a.number("endtoend");
        if (total < 0) {
            throw Arguments.impossible("the blank is shorter than the shaft");
        }
        return total;
    }

    private static double wall(Arguments a) {
        double wall = a.number("stub") - a.number("ringthickness");
        if (wall < 0) {
            throw Arguments.impossible("the ring is thicker than the stub is long");
        }
        return wall;
    }

    private static double innerWall(Arguments a) {
        if (a.number("groovewidth") < a.number("ringthickness")) {
            throw Arguments.impossible("the ring does not go into the groove");
        }
        return wall(a) + a.number("groovewidth");
    }

    private static double holes(Arguments a) {
        EndCut none = EndCut.whole(0, new GrooveWalls(0, 0), 0);
        double clips = a.number("cliptoclip");
        Blank blank = blank(clips, 0, 0);
        return new CutPlan(blank, 0, new ShaftLength(clips, clips, clips), none, none)
                .mockUpHoles(a.number("pindiameter"));
    }

    private static double[][] ends(Arguments a) {
        MountedJoint inner = needing(a.number("neededinner"));
        MountedJoint outer = needing(a.number("neededouter"));
        ShaftLength length = ShaftLength.ofEndToEnd(a.number("endtoend"), inner, outer);
        LengthChoice choice =
                new LengthChoice(length, length, length.endToEnd(), length, Rounded.NOT_ASKED);
        ShaftOrder order = new ShaftOrder(choice, inner, outer, new RingSpec(0, 0, 0, 0));
        Blank blank =
                blank(a.number("blanklength"), a.number("splineinner"), a.number("splineouter"));
        CutPlan plan =
                BlankReview.all(List.of(blank), order)
                        .get(0)
                        .plan()
                        .orElseThrow(
                                () ->
                                        new NoValueException(
                                                Value.NO_ANSWER, "the blank is no good"));
        return new double[][] {{plan.inner().cut(), plan.outer().cut()}};
    }

    /**
     * A race that needs so much spline from the shaft's end, which is flush with its outer face.
     */
    private static MountedJoint needing(double spline) {
        return Lines.mounted(
                Lines.joint(spline / 2, 0, Double.POSITIVE_INFINITY, OptionalDouble.empty(), null),
                0,
                0,
                0);
    }

    private static Blank blank(double length, double splineInner, double splineOuter) {
        return new Blank(
                "blank",
                length,
                OptionalDouble.empty(),
                new BlankEnd(0, splineInner, OptionalDouble.empty()),
                new BlankEnd(0, splineOuter, OptionalDouble.empty()),
                OptionalDouble.empty(),
                true,
                0,
                ShaftMaterial.UNKNOWN,
                Treatment.UNKNOWN);
    }
}
