package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import shaftwright.build.Build;
import shaftwright.build.DrivenFlanges;
import shaftwright.build.GroundClearance;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Vehicle;
import shaftwright.build.Wheel;
import shaftwright.build.WheelTravel;
import shaftwright.shaft.Binding;
import shaftwright.study.ListedFinding.On;
import shaftwright.study.ShaftFacts.BlankFacts;
import shaftwright.study.WindowFacts.Lower;
import shaftwright.study.WindowFacts.Upper;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.SuspectReading;
import shaftwright.units.LengthUnit;

class VerdictTest {
    private static final Set<Finding> SILENT =
            EnumSet.of(Finding.INCOMPLETE, Finding.TWO_HEIGHTS, Finding.BEYOND_PATH);

    /** Found on a shaft, which there is none of while nothing can be judged. */
    private static final Set<Finding> OF_THE_SHAFT =
            EnumSet.of(
                    Finding.STATES_OUT_OF_DATE,
                    Finding.NO_WINDOW,
                    Finding.INNER_ANGLE,
                    Finding.OUTER_ANGLE,
                    Finding.TOUCHES_CUP,
                    Finding.MOCK_UP_CONTRADICTS,
                    Finding.BLANK_UNMATED,
                    Finding.INNER_FLANGE_UNMATED,
                    Finding.OUTER_FLANGE_UNMATED);

    /** Each found on a length inside the window only. */
    private static final Set<Finding> OF_A_LENGTH =
            EnumSet.of(
                    Finding.BLANK_UNMATED,
                    Finding.NO_INCREMENT,
                    Finding.NO_BLANK,
                    Finding.THIN_LAND,
                    Finding.GROOVES_MEET,
                    Finding.CUTS_CASE);

    private static final Set<Finding> OF_GROOVES =
            EnumSet.of(Finding.THIN_LAND, Finding.GROOVES_MEET, Finding.CUTS_CASE);

    private static Verdict of(Finding finding) {
        return Verdict.of(HandMadeSide.spoilt(HandMadeSide.healthy(), finding));
    }

    @Test
    void nothingIsFoundOnAHealthySide() {
        Verdict verdict = Verdict.of(HandMadeSide.healthy());

        assertThat(verdict.findings()).isEmpty();
        assertThat(verdict.severity()).isEqualTo(Severity.FITS);
        assertThat(verdict.card()).isEqualTo(CardPrint.ALL);
        assertThat(verdict.holds()).isTrue();
        assertThat(verdict.text(LengthUnit.INCH))
                .isEqualTo(
                        "Fits: E 25.31 in, 1.13 in left before bottoming at 5.00 in bump, 0.55 in"
                                + " before pull-out at 4.75 in droop.");
        assertThat(verdict.text(LengthUnit.MILLIMETRE))
                .isEqualTo(
                        "Fits: E 642.9 mm, 28.7 mm left before bottoming at 127.0 mm bump, 13.9 mm"
                                + " before pull-out at 120.7 mm droop.");
    }

    @ParameterizedTest
    @EnumSource(Finding.class)
    void eachFindingStandsAloneOnASideSpoiltForIt(Finding finding) {
        assertThat(of(finding).findings()).containsExactly(finding);
    }

    /** The table is the trade's: rank, severity, what the card may print. */
    @ParameterizedTest
    @CsvFileSource(resources = "findings.csv", delimiter = ';', numLinesToSkip = 2)
    void eachFindingWeighsWhatTheTradesTableSays(
            Finding finding, int rank, Severity severity, CardPrint card) {
        assertThat(finding.rank()).isEqualTo(rank);
        assertThat(of(finding).severity()).isEqualTo(severity);
        assertThat(of(finding).card()).isEqualTo(card);
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "sentences.csv",
            delimiter = '|',
            quoteCharacter = '\0',
            numLinesToSkip = 1)
    void eachFindingReadsInFullInBothUnits(Finding finding, String inches, String millimetres) {
        assertThat(of(finding).text(LengthUnit.INCH)).isEqualTo(inches);
        assertThat(of(finding).text(LengthUnit.MILLIMETRE)).isEqualTo(millimetres);
    }

