package shaftwright.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import shaftwright.build.MeasuringCheck;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.BoltPattern.Part;
import shaftwright.joint.SplineClash;
import shaftwright.joint.SplineForm;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.StickReading;
import shaftwright.mockup.WindowEnd;
import shaftwright.shaft.Binding;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.MouthGap;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.BootStrain.Kind;
import shaftwright.study.PathFacts.Beyond;
import shaftwright.study.PathFacts.Unread;
import shaftwright.study.PathFacts.Way;
import shaftwright.study.ShaftFacts.BlankFacts;
import shaftwright.study.ShaftFacts.Land;
import shaftwright.study.ShaftFacts.MetGrooves;
import shaftwright.study.StrengthFacts.Bolts;
import shaftwright.study.StrengthFacts.Weakest;
import shaftwright.study.TravelFacts.Clearance;
import shaftwright.study.TravelFacts.EarlyEnd;
import shaftwright.study.WindowFacts.Lower;
import shaftwright.study.WindowFacts.Upper;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.suspension.SuspectReading;
import shaftwright.travel.TravelStop;

/** A side made by hand on which all is well, and what spoils it for each finding. */
final class HandMadeSide {
    private static final Set<MeasuringCheck> THREE_CHECKS =
            EnumSet.of(MeasuringCheck.ALIGNMENT, MeasuringCheck.LEVEL, MeasuringCheck.MOUNTS);

    private HandMadeSide() {}

