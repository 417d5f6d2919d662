package shaftwright.functions;

import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import java.util.Optional;
import shaftwright.joint.MountedJoint;
import shaftwright.mockup.RaceStop;
import shaftwright.mockup.Stick;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.StickEnd;
import shaftwright.mockup.WindowEnd;

/** What a mock-up stick tells, and how far it may differ from the plan. */
final class MockUpFunctions {
    private MockUpFunctions() {}

    /** Beside those of blank and grooves. */
    static List<CellFunction> sticks() {
        return List.of(
                new Declaration(
                                Topic.CUTTING,
                                "STICKSPACING",
                                "Race centre to race centre on a mock-up stick, from its cross holes.",
                                Measure.LENGTH)
                        .length("holes", POSITIVE, "spacing of the cross holes, centre to centre")
                        .length("pindiameter", POSITIVE, "diameter of the pins")
                        .length("halfwidthinner", POSITIVE, "half width of the inner race")
                        .length("halfwidthouter", POSITIVE, "half width of the outer race")
                        .length("counterboreinner", NOT_NEGATIVE, 0, "of the inner race")
                        .length("counterboreouter", NOT_NEGATIVE, 0, "of the outer race")
                        .length("slide", NOT_NEGATIVE, 0, "of both races, while pushed fully in")
                        .formula(
                                "holes-pindiameter-(halfwidthinner-counterboreinner)-(halfwidthouter-counterboreouter)-slide")
                        .only(
                                "counterboreinner<=2*halfwidthinner,counterboreouter<=2*halfwidthouter")
                        .source("the races bear on the pins' sides, plain addition")
                        .example("606 − 6 − (16 − 3) − 14", 9, 606, 6, 16, 14, 3, 573)
                        .number(MockUpFunctions::spacing));
    }

    /** Beside those of doubt. */
    static List<CellFunction> doubts() {
        return List.of(
                new Declaration(
                                Topic.DOUBT,
                                "STICKALLOWED",
                                "How far a mock-up reading may differ from the plan before it says something.",
                                Measure.LENGTH)
                        .length("pathdoubt", NOT_NEGATIVE, "doubt of the hub path there")
                        .length("graduation", NOT_NEGATIVE, "smallest division of the tape")
                        .formula("SQRT(pathdoubt^2+graduation^2/3)")
                        .source("JCGM 100:2008, 5.1.2; √(U² + (2σ)²), σ a graduation over √12")
                        .example("√(3² + 4²)", 4, 3, 6.9282, 5)
                        .number(
                                a ->
                                        StickComparison.allowed(
                                                a.number("pathdoubt"),
                                                a.number("graduation") / 2 / Math.sqrt(3))));
    }

    private static double spacing(Arguments a) {
        MountedJoint inner = Lines.seated(a, "halfwidthinner", "counterboreinner");
        MountedJoint outer = Lines.seated(a, "halfwidthouter", "counterboreouter");
        Stick stick = new Stick(a.number("pindiameter"), end(a.number("slide")), end(0));
        return stick.spacing(WindowEnd.IN, a.number("holes"), inner, outer);
    }

    private static StickEnd end(double slide) {
        return new StickEnd(Optional.of(RaceStop.COLLAR), slide, 0, 0);
    }
}
