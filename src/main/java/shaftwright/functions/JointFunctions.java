package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;
import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.joint.BenchTable;
import shaftwright.joint.BootSeats;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;

/** How far a race may travel in its cup, and what the shaft's end meets there. */
final class JointFunctions {
    private static final String GEOMETRY = "plane geometry of a square-ended shaft";
    private static final Allowed FRACTION = Allowed.within(0, 1);

    private static final String BOOT = "plane geometry of two circles, one tilted with the shaft";

    private JointFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "BENCHLIMIT",
                                "Travel limit of a joint at an angle, from bench readings; straight"
                                        + " lines between them, the first reading below the first"
                                        + " angle, #N/A past the last, where nothing was read.")
                        .jointAngle("angle", "joint angle")
                        .numbers(
                                "angles",
                                Measure.ANGLE,
                                Allowed.within(0, Declaration.STEEPEST),
                                "bench angles, increasing")
                        .lengths("limits", ANY, "travel inward or outward at each")
                        .source("linear interpolation")
                        .example(
                                "half-way from 20 to 12",
                                9,
                                15,
                                new double[] {0, 10, 20},
                                new double[] {22, 20, 12},
                                16)
                        .number(JointFunctions::benchLimit),
                of(
                                "PLUNGELIMIT",
                                "Travel limit each way of a joint of which the straight plunge is"
                                        + " known.")
                        .length("plunge", NOT_NEGATIVE, "total travel of the straight joint")
                        .number(
                                "residual",
                                Measure.NUMBER,
                                FRACTION,
                                "part of it left at the angle limit")
                        .number(
                                "anglemax",
                                Measure.ANGLE,
                                new Allowed(0, Declaration.STEEPEST, true),
                                "angle limit")
                        .jointAngle("angle", "joint angle")
                        .formula("plunge/2*(1-(1-residual)*angle/anglemax)")
                        .source("linear fall, own assumption")
                        .example("20 straight, 6 at 22°, half-way 13", 9, 40, 0.3, 22, 11, 13)
                        .number(
                                a ->
                                        BenchTable.straight(
                                                        a.number("plunge"),
                                                        a.number("anglemax"),
                                                        a.number("residual"))
                                                .inward(a.number("angle"))),
                of("OVERHANG", "Race centre to the shaft's end.")
                        .length("halfwidth", POSITIVE, "half width of the race")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("counterbore", NOT_NEGATIVE, 0, "how deep the ring seat is sunk")
                        .formula("halfwidth-counterbore+stub")
                        .only("counterbore<=2*halfwidth")
                        .source(GEOMETRY)
                        .example("16 − 3 + 10", 9, 16, 10, 3, 23)
                        .number(a -> end(a, plain(a)).overhang()),
                of("ENDLIMIT", "Inward travel until the shaft's end meets the cup bottom.")
                        .length("cupbottom", POSITIVE, "joint centre to what the end can hit")
                        .length("halfwidth", POSITIVE, "half width of the race")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("enddiameter", NOT_NEGATIVE, "diameter of the shaft's end")
                        .jointAngle("angle", "joint angle")
                        .length("counterbore", NOT_NEGATIVE, 0, "how deep the ring seat is sunk")
                        .formula(
                                "cupbottom-(halfwidth-counterbore+stub)*COS(RADIANS(angle))-enddiameter/2*SIN(RADIANS(angle))")
                        .only("counterbore<=2*halfwidth")
                        .source(GEOMETRY)
                        .example(
                                "50 − 26 cos 20° − 13 sin 20° = 21.122",
                                3,
                                50,
                                16,
                                10,
                                26,
                                20,
                                21.122)
                        .number(JointFunctions::endLimit),
                of(
                                "BOREGAP",
                                "Gap between the tilted shaft's end and the bore of the cup,"
                                        + " negative when they touch.")
                        .length("cupradius", POSITIVE, "radius of the bore")
                        .length("halfwidth", POSITIVE, "half width of the race")
                        .length("stub", NOT_NEGATIVE, "shaft beyond the ring's bearing face")
                        .length("enddiameter", NOT_NEGATIVE, "diameter of the shaft's end")
                        .jointAngle("angle", "joint angle")
                        .length("counterbore", NOT_NEGATIVE, 0, "how deep the ring seat is sunk")
                        .formula(
                                "cupradius-(halfwidth-counterbore+stub)*SIN(RADIANS(angle))-enddiameter/2*COS(RADIANS(angle))")
                        .only("counterbore<=2*halfwidth")
                        .source(GEOMETRY)
                        .example(
                                "30 − 26 sin 20° − 13 cos 20° = 8.891",
                                3,
                                30,
                                16,
                                10,
                                26,
                                20,
                                8.891)
                        .number(a -> end(a, bored(a)).mouthClearance(0, a.number("angle"))),
                of(
                                "LIPGAP",
                                "Gap between a tilted shaft that runs through it and a lip of the"
                                        + " cup, on either side of the race, negative when they"
                                        + " touch.")
                        .length("lipradius", POSITIVE, "radius of the lip's opening")
                        .length("lipdepth", ANY, "joint centre to the lip, toward the cup back")
                        .length("travel", ANY, "inward travel of the race")
                        .length("enddiameter", NOT_NEGATIVE, "diameter of the shaft's end")
                        .jointAngle("angle", "joint angle")
                        .formula(
                                "lipradius-ABS(lipdepth-travel)*TAN(RADIANS(angle))-enddiameter/(2*COS(RADIANS(angle)))")
                        .source(GEOMETRY)
                        .example("24 − 7 tan 20° − 13/cos 20° = 7.618", 3, 24, 3, 10, 26, 20, 7.618)
                        .number(JointFunctions::lipGap),
                of(
                                "COUNTERBOREGAIN",
                                "Slack outward that counterboring two races adds at the same"
                                        + " clip-to-clip length.")
                        .length("counterboreinner", NOT_NEGATIVE, "of the inner race")
                        .length("counterboreouter", NOT_NEGATIVE, 0, "of the outer race")
                        .formula("counterboreinner+counterboreouter")
                        .source("S = K − (r − k) − (r − k), plain addition")
                        .example("4 + 3", 9, 4, 3, 7)
                        .number(a -> a.number("counterboreinner") + a.number("counterboreouter")),
                boot(
                                "BOOTLENGTH",
                                "Length of a boot along its middle, from one seat to the other, with"
                                        + " the joint at an angle.")
                        .formula(
                                "SQRT((travel+cupseat)^2+shaftseat^2-2*shaftseat*(travel+cupseat)*COS(RADIANS(angle)))")
                        .example(
                                "√(30² + 40² − 2 · 30 · 40 · cos 60°)",
                                3,
                                30,
                                40,
                                60,
                                30,
                                0,
                                60,
                                36.056)
                        .number(a -> seats(a).centreLine(a.number("travel"), a.number("angle"))),
                boot(
                                "BOOTSHORTEST",
                                "Shortest fibre of a boot from seat to seat, on the side that the"
                                        + " shaft leans to: what pinches its folds.")
                        .formula(
                                "SQRT(MAX(0,(travel+cupseat)^2+shaftseat^2-2*shaftseat*(travel+cupseat)*COS(RADIANS(angle))+(cupdiameter-shaftdiameter)^2/4+IF(SIN(RADIANS(angle))*ABS((travel+cupseat)*shaftdiameter-shaftseat*cupdiameter)<cupdiameter*shaftdiameter*(1-COS(RADIANS(angle))),0-(SIN(RADIANS(angle))*((travel+cupseat)*shaftdiameter-shaftseat*cupdiameter))^2/(2*cupdiameter*shaftdiameter*(1-COS(RADIANS(angle)))),cupdiameter*shaftdiameter/2*(1-COS(RADIANS(angle)))-SIN(RADIANS(angle))*ABS((travel+cupseat)*shaftdiameter-shaftseat*cupdiameter))))")
                        .example(
                                "points of two circles in space, by brute force",
                                3,
                                40,
                                70,
                                76,
                                24,
                                0,
                                24,
                                19.121)
                        .number(a -> seats(a).shortestFibre(a.number("travel"), a.number("angle"))),
                boot(
                                "BOOTLONGEST",
                                "Longest fibre of a boot from seat to seat: what tears it. A straight"
                                        + " boot of length L has fibres of the root of L squared plus the"
                                        + " difference of its seats' radii squared.")
                        .formula(
                                "SQRT((travel+cupseat)^2+shaftseat^2-2*shaftseat*(travel+cupseat)*COS(RADIANS(angle))+(cupdiameter-shaftdiameter)^2/4+cupdiameter*shaftdiameter/2*(1-COS(RADIANS(angle)))+SIN(RADIANS(angle))*ABS((travel+cupseat)*shaftdiameter-shaftseat*cupdiameter))")
                        .example(
                                "points of two circles in space, by brute force",
                                3,
                                40,
                                70,
                                76,
                                24,
                                0,
                                24,
                                62.549)
                        .number(a -> seats(a).longestFibre(a.number("travel"), a.number("angle"))));
    }

    private static Declaration of(String name, String meaning) {
        return new Declaration(Topic.JOINT, name, meaning, Measure.LENGTH);
    }

    private static Declaration boot(String name, String meaning) {
        return of(name, meaning)
                .length("cupseat", ANY, "joint centre to the clamp on the cup, toward the shaft")
                .length("shaftseat", POSITIVE, "race centre to the clamp on the shaft")
                .length("cupdiameter", POSITIVE, "diameter of the seat on the cup")
                .length("shaftdiameter", POSITIVE, "diameter of the seat on the shaft")
                .length("travel", ANY, "inward travel of the race, negative outward")
                .jointAngle("angle", "joint angle")
                .source(BOOT);
    }

    private static BootSeats seats(Arguments a) {
        return new BootSeats(
                a.number("cupseat"),
                a.number("shaftseat"),
                a.number("cupdiameter") / 2,
                a.number("shaftdiameter") / 2);
    }

    private static double benchLimit(Arguments a) {
        double[][] columns = a.columns("angles", "limits");
        BenchTable bench = BenchTable.of(columns[0], columns[1], columns[1]);
        if (a.number("angle") > bench.lastAngle()) {
            throw new NoValueException(Value.NO_ANSWER, "past the last bench angle");
        }
        return bench.inward(a.number("angle"));
    }

    private static double endLimit(Arguments a) {
        MountedJoint mounted =
                Lines.mounted(
                        endless(a, a.number("cupbottom")),
                        a.number("counterbore"),
                        a.number("stub"),
                        a.number("enddiameter"));
        return mounted.inward(a.number("angle"));
    }

    /** Races that never stop by themselves, so that only the shaft's end does. */
    private static Joint endless(Arguments a, double cupBottom) {
        double[] far = {Double.MAX_VALUE};
        return Joint.named(
                        "joint",
                        a.number("halfwidth"),
                        BenchTable.of(new double[1], far, far),
                        Math.toRadians(Declaration.STEEPEST))
                .cupBottom(cupBottom)
                .build();
    }

    private static Joint plain(Arguments a) {
        return Lines.joint(
                a.number("halfwidth"), 0, Double.POSITIVE_INFINITY, OptionalDouble.empty(), null);
    }

    private static Joint bored(Arguments a) {
        return Lines.joint(
                a.number("halfwidth"),
                0,
                Double.POSITIVE_INFINITY,
                OptionalDouble.of(a.number("cupradius")),
                null);
    }

    /** The shaft's end diameter is asked for only where it counts. */
    private static MountedJoint end(Arguments a, Joint joint) {
        double diameter = joint.cupRadius().isPresent() ? a.number("enddiameter") : 0;
        return Lines.mounted(joint, a.number("counterbore"), a.number("stub"), diameter);
    }

    /** The lip counts as reached: the shaft is as long as it takes. */
    private static double lipGap(Arguments a) {
        CupLip lip = new CupLip(a.number("lipradius"), a.number("lipdepth"));
        Joint joint = Lines.joint(1, 0, Double.POSITIVE_INFINITY, OptionalDouble.empty(), lip);
        double through = 1e4 * Allowed.LARGEST;
        return Lines.mounted(joint, 0, through, a.number("enddiameter"))
                .mouthClearance(a.number("travel"), a.number("angle"));
    }
}
