package shaftwright.functions;

import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import java.util.Locale;
import shaftwright.strength.Bar;
import shaftwright.strength.BoltClass;
import shaftwright.strength.BoltThread;
import shaftwright.strength.Differential;
import shaftwright.strength.FlangeBolts;
import shaftwright.strength.Gears;
import shaftwright.strength.JointLife;
import shaftwright.strength.Material;
import shaftwright.strength.Spline;
import shaftwright.strength.SplineHold;
import shaftwright.strength.TyreGrip;

/** Torque at a half shaft and what bars, splines, bolts and joints make of it. */
final class StrengthFunctions {
    private static final String BAR = "torsion of round bars, any text on strength of materials";
    private static final String DUDLEY =
            "Dudley, Product Engineering, 1957, without application factor; ANSI B92.1 proportions,"
                    + " from memory";
    private static final String BOLTS = "F = T/(K d); ISO 898-1, from memory";
    private static final String LIFE =
            "Seherr-Thoss, Schmelz, Aucktor, Universal Joints and Driveshafts, from memory";
    private static final Allowed COUNT = Allowed.within(1, 100);
    private static final Allowed TEETH = Allowed.within(3, 200);

    private StrengthFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "BARSTRESS",
                                "Shear stress at the surface of a round bar under torque.",
                                Measure.STRESS)
                        .number("torque", Measure.TORQUE, NOT_NEGATIVE, "torque")
                        .length("diameter", POSITIVE, "outside diameter")
                        .length("bore", NOT_NEGATIVE, 0, "inside diameter")
                        .formula(
                                "16000*torque*(diameter*unit_mm)/(PI()*((diameter*unit_mm)^4-(bore*unit_mm)^4))")
                        .only("bore<diameter")
                        .source(BAR)
                        .example(
                                "16 · 1000 · 1000/(π 27 000) = 188.63",
                                2,
                                1000,
                                30,
                                0,
                                "mm",
                                188.63)
                        .number(a -> bar(a, 1, 1, 1, 1).shearStress(a.number("torque"))),
                of(
                                "BARTORQUE",
                                "Torque at which the surface of a round bar begins to yield.",
                                Measure.TORQUE)
                        .number(
                                "yieldstrength",
                                Measure.STRESS,
                                POSITIVE,
                                "yield strength in tension")
                        .length("diameter", POSITIVE, "outside diameter")
                        .length("bore", NOT_NEGATIVE, 0, "inside diameter")
                        .formula(
                                "yieldstrength/SQRT(3)*PI()*((diameter*unit_mm)^4-(bore*unit_mm)^4)/(16000*diameter*unit_mm)")
                        .only("bore<diameter")
                        .source(BAR + "; distortion energy")
                        .example("1000/√3 · π 27 000/16 000 = 3060.8", 1, 1000, 30, 0, "mm", 3060.8)
                        .number(a -> bar(a, a.number("yieldstrength"), 1, 1, 1).yieldTorque()),
                of(
                                "BARTWIST",
                                "Angle that one end of a round bar turns against the other.",
                                Measure.ANGLE)
                        .number("torque", Measure.TORQUE, NOT_NEGATIVE, "torque")
                        .length(
                                "length",
                                POSITIVE,
                                "between the places where the torque goes in and out")
                        .length("diameter", POSITIVE, "outside diameter")
                        .length("bore", NOT_NEGATIVE, 0, "inside diameter")
                        .number(
                                "shearmodulus",
                                Measure.MODULUS,
                                POSITIVE,
                                80,
                                "shear modulus, plain steel 80")
                        .formula(
                                "DEGREES(32*torque*length*unit_mm/(PI()*shearmodulus*((diameter*unit_mm)^4-(bore*unit_mm)^4)))")
                        .only("bore<diameter")
                        .source(BAR)
                        .example(
                                "32 · 10⁶ · 500/(π · 80 000 · 30⁴) rad",
                                3,
                                1000,
                                500,
                                30,
                                0,
                                80,
                                "mm",
                                4.503)
                        .number(
                                a ->
                                        bar(a, 1, 1, a.number("shearmodulus"), 1)
                                                .twist(a.number("torque"), a.number("length"))),
                of(
                                "CRITICALSPEED",
                                "First bending critical speed of a round bar between its clips, as the"
                                        + " workbook has it; the race-centre spacing, which is shorter,"
                                        + " would give more.",
                                Measure.SHAFT_SPEED)
                        .length("length", POSITIVE, "clip to clip, K")
                        .length("diameter", POSITIVE, "outside diameter")
                        .length("bore", NOT_NEGATIVE, 0, "inside diameter")
                        .number(
                                "elasticmodulus",
                                Measure.MODULUS,
                                POSITIVE,
                                206,
                                "elastic modulus, plain steel 206")
                        .number("density", Measure.DENSITY, POSITIVE, 7850, "density, steel 7850")
                        .formula(
                                "30/PI()*(PI()/(length*unit_mm))^2*SQRT((diameter*unit_mm)^2+(bore*unit_mm)^2)/4*SQRT(elasticmodulus*1000/(density*1E-12))")
                        .only("bore<diameter")
                        .source("bar on simple supports, any text on vibration")
                        .example(
                                "30/π · (π/500)² · 7.5 · 5.1227·10⁶",
                                0,
                                500,
                                30,
                                0,
                                206,
                                7850,
                                "mm",
                                14484)
                        .number(
                                a ->
                                        bar(
                                                        a,
                                                        1,
                                                        a.number("elasticmodulus"),
                                                        1,
                                                        a.number("density")
                                                                * Material.TONNE_PER_MM3)
                                                .criticalSpeed(a.number("length"))),
                spline("SPLINEROOTSHEAR", "Shear stress under the roots of a 30° involute spline.")
                        .formula("16000*torque/(PI()*(outside*unit_mm/(teeth+1)*(teeth-1.8))^3)")
                        .only("teeth=INT(teeth)")
                        .source(DUDLEY)
                        .example(
                                "root 26.2 of outside 29 and 28 teeth: 16 · 10⁶/(π 26.2³)",
                                2,
                                1000,
                                28,
                                29,
                                "mm",
                                283.18)
                        .number(a -> spline(a, 1).rootShear(a.number("torque"))),
                spline(
                                "HOLLOWROOTSHEAR",
                                "Shear stress under the roots of a 30° involute spline on a hollow"
                                        + " shaft.")
                        .length("bore", NOT_NEGATIVE, "inside diameter of the shaft")
                        .formula(
                                "16000*torque*(outside*unit_mm/(teeth+1)*(teeth-1.8))/(PI()*((outside*unit_mm/(teeth+1)*(teeth-1.8))^4-(bore*unit_mm)^4))")
                        .only("teeth=INT(teeth),bore<outside/(teeth+1)*(teeth-1.8)")
                        .source(DUDLEY)
                        .example(
                                "root 26.2 of outside 29 and 28 teeth: 16 · 10⁶ · 26.2/(π (26.2⁴ -"
                                        + " 20⁴))",
                                2,
                                1000,
                                28,
                                29,
                                20,
                                "mm",
                                428.78)
                        .number(
                                a -> {
                                    Spline solid = spline(a, 1);
                                    return solid.on(solid.rootDiameter(), a.number("bore"))
                                            .rootShear(a.number("torque"));
                                }),
                spline("SPLINETOOTHSHEAR", "Shear stress of the teeth of a 30° involute spline.")
                        .length("length", POSITIVE, "engaged length")
                        .number(
                                "misalignment",
                                Measure.NUMBER,
                                Allowed.within(1, 10),
                                1,
                                "load distribution factor")
                        .formula(
                                "4000*torque*misalignment/((teeth*outside*unit_mm/(teeth+1))*teeth*length*unit_mm*PI()*(outside*unit_mm/(teeth+1))/2)")
                        .only("teeth=INT(teeth)")
                        .source(DUDLEY)
                        .example(
                                "4 · 10⁶/(28 · 28 · 40 · π/2)", 2, 1000, 28, 29, 40, 1, "mm", 81.20)
                        .number(
                                a ->
                                        spline(a, a.number("length"))
                                                .toothShear(
                                                        a.number("torque"),
                                                        a.number("misalignment"))),
                spline(
                                "SPLINEBEARING",
                                "Pressure on the flanks of a 30° involute spline that can rock; one"
                                        + " held by its ring counts a ninth.")
                        .length("length", POSITIVE, "engaged length")
                        .number(
                                "misalignment",
                                Measure.NUMBER,
                                Allowed.within(1, 10),
                                1,
                                "load distribution factor")
                        .formula(
                                "2000*torque*misalignment/((teeth*outside*unit_mm/(teeth+1))*teeth*length*unit_mm*(outside*unit_mm/(teeth+1)))")
                        .only("teeth=INT(teeth)")
                        .source(DUDLEY)
                        .example("2 · 10⁶/(28 · 28 · 40 · 1)", 2, 1000, 28, 29, 40, 1, "mm", 63.78)
                        .number(
                                a ->
                                        spline(a, a.number("length"))
                                                .bearing(
                                                        a.number("torque"),
                                                        a.number("misalignment"),
                                                        SplineHold.FLEXIBLE)),
                of("BOLTPRELOAD", "Tension of a bolt from its tightening torque.", Measure.FORCE)
                        .number("torque", Measure.TORQUE, NOT_NEGATIVE, "tightening torque")
                        .length("diameter", POSITIVE, "nominal diameter")
                        .number(
                                "nutfactor",
                                Measure.NUMBER,
                                Allowed.within(0.05, 0.5),
                                0.2,
                                "nut factor K, 0.2 dry, 0.15 oiled")
                        .formula("1000*torque/(nutfactor*diameter*unit_mm)")
                        .source(BOLTS)
                        .example("50 000/(0.2 · 10)", 6, 50, 10, 0.2, "mm", 25000)
                        .number(
                                a ->
                                        bolts(
                                                        BoltThread.metric(
                                                                a.number("diameter"),
                                                                a.number("diameter") / 10),
                                                        BoltClass.ISO_12_9,
                                                        1,
                                                        1,
                                                        a,
                                                        0)
                                                .preload()),
                of("BOLTAREA", "Stress area of a metric thread, mm².", Measure.NUMBER)
                        .length("diameter", POSITIVE, "nominal diameter")
                        .length("pitch", POSITIVE, "pitch")
                        .formula(
                                "PI()/4*(diameter*unit_mm-"
                                        + BoltThread.ISO_PITCHES
                                        + "*pitch*unit_mm)^2")
                        .only("diameter>" + BoltThread.ISO_PITCHES + "*pitch")
                        .source("ISO 898-1")
                        .example("M10 × 1.5: 58.0 in ISO 898-1, table 4", 1, 10, 1.5, "mm", 58.0)
                        .number(
                                a ->
                                        BoltThread.metric(a.number("diameter"), a.number("pitch"))
                                                .stressArea()),
                of("PROOFLOAD", "Tension that leaves no set in a metric bolt.", Measure.FORCE)
                        .length("diameter", POSITIVE, "nominal diameter")
                        .length("pitch", POSITIVE, "pitch")
                        .text("strengthclass", "8.8, 10.9 or 12.9 as text")
                        .source("ISO 898-1")
                        .example(
                                "M10 10.9: 830 · 57.990 = 48 131; ISO 898-1, table 5 rounds to 48 100",
                                0,
                                10,
                                1.5,
                                "10.9",
                                "mm",
                                48131)
                        .number(a -> bolts(thread(a), boltClass(a), 1, 1, 0, 0.2, 0).proofLoad()),
                of(
                                "FLANGETORQUE",
                                "Torque that a bolted flange passes on by friction; #NUM! when"
                                        + " bolts are tightened beyond 3/4 of proof load.",
                                Measure.TORQUE)
                        .number("count", Measure.NUMBER, COUNT, "number of bolts")
                        .length("circle", POSITIVE, "diameter of the bolt circle")
                        .length("diameter", POSITIVE, "nominal diameter of a bolt")
                        .length("pitch", POSITIVE, "pitch")
                        .text("strengthclass", "8.8, 10.9 or 12.9 as text")
                        .number("torque", Measure.TORQUE, NOT_NEGATIVE, "tightening torque of each")
                        .number(
                                "nutfactor",
                                Measure.NUMBER,
                                Allowed.within(0.05, 0.5),
                                0.2,
                                "nut factor K, 0.2 dry, 0.15 oiled")
                        .number(
                                "friction",
                                Measure.NUMBER,
                                Allowed.within(0, 1),
                                0.15,
                                "between the flange faces")
                        .source(BOLTS)
                        .example(
                                "6 · 25 000 · 0.15 · 43 mm",
                                6,
                                6,
                                86,
                                10,
                                1.5,
                                "10.9",
                                50,
                                0.2,
                                0.15,
                                "mm",
                                967.5)
                        .number(
                                a -> {
                                    FlangeBolts bolts =
                                            bolts(
                                                    thread(a),
                                                    boltClass(a),
                                                    a.whole("count"),
                                                    a.number("circle"),
                                                    a.number("torque"),
                                                    a.number("nutfactor"),
                                                    a.number("friction"));
                                    if (bolts.tooTight()) {
                                        throw Arguments.wrong(
                                                "bolts are tightened beyond 3/4 of proof load");
                                    }
                                    return bolts.frictionCapacity();
                                }),
                of(
                                "JOINTFACTOR",
                                "Part of a straight ball joint's capacity that is left at an"
                                        + " angle.",
                                Measure.NUMBER)
                        .jointAngle("angle", "joint angle")
                        .formula("(1-SIN(RADIANS(angle)))*COS(RADIANS(angle))^2")
                        .source(LIFE)
                        .example("(1 − 1/2) · 3/4", 6, 30, 0.375)
                        .number(a -> JointLife.angleFactor(a.number("angle"))),
                of(
                                "JOINTLIFE",
                                "Life of a ball joint under steady torque, an index to compare by.",
                                Measure.HOURS)
                        .number(
                                "capacity",
                                Measure.TORQUE,
                                POSITIVE,
                                "dynamic capacity of the straight joint")
                        .number("torque", Measure.TORQUE, POSITIVE, "torque that it runs with")
                        .jointAngle("angle", "joint angle")
                        .number("rpm", Measure.SHAFT_SPEED, POSITIVE, "shaft speed")
                        .formula(
                                "IF(rpm<="
                                        + JointLife.SLOW_TO
                                        + ","
                                        + JointLife.SLOW_CONSTANT
                                        + "/rpm^"
                                        + JointLife.SLOW_EXPONENT
                                        + ","
                                        + JointLife.FAST_CONSTANT
                                        + "/rpm)*((1-SIN(RADIANS(angle)))*COS(RADIANS(angle))^2*capacity/torque)^3")
                        .source(LIFE)
                        .example(
                                "470 756/2000, straight, at capacity",
                                3,
                                500,
                                500,
                                0,
                                2000,
                                235.378)
                        .number(
                                a ->
                                        JointLife.hours(
                                                a.number("capacity"),
                                                a.number("torque"),
                                                a.number("angle"),
                                                a.number("rpm"))),
                of(
                                "ENGINETORQUE",
                                "Torque that an engine or a slipping clutch makes at one half"
                                        + " shaft.",
                                Measure.TORQUE)
                        .number(
                                "torque",
                                Measure.TORQUE,
                                POSITIVE,
                                "of the engine, or at which the clutch slips")
                        .number(
                                "ratio",
                                Measure.NUMBER,
                                POSITIVE,
                                "engine turns over shaft turns, all stages")
                        .number(
                                "efficiency",
                                Measure.NUMBER,
                                new Allowed(0, 1, true),
                                0.95,
                                "of the gears")
                        .number(
                                "share",
                                Measure.NUMBER,
                                Allowed.within(0.5, 1),
                                0.5,
                                "of one shaft: 0.5 open, 1 locked")
                        .formula("torque*ratio*efficiency*share")
                        .source("power passed on by gears")
                        .example("200 · 12 · 0.9 · 0.5", 6, 200, 12, 0.9, 0.5, 1080)
                        .number(
                                a ->
                                        new Gears(
                                                        a.number("ratio"),
                                                        a.number("efficiency"),
                                                        new Differential(a.number("share")))
                                                .shaftTorque(a.number("torque"))),
                of(
                                "SLIPSHARE",
                                "Share of one half shaft behind a limited slip differential.",
                                Measure.NUMBER)
                        .number(
                                "bias",
                                Measure.NUMBER,
                                Allowed.within(1, 1000),
                                "torque bias ratio")
                        .formula("bias/(1+bias)")
                        .source("b/(1 + b), plain statics")
                        .example("3/4", 9, 3, 0.75)
                        .number(a -> Differential.limitedSlip(a.number("bias")).share()),
                of("GRIPTORQUE", "Torque that a tyre can pass to the ground.", Measure.TORQUE)
                        .number(
                                "friction",
                                Measure.NUMBER,
                                new Allowed(0, 5, true),
                                "between tyre and ground")
                        .number("load", Measure.FORCE, POSITIVE, "load on the wheel")
                        .length("radius", POSITIVE, "wheel centre to ground")
                        .formula("friction*load*radius*unit_mm/1000")
                        .source("friction law")
                        .example("0.8 · 4000 · 0.35", 6, 0.8, 4000, 350, "mm", 1120)
                        .number(
                                a ->
                                        new TyreGrip(
                                                        a.number("friction"),
                                                        a.number("load"),
                                                        a.number("radius"))
                                                .torque()));
    }

    private static Declaration of(String name, String meaning, Measure result) {
        return new Declaration(Topic.STRENGTH, name, meaning, result);
    }

    private static Declaration spline(String name, String meaning) {
        return of(name, meaning, Measure.STRESS)
                .number("torque", Measure.TORQUE, NOT_NEGATIVE, "torque")
                .number("teeth", Measure.NUMBER, TEETH, "spline count")
                .length("outside", POSITIVE, "outside diameter");
    }

    private static Bar bar(
            Arguments a, double yield, double elastic, double shear, double density) {
        Material material = new Material("material", yield, elastic, shear, density);
        return new Bar(a.number("diameter"), a.number("bore"), material);
    }

    private static Spline spline(Arguments a, double length) {
        return Spline.ofOutside(a.whole("teeth"), a.number("outside"), length);
    }

    private static BoltThread thread(Arguments a) {
        return BoltThread.metric(a.number("diameter"), a.number("pitch"));
    }

    private static BoltClass boltClass(Arguments a) {
        return switch (a.text("strengthclass").trim().toLowerCase(Locale.ROOT)) {
            case "8.8" -> BoltClass.ISO_8_8;
            case "10.9" -> BoltClass.ISO_10_9;
            case "12.9" -> BoltClass.ISO_12_9;
            default -> throw Arguments.wrong("strength classes are 8.8, 10.9 and 12.9");
        };
    }

    private static FlangeBolts bolts(
            BoltThread thread,
            BoltClass boltClass,
            int count,
            double circle,
            Arguments a,
            double friction) {
        return bolts(
                thread,
                boltClass,
                count,
                circle,
                a.number("torque"),
                a.number("nutfactor"),
                friction);
    }

    private static FlangeBolts bolts(
            BoltThread thread,
            BoltClass boltClass,
            int count,
            double circle,
            double torque,
            double nutFactor,
            double friction) {
        return new FlangeBolts(thread, boltClass, count, circle, torque, nutFactor, friction);
    }
}