    /** E 642.9 mm in a window of 30 mm, angles well inside, everything known and good. */
    static SideFacts healthy() {
        return new SideFacts(
                PathFacts.SOUND,
                Optional.of(shaft()),
                new StrengthFacts(
                        Optional.of(new Bolts(0.7, 0.75, 60)),
                        Optional.of(new Bolts(0.7, 0.75, 60)),
                        Optional.of(new Weakest("shaft bar, left", 1.4)),
                        1.2),
                new TravelFacts(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Binding(80, 24, 127)),
                        Optional.of(new Binding(20, 24, 127))),
                Optional.of(new SideFacts.Width(2030, 2100)),
                Optional.empty());
    }

    /** It bottoms 9 mm sooner than expected at 40 mm of bump, where 1.2 mm would say nothing. */
    private static MockUpFacts mockUp() {
        StickReading reading =
                StickReading.sliding(0, 40, OptionalDouble.of(591), OptionalDouble.empty());
        return new MockUpFacts(
                Optional.empty(),
                Optional.of(new StickComparison(WindowEnd.IN, reading, 600, -9, 0, 1.2)),
                false,
                Suspicion.PLACES);
    }

    static ShaftFacts shaft() {
        return new ShaftFacts(
                window(600, 630),
                joint(17, 5),
                joint(15, 6),
                Optional.of(new MouthGap(new Binding(2.5, 0, -120), ShaftEnd.INNER)),
                BlankFacts.SERVES,
                642.9,
                new Binding(28.7, 24, 127),
                new Binding(13.9, 0, -120.65),
                MatingFacts.SOUND);
    }

    static WindowFacts window(double shortest, double longest) {
        return new WindowFacts(
                new Binding(shortest, 0, -120.65),
                Lower.PULLS_OUT,
                new Binding(longest, 24, 127),
                Upper.RACES_BOTTOM,
                1,
                true);
    }

    static WindowFacts window(double shortest, double longest, Lower lower, Upper upper) {
        WindowFacts plain = window(shortest, longest);
        return new WindowFacts(
                plain.shortest(),
                lower,
                plain.longest(),
                upper,
                plain.increment(),
                plain.incrementFits());
    }

    static JointFacts joint(double steepest, double ride) {
        return new JointFacts(
                new Binding(Math.toRadians(steepest), 0, -120.65),
                Math.toRadians(22),
                Math.toRadians(ride),
                Math.toRadians(14),
                Double.POSITIVE_INFINITY);
    }

    private static JointFacts reaching(JointFacts joint, double degrees) {
        return new JointFacts(
                new Binding(Math.toRadians(degrees), 0, -120.65),
                joint.limit(),
                joint.atRide(),
                joint.running(),
                joint.benchEnd());
    }

    private static JointFacts running(JointFacts joint, double degrees) {
        return new JointFacts(
                joint.steepest(),
                joint.limit(),
                Math.toRadians(degrees),
                joint.running(),
                joint.benchEnd());
    }

    private static JointFacts benched(JointFacts joint, double degrees) {
        return new JointFacts(
                joint.steepest(),
                joint.limit(),
                joint.atRide(),
                joint.running(),
                Math.toRadians(degrees));
    }

    static ReadingContradiction suspect(SuspectReading... readings) {
        return new ReadingContradiction(List.of(readings), List.of(), 498.475);
    }

    private static WindowFacts noIncrement() {
        WindowFacts narrow = window(600.1, 600.7);
        return new WindowFacts(
                narrow.shortest(), narrow.lower(), narrow.longest(), narrow.upper(), 1.5875, false);
    }

    private static MatingFacts.UnmatedBlank unmatedBlank() {
        return new MatingFacts.UnmatedBlank(
                "blank 3",
                ShaftEnd.OUTER,
                new SplineClash(SplineForm.Property.PRESSURE_ANGLE, teeth(45), teeth(30)));
    }

    private static SplineForm teeth(double degrees) {
        return new SplineForm(
                "", OptionalDouble.empty(), OptionalDouble.of(Math.toRadians(degrees)), "", "");
    }

    private static MatingFacts.UnmatedFlange unmated(Part part) {
        return new MatingFacts.UnmatedFlange(part, bolts(108, 6), bolts(94, 4));
    }

    private static BoltPattern bolts(double circle, int count) {
        return new BoltPattern(
                OptionalDouble.of(circle),
                OptionalInt.of(count),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static BootStrain strain(Kind kind, double by) {
        return new BootStrain(kind, new Binding(by, 0, -120.65));
    }

    /** The side with what the finding says, and nothing else, changed. */
    static SideFacts spoilt(SideFacts side, Finding finding) {
        PathFacts path = side.path();
        ShaftFacts shaft = side.shaft().orElseThrow();
        StrengthFacts strength = side.strength();
        TravelFacts travel = side.travel();
        return switch (finding) {
            case INCOMPLETE -> side.with(path.lacking("choose an inner joint"));
            case TWO_HEIGHTS -> side.with(path.ofTwoHeights());
            case BEYOND_PATH -> side.with(path.beyond(new Beyond(Way.BUMP, 152.4, 127)));
            case STATES_OUT_OF_DATE -> side.with(path.outOfDate());
            case NO_WINDOW -> side.with(shaft.with(window(604.83, 600)));
            case INNER_ANGLE -> side.with(shaft.withInner(reaching(shaft.inner(), 23.5)));
            case OUTER_ANGLE -> side.with(shaft.withOuter(reaching(shaft.outer(), 22.02)));
            case TOUCHES_CUP ->
                    side.with(
                            shaft.with(
                                    new MouthGap(new Binding(-1.27, 0, -120.65), ShaftEnd.OUTER)));
            case SUSPECT_READINGS ->
                    side.with(
                            path.contradicting(
                                    suspect(
                                            new SuspectReading(
                                                    3,
                                                    MeasuredQuantity.DISTANCE,
                                                    0,
                                                    673.1,
                                                    663.575))));
            case READINGS_CONTRADICT ->
                    side.with(
                            path.contradicting(
                                    new ReadingContradiction(
                                            List.of(),
                                            List.of(MeasuredQuantity.DISTANCE),
                                            498.475)));
            case MOCK_UP_CONTRADICTS -> side.with(mockUp());
            case BLANK_UNMATED -> side.with(shaft.with(shaft.mating().with(unmatedBlank())));
            case INNER_FLANGE_UNMATED ->
                    side.with(shaft.with(shaft.mating().withInner(unmated(Part.CIRCLE))));
            case OUTER_FLANGE_UNMATED ->
                    side.with(shaft.with(shaft.mating().withOuter(unmated(Part.COUNT))));
            case INNER_BOOT_STRAINED ->
                    side.with(shaft.with(shaft.mating().withInner(strain(Kind.TOO_SHORT, 5.08))));
            case OUTER_BOOT_STRAINED ->
                    side.with(
                            shaft.with(
                                    shaft.mating()
                                            .withOuter(
                                                    strain(
                                                            Kind.BENT_TOO_FAR,
                                                            Math.toRadians(2.5)))));
            case INNER_BOLTS_TOO_TIGHT ->
                    side.with(
                            new StrengthFacts(
                                    Optional.of(new Bolts(0.7512, 0.75, 60.9)),
                                    strength.outerBolts(),
                                    strength.weakest(),
                                    strength.factorWanted(),
                                    strength.returning()));
            case OUTER_BOLTS_TOO_TIGHT ->
                    side.with(
                            new StrengthFacts(
                                    strength.innerBolts(),
                                    Optional.of(new Bolts(0.92, 0.75, 60.9)),
                                    strength.weakest(),
                                    strength.factorWanted(),
                                    strength.returning()));
            case TOO_WEAK ->
                    side.with(
                            new StrengthFacts(
                                    strength.innerBolts(),
                                    strength.outerBolts(),
                                    Optional.of(new Weakest("shaft bar, left", 1.1999)),
                                    strength.factorWanted(),
                                    strength.returning()));
            case TOO_TIRED ->
                    side.with(
                            returning(
                                    strength,
                                    new ReturningFacts(
                                            strength.returning().inner(),
                                            strength.returning().outer(),
                                            Optional.of(
                                                    new Weakest(
                                                            "spline run-out, inner end, left",
                                                            1.4999)),
                                            OptionalDouble.of(1.5))));
            case INNER_RUNS_HOT ->
                    side.with(
                            returning(
                                    strength,
                                    new ReturningFacts(
                                            hot(shaft.inner().atRide()),
                                            strength.returning().outer(),
                                            strength.returning().mostTired(),
                                            strength.returning().factorWanted())));
            case OUTER_RUNS_HOT ->
                    side.with(
                            returning(
                                    strength,
                                    new ReturningFacts(
                                            strength.returning().inner(),
                                            hot(shaft.outer().atRide()),
                                            strength.returning().mostTired(),
                                            strength.returning().factorWanted())));
            case CUTS_CASE ->
                    side.with(
                            shaft.with(
                                    new BlankFacts(
                                            true,
                                            true,
                                            shaft.blank().thinLand(),
                                            shaft.blank().groovesMet(),
                                            true)));
            case BUMP_ENDS_EARLY ->
                    side.with(
                            new TravelFacts(
                                    Optional.of(new EarlyEnd(TravelStop.DAMPER_CLOSED, 101.6, 127)),
                                    travel.droop(),
                                    travel.ground(),
                                    travel.innerBoot(),
                                    travel.outerBoot()));
            case DROOP_ENDS_EARLY ->
                    side.with(
                            new TravelFacts(
                                    travel.bump(),
                                    Optional.of(new EarlyEnd(TravelStop.STRAP_TIGHT, 0, -120.65)),
                                    travel.ground(),
                                    travel.innerBoot(),
                                    travel.outerBoot()));
            case TOO_LOW ->
                    side.with(
                            new TravelFacts(
                                    travel.bump(),
                                    travel.droop(),
                                    Optional.of(new Clearance(120, 127)),
                                    travel.innerBoot(),
                                    travel.outerBoot()));
            case INNER_BOOT_TOUCHES ->
                    side.with(
                            new TravelFacts(
                                    travel.bump(),
                                    travel.droop(),
                                    travel.ground(),
                                    Optional.of(new Binding(-5.08, 24, 127)),
                                    travel.outerBoot()));
            case OUTER_BOOT_TOUCHES ->
                    side.with(
                            new TravelFacts(
                                    travel.bump(),
                                    travel.droop(),
                                    travel.ground(),
                                    travel.innerBoot(),
                                    Optional.of(new Binding(-0.001, 24, 127))));
            case INNER_BENCH_ENDS -> side.with(shaft.withInner(benched(shaft.inner(), 15)));
            case OUTER_BENCH_ENDS -> side.with(shaft.withOuter(benched(shaft.outer(), 10)));
            case THIN_LAND ->
                    side.with(
                            shaft.with(
                                    new BlankFacts(
                                            true,
                                            true,
                                            Optional.of(new Land(ShaftEnd.INNER, 4.5, 1.5)),
                                            shaft.blank().groovesMet(),
                                            shaft.blank().cutsCase())));
            case GROOVES_MEET ->
                    side.with(
                            shaft.with(
                                    new BlankFacts(
                                            true,
                                            true,
                                            shaft.blank().thinLand(),
                                            Optional.of(
                                                    new MetGrooves(
                                                            ShaftEnd.OUTER,
                                                            new GrooveWalls(8.25, 10.4),
                                                            new GrooveWalls(10, 12.15))),
                                            shaft.blank().cutsCase())));
            case NO_INCREMENT -> side.with(shaft.with(noIncrement()));
            case NO_BLANK -> side.with(shaft.with(BlankFacts.NONE));
            case TOO_WIDE -> side.with(new SideFacts.Width(2131.5, 2100));
            case INNER_RUNS_STEEP -> side.with(shaft.withInner(running(shaft.inner(), 14.5)));
            case OUTER_RUNS_STEEP -> side.with(shaft.withOuter(running(shaft.outer(), 14.01)));
            case CHECKS_OPEN -> side.with(path.open(THREE_CHECKS));
            case ANGLES_UNREAD -> side.with(path.without(Unread.CAMBER));
        };
    }

    private static StrengthFacts returning(StrengthFacts strength, ReturningFacts loads) {
        return new StrengthFacts(
                strength.innerBolts(),
                strength.outerBolts(),
                strength.weakest(),
                strength.factorWanted(),
                loads);
    }

    /** At 4000.2 rpm times degrees. */
    private static Optional<ReturningFacts.SpeedLimit> hot(double angle) {
        return Optional.of(new ReturningFacts.SpeedLimit(4000.2 / Math.toDegrees(angle), 4000));
    }
}