    @Test
    void whereNoBlankWasTypedItIsSaidSo() {
        SideFacts healthy = HandMadeSide.healthy();
        ShaftFacts shaft = healthy.shaft().orElseThrow();
        Verdict verdict = Verdict.of(healthy.with(shaft.with(BlankFacts.NONE_LISTED)));

        assertThat(verdict.text(LengthUnit.INCH))
                .isEqualTo(
                        "Fits, but no blank with its lengths is typed on Parts to give 25.31 in end"
                                + " to end: type one there.");
    }

    static List<List<Finding>> pairs() {
        List<List<Finding>> pairs = new ArrayList<>();
        for (Finding first : Finding.values()) {
            for (Finding second : Finding.values()) {
                if (first.compareTo(second) < 0 && canMeet(first, second)) {
                    pairs.add(List.of(first, second));
                }
            }
        }
        return pairs;
    }

    private static boolean canMeet(Finding first, Finding second) {
        if (SILENT.contains(first)) {
            // What is missing leaves nothing to be said of heights and travel.
            return first == Finding.INCOMPLETE
                    ? second.severity() == Severity.MEASURE_AGAIN && !OF_THE_SHAFT.contains(second)
                    : !OF_THE_SHAFT.contains(second) && second.severity() != Severity.FITS_BUT;
        }
        boolean length = OF_A_LENGTH.contains(second);
        boolean grooves =
                (OF_GROOVES.contains(first) || first == Finding.BLANK_UNMATED)
                        && second == Finding.NO_BLANK;
        boolean readings =
                first == Finding.SUSPECT_READINGS && second == Finding.READINGS_CONTRADICT;
        return !(first == Finding.NO_WINDOW && length) && !grooves && !readings;
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void ofTwoFindingsTheLowerRankLeads(List<Finding> pair) {
        SideFacts side = HandMadeSide.healthy();
        SideFacts both = HandMadeSide.spoilt(HandMadeSide.spoilt(side, pair.get(1)), pair.get(0));

        Verdict verdict = Verdict.of(both);

        assertThat(verdict.findings()).containsExactlyElementsOf(pair);
        assertThat(pair.get(0).rank()).isLessThanOrEqualTo(pair.get(1).rank());
        assertThat(verdict.leading()).contains(pair.get(0));
        assertThat(verdict.severity()).isEqualTo(pair.get(0).severity());
        assertThat(verdict.card()).isEqualTo(pair.get(0).card().and(pair.get(1).card()));
    }

    @Test
    void severalFindingsReadAsOneText() {
        SideFacts side = HandMadeSide.healthy();
        for (Finding finding :
                List.of(Finding.NO_WINDOW, Finding.INNER_BOLTS_TOO_TIGHT, Finding.CHECKS_OPEN)) {
            side = HandMadeSide.spoilt(side, finding);
        }

        assertThat(Verdict.of(side).text(LengthUnit.INCH))
                .isEqualTo(
                        "Does not fit: no length works, short by 0.19 in with margins kept: a shaft"
                                + " that does not pull out at 4.75 in droop bottoms at 5.00 in"
                                + " bump. See Levers. The inner joint's flange bolts are tightened to 0.76 of their proof"
                                + " load, more than 0.75: tighten them with at most 44 lb·ft. 3 of"
                                + " 5 checks before measuring are not ticked, so lengths may move:"
                                + " see Guide.");
    }

    @Test
    void windowSaysWhichLimitsBind() {
        ShaftFacts shaft = HandMadeSide.shaft();
        SideFacts side =
                HandMadeSide.healthy()
                        .with(
                                shaft.with(
                                        HandMadeSide.window(
                                                615.1,
                                                600,
                                                Lower.PASSES_OUTER_SOFT_STOP,
                                                Upper.INNER_END_BOTTOMS)));

        assertThat(Verdict.of(side).text(LengthUnit.MILLIMETRE))
                .startsWith(
                        "Does not fit: no length works, short by 15.1 mm with margins kept: a shaft"
                                + " that keeps the outer joint's soft stop at 120.7 mm droop"
                                + " bottoms with its inner end in the cup at 127.0 mm bump.");
    }

    @Test
    void nothingIsEverShortByNought() {
        SideFacts side =
                HandMadeSide.healthy()
                        .with(HandMadeSide.shaft().with(HandMadeSide.window(600.04, 600)));

        assertThat(Verdict.of(side).text(LengthUnit.MILLIMETRE))
                .contains("short by less than 0.1 mm with");
        assertThat(Verdict.of(side).text(LengthUnit.INCH))
                .contains("short by less than 0.01 in with");
    }

    @Test
    void windowOfNoWidthStillFits() {
        SideFacts side =
                HandMadeSide.healthy()
                        .with(HandMadeSide.shaft().with(HandMadeSide.window(600, 600)));

        assertThat(Verdict.of(side).findings()).isEmpty();
    }

    @Test
    void finerIncrementIsNarrowerThanTheWindow() {
        WindowFacts window =
                HandMadeSide.spoilt(HandMadeSide.healthy(), Finding.NO_INCREMENT)
                        .shaft()
                        .orElseThrow()
                        .window();

        // 1/16 in halved twice; halved once it is wider than 0.6 mm.
        assertThat(window.finerIncrement()).isEqualTo(1.5875 / 4);
        assertThat(window.finerIncrement()).isLessThan(window.width());
    }

    @Test
    void allSuspectReadingsAreNamed() {
        SideFacts side = HandMadeSide.healthy();
        PathFacts path =
                side.path()
                        .contradicting(
                                HandMadeSide.suspect(
                                        new SuspectReading(
                                                3, MeasuredQuantity.DISTANCE, 2, 673.1, 663.575),
                                        new SuspectReading(
                                                7,
                                                MeasuredQuantity.CAMBER,
                                                0,
                                                0.1,
                                                Math.toRadians(-1.5))));

        assertThat(Verdict.of(side.with(path)).text(LengthUnit.INCH))
                .isEqualTo(
                        "Measure again before cutting: the readings contradict each other. Measure"
                                + " again: row 3, second distance (about 26 1/8 in expected), and row 7, camber (about -1.5° expected).");
    }

    @Test
    void sideWithoutShaftMustLackSomething() {
        SideFacts side = SideFacts.of(PathFacts.SOUND, Optional.empty());

        assertThatThrownBy(() -> Verdict.of(side)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void graverSideLeadsAndTheOthersAreCounted() {
        SideFacts healthy = HandMadeSide.healthy();
        SideFacts left = HandMadeSide.spoilt(healthy, Finding.TOO_WIDE);
        SideFacts right =
                HandMadeSide.spoilt(
                        HandMadeSide.spoilt(healthy, Finding.TOO_WIDE), Finding.OUTER_ANGLE);
        ScenarioVerdict verdict = new ScenarioVerdict(Verdict.of(left), Verdict.of(right));

        assertThat(verdict.severity()).isEqualTo(Severity.DOES_NOT_FIT);
        assertThat(verdict.holds()).isFalse();
        assertThat(verdict.text(LengthUnit.MILLIMETRE))
                .isEqualTo(
                        "Right: Does not fit: the outer joint reaches 22.0° at 120.7 mm droop, less"
                                + " than 0.1° over its limit of 22.0°. Ask for less travel, or"
                                + " choose a joint for steeper angles. 1 more finding: see"
                                + " the sides' verdicts on Scenarios.");
    }

    @Test
    void listTellsSidesApartAndSaysOnceWhatBothHave() {
        SideFacts wide = HandMadeSide.spoilt(HandMadeSide.healthy(), Finding.TOO_WIDE);
        SideFacts right =
                HandMadeSide.spoilt(
                        HandMadeSide.spoilt(wide, Finding.OUTER_ANGLE),
                        Finding.OUTER_BOLTS_TOO_TIGHT);
        ScenarioVerdict verdict = new ScenarioVerdict(Verdict.of(wide), Verdict.of(right));

        assertThat(verdict.heading(LengthUnit.INCH)).isEqualTo("Does not fit:");
        assertThat(verdict.listed(LengthUnit.INCH))
                .extracting(ListedFinding::finding, ListedFinding::on)
                .containsExactly(
                        tuple(Finding.OUTER_ANGLE, On.RIGHT),
                        tuple(Finding.OUTER_BOLTS_TOO_TIGHT, On.RIGHT),
                        tuple(Finding.TOO_WIDE, On.BOTH));
        assertThat(verdict.listed(LengthUnit.INCH).get(2).line())
                .isEqualTo("Both sides: " + Verdict.of(wide).sentences(LengthUnit.INCH));
    }

    @Test
    void listHasEachSidesOwnFigures() {
        Verdict left = of(Finding.OUTER_ANGLE);
        SideFacts steeper =
                HandMadeSide.healthy()
                        .with(
                                new ShaftFacts(
                                        HandMadeSide.window(600, 630),
                                        HandMadeSide.joint(17, 5),
                                        HandMadeSide.joint(23.5, 6),
                                        Optional.empty(),
                                        HandMadeSide.shaft().blank(),
                                        642.9,
                                        new Binding(28.7, 24, 127),
                                        new Binding(13.9, 0, -120.65),
                                        MatingFacts.SOUND));
        ScenarioVerdict verdict = new ScenarioVerdict(left, Verdict.of(steeper));

        assertThat(verdict.listed(LengthUnit.MILLIMETRE))
                .extracting(ListedFinding::line)
                .satisfiesExactly(
                        line -> assertThat(line).startsWith("Left: The outer joint reaches 22.0°"),
                        line ->
                                assertThat(line)
                                        .startsWith("Right: The outer joint reaches 23.5°"));
    }

    @Test
    void shaftsThatFitKeepTheirLengthsAboveTheList() {
        Verdict wide = of(Finding.TOO_WIDE);

        assertThat(new ScenarioVerdict(wide, wide).heading(LengthUnit.INCH))
                .isEqualTo("Fits with left E 25.31 in, right E 25.31 in, but:");
        assertThat(wide.heading(LengthUnit.INCH)).isEqualTo("Fits, but:");
    }

    @ParameterizedTest
    @EnumSource(Finding.class)
    void noLengthStandsAboveTheListOfWhatTheCardKeepsBack(Finding finding) {
        Verdict verdict = of(finding);
        String heading = new ScenarioVerdict(verdict, verdict).heading(LengthUnit.INCH);

        assertThat(heading.contains(" in,")).isEqualTo(verdict.card().allows(CardPrint.LENGTHS));
        assertThat(verdict.heading(LengthUnit.INCH).contains("CUT"))
                .isEqualTo(!verdict.card().allows(CardPrint.ALL_WITH_NOTE));
    }

    @Test
    void healthyScenarioHasNoListAndReadsAsItFits() {
        Verdict fits = Verdict.of(HandMadeSide.healthy());
        ScenarioVerdict verdict = new ScenarioVerdict(fits, fits);

        assertThat(verdict.listed(LengthUnit.INCH)).isEmpty();
        assertThat(verdict.heading(LengthUnit.INCH)).isEqualTo(fits.text(LengthUnit.INCH));
    }

    @Test
    void sidesThatFailAlikeAreNotToldAsOne() {
        SideFacts left =
                HandMadeSide.healthy()
                        .with(HandMadeSide.shaft().with(HandMadeSide.window(620, 600)));
        SideFacts right =
                HandMadeSide.healthy()
                        .with(HandMadeSide.shaft().with(HandMadeSide.window(625, 600)));

        assertThat(
                        new ScenarioVerdict(Verdict.of(left), Verdict.of(right))
                                .text(LengthUnit.MILLIMETRE))
                .startsWith(
                        "Both sides, figures of the left: Does not fit: no length works, short by"
                                + " 20.0 mm");
    }

    @ParameterizedTest
    @CsvSource({"0.7262, 1.2, 0.73", "0.998, 1, 0.99", "1.197, 1.2, 1.19", "1.194, 1.2, 1.19"})
    void tooWeakFactorReadsAsInTablesButNeverAsTheOneWanted(
            double factor, double wanted, String shown) {
        StrengthFacts weak =
                new StrengthFacts(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new StrengthFacts.Weakest("bar", factor)),
                        wanted);

        assertThat(Verdict.of(HandMadeSide.healthy().with(weak)).text(LengthUnit.INCH))
                .contains("has a safety factor of " + shown + ", below");
        assertThat(Wording.factor(0.998)).isEqualTo("0.99");
        assertThat(Wording.factor(factor)).isEqualTo(factor == 1.197 ? "1.20" : shown);
    }

    @Test
    void whatHoldsOnBothSidesNamesNone() {
        Verdict wide = of(Finding.TOO_WIDE);

        assertThat(new ScenarioVerdict(wide, wide).text(LengthUnit.INCH))
                .isEqualTo(wide.text(LengthUnit.INCH));
    }

    @Test
    void sidesThatFitDifferentlyGiveBothLengths() {
        SideFacts side = HandMadeSide.healthy();
        ShaftFacts shaft = HandMadeSide.shaft();
        ShaftFacts longer =
                new ShaftFacts(
                        shaft.window(),
                        shaft.inner(),
                        shaft.outer(),
                        shaft.mouth(),
                        shaft.blank(),
                        644.5,
                        new Binding(29.8, 24, 127),
                        new Binding(13.6, 0, -120.65),
                        MatingFacts.SOUND);
        ScenarioVerdict verdict =
                new ScenarioVerdict(Verdict.of(side), Verdict.of(side.with(longer)));

        assertThat(verdict.text(LengthUnit.INCH))
                .isEqualTo(
                        "Fits: left E 25.31 in, right E 25.37 in; least 1.13 in before bottoming,"
                                + " 0.54 in before pull-out.");
    }

    @Test
    void lengthAtAStepOfAnInchIsSaidAsAFraction() {
        SideFacts side = HandMadeSide.healthy();
        ShaftFacts shaft = HandMadeSide.shaft();
        WindowFacts plain = shaft.window();
        WindowFacts sixteenths =
                new WindowFacts(
                        plain.shortest(),
                        plain.lower(),
                        plain.longest(),
                        plain.upper(),
                        25.4 / 16,
                        true);
        ShaftFacts cut =
                new ShaftFacts(
                        sixteenths,
                        shaft.inner(),
                        shaft.outer(),
                        shaft.mouth(),
                        shaft.blank(),
                        25.375 * 25.4,
                        shaft.slackIn(),
                        shaft.slackOut(),
                        MatingFacts.SOUND);
        Verdict verdict = Verdict.of(side.with(cut));

        assertThat(verdict.text(LengthUnit.INCH)).startsWith("Fits: E 25 3/8 in, 1.13 in left");
        assertThat(verdict.text(LengthUnit.MILLIMETRE)).startsWith("Fits: E 644.5 mm, ");
    }

    @Test
    void checksLeftOpenBeforeMeasuringAreFoundOnWhatRestsOnReadings() {
        Readings tape =
                LinkageBuild.read(0)
                        .withOpen(EnumSet.of(MeasuringCheck.SPRINGS, MeasuringCheck.STRAIGHT));
        Build taped = Build.of(Vehicle.PLAIN, tape, LinkageBuild.stock());
        Build linked = LinkageBuild.of(tape);

        assertThat(verdict(taped, Wheel.UNKNOWN).listed(LengthUnit.MILLIMETRE))
                .extracting(ListedFinding::finding, ListedFinding::line)
                .containsExactly(
                        tuple(
                                Finding.CHECKS_OPEN,
                                "Both sides: 2 of 5 checks before measuring are not ticked, so"
                                        + " lengths may move: see Guide."));
        assertThat(verdict(linked, Wheel.UNKNOWN).findings()).isEmpty();
    }

    /** Hub faces 200 + 650 + 30 mm from the centre plane, tyres 200 mm wide: 1960 in all. */
    @Test
    void overallWidthBeyondTheLimitIsFoundOnBothSides() {
        Wheel wheel = new Wheel(OptionalDouble.empty(), OptionalDouble.of(200), 0, 0);

        assertThat(verdict(limitedTo(1950), wheel).listed(LengthUnit.MILLIMETRE))
                .extracting(ListedFinding::finding, ListedFinding::line)
                .containsExactly(
                        tuple(
                                Finding.TOO_WIDE,
                                "Both sides: The overall width is 10.0 mm over the limit of"
                                        + " 1950.0 mm: take less wheel spacer, more offset or"
                                        + " narrower tyres."));
        assertThat(verdict(limitedTo(1961), wheel).findings()).isEmpty();
        assertThat(verdict(limitedTo(1950), Wheel.UNKNOWN).findings()).isEmpty();
    }

    private static Build limitedTo(double width) {
        Vehicle vehicle =
                new Vehicle(
                        Vehicle.PLAIN.flange(),
                        OptionalDouble.of(30),
                        GroundClearance.UNKNOWN,
                        OptionalDouble.of(width),
                        Optional.empty(),
                        DrivenFlanges.UNKNOWN);
        return Build.of(vehicle, LinkageBuild.read(0), LinkageBuild.stock());
    }

    private static ScenarioVerdict verdict(Build build, Wheel wheel) {
        Scenario scenario =
                LinkageBuild.scenario("A").travel(WheelTravel.of(80, 80)).wheel(wheel).build();
        return Study.of(build.withScenario(scenario)).scenario("A").verdict();
    }
}
