package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.filling.TypedOver;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.study.Finding;
import shaftwright.study.Price;
import shaftwright.study.ShaftPart;

/** What a scenario column makes of its inputs: tyre, track, cost, sides and verdict. */
class ScenarioFiguresTest {
    private static final double INCH = 25.4;

    @TempDir static Path folder;

    private static TypedOver book;

    @BeforeAll
    static void writeOneBook() {
        book = TypedOver.of(DemoBook.write(folder.resolve("demo.xlsx")));
    }

    /** The demo with some cells typed over; keys such as {@code tyre_size[0]}. */
    private static Sizing sizing(Map<String, String> typed) {
        List<TypedColumn> columns = new ArrayList<>();
        typed.forEach(
                (cell, text) -> {
                    int bracket = cell.indexOf('[');
                    String name = bracket < 0 ? cell : cell.substring(0, bracket);
                    int place =
                            bracket < 0
                                    ? 0
                                    : Integer.parseInt(
                                            cell.substring(bracket + 1, cell.length() - 1));
                    columns.add(new TypedColumn(name, new TreeMap<>(Map.of(place, text)), false));
                });
        Filling.Report report = book.with(columns);
        assertThat(report.problems()).filteredOn(Problem::isError).isEmpty();
        return report.sizing().orElseThrow();
    }

    /** Common practice, no source: prices invented. */
    @Test
    void aSetOfTwoShaftsFourJointsAndFourBootKitsAddsUp() {
        Map<String, String> prices = new TreeMap<>();
        prices.put("shaft_pair_price[0]", "290");
        prices.put("joint_price[0]", "78");
        prices.put("boot_price[0]", "23");
        prices.put("other_cost[0]", "0");

        assertThat(sizing(prices).scenario(0).cost().total())
                .isEqualTo(Price.of(290 + 4 * 78 + 4 * 23));

        prices.put("shaft_pair_price[0]", "512");
        assertThat(sizing(prices).scenario(0).cost().total())
                .isEqualTo(Price.of(512 + 4 * 78 + 4 * 23));
    }

    @Test
    void boltsTightenedTooFarAreTheWeakestPart() {
        ScenarioOutcome a =
                sizing(Map.of("bolt_torque[0]", "95", "nut_factor[0]", "0.16")).scenario(0);

        assertThat(a.strength().weakest().orElseThrow().least().part())
                .isEqualTo("flange bolts, inner end");
        assertThat(a.strength().weakest().orElseThrow().factor()).isZero();
    }

    /** Root shear of a tube, {@code D⁴ - d⁴}: a fatigue factor of 0.4 has it govern. */
    @Test
    void aBoreTakesFromTheSplineInTheLongRun() {
        Map<String, String> solid = Map.of("spline_fatigue[0]", "0.4", "blank_bore[1]", "0");
        Map<String, String> hollow = Map.of("spline_fatigue[0]", "0.4", "blank_bore[1]", "20 mm");
        ScenarioOutcome whole = sizing(solid).scenario(0);
        ScenarioOutcome bored = sizing(hollow).scenario(0);
        double root =
                whole.side(Side.LEFT)
                        .result()
                        .orElseThrow()
                        .plan()
                        .orElseThrow()
                        .blank()
                        .inner()
                        .root()
                        .orElseThrow();

        assertThat(innerTeeth(bored) / innerTeeth(whole))
                .isCloseTo(1 - Math.pow(20 / root, 4), within(1e-9));
    }

    private static double innerTeeth(ScenarioOutcome scenario) {
        return scenario.strength().shaft(Side.LEFT).capacity(ShaftPart.TEETH_INNER).orElseThrow();
    }

    @Test
    void aMeasuredSectionWidthOverridesTheSizes() {
        ScenarioOutcome stated = sizing(Map.of("tyre_width_measured[0]", "")).scenario(0);
        ScenarioOutcome measured = sizing(Map.of("tyre_width_measured[0]", "9 1/2")).scenario(0);

        assertThat(measured.overallWidth() - stated.overallWidth())
                .isCloseTo(9.5 * INCH - 235, within(1e-9));
    }

    @Test
    void aSizeWithoutADiameterAsksForTheTape() {
        Filling.Report report =
                book.with(
                        List.of(
                                new TypedColumn(
                                        "tyre_size", new TreeMap<>(Map.of(0, "7.50-16")), false),
                                new TypedColumn(
                                        "tyre_measured", new TreeMap<>(Map.of(0, "")), false)));

        assertThat(report.problems())
                .filteredOn(problem -> !problem.isError())
                .extracting(Problem::expected)
                .contains("the diameter by a tape: the size \"7.50-16\" states none");
        assertThat(report.sizing().orElseThrow().scenario(0).tyreDiameter()).isNaN();
    }

    @Test
    void shaftsCostTwoBlanksUnlessAPairPriceIsTyped() {
        ScenarioOutcome a = sizing(Map.of("shaft_pair_price[0]", "")).scenario(0);

        double left = price(a, Side.LEFT);
        double right = price(a, Side.RIGHT);
        assertThat(left).isPositive();
        assertThat(a.cost().shafts()).isEqualTo(Price.of(left + right));
    }

    private static double price(ScenarioOutcome scenario, Side side) {
        return scenario.side(side)
                .result()
                .orElseThrow()
                .plan()
                .orElseThrow()
                .blank()
                .price()
                .orElseThrow();
    }

    /** Common practice, no source: a 30 in tyre that measures 29 costs half an inch. */
    @Test
    void aThirtyInchTyreMeasuring29CostsHalfAnInchOfClearance() {
        Sizing nominal = sizing(Map.of("tyre_size[0]", "30x9.50R15", "tyre_measured[0]", ""));
        Sizing measured = sizing(Map.of("tyre_size[0]", "30x9.50R15", "tyre_measured[0]", "29"));

        double lost =
                nominal.scenario(0).clearanceAtRide() - measured.scenario(0).clearanceAtRide();
        assertThat(lost).isCloseTo(0.5 * INCH, within(1e-9));
    }

    @Test
    void trackGrowsByTwiceTheHubShiftAndTheShaftGrowsToo() {
        Sizing before = sizing(Map.of("hub_shift[0]", "0"));
        Sizing after = sizing(Map.of("hub_shift[0]", "1"));

        assertThat(after.scenario(0).track() - before.scenario(0).track())
                .isCloseTo(2 * INCH, within(1e-9));
        assertThat(longest(after) - longest(before)).isBetween(0.95 * INCH, 1.05 * INCH);
    }

    @Test
    void aWheelSpacerMovesTheTyreAndNotTheShaft() {
        Sizing before = sizing(Map.of("wheel_spacer[0]", "0"));
        Sizing after = sizing(Map.of("wheel_spacer[0]", "1"));

        assertThat(after.scenario(0).track() - before.scenario(0).track())
                .isCloseTo(2 * INCH, within(1e-9));
        assertThat(longest(after)).isEqualTo(longest(before));
    }

    private static double longest(Sizing sizing) {
        return sizing.scenario(0)
                .side(Side.LEFT)
                .result()
                .orElseThrow()
                .choice()
                .longest()
                .endToEnd();
    }

    @Test
    void movingTheTransaxleLeftTakesFromTheLeftShaftWhatTheRightOneGains() {
        Sizing before = sizing(Map.of("transaxle_left[0]", "0", "right_side", "same as left"));
        Sizing after = sizing(Map.of("transaxle_left[0]", "1/2", "right_side", "same as left"));

        double left = ends(after, Side.LEFT) - ends(before, Side.LEFT);
        double right = ends(after, Side.RIGHT) - ends(before, Side.RIGHT);
        assertThat(left).isNegative();
        assertThat(right).isPositive().isCloseTo(-left, within(0.05 * INCH));
    }

    private static double ends(Sizing sizing, Side side) {
        return sizing.scenario(0).side(side).result().orElseThrow().choice().longest().endToEnd();
    }

    @Test
    void theRightSideFollowsTheLeftReadingsWhenItIsTheSame() {
        Sizing sizing = sizing(Map.of("right_side", "same as left"));

        assertThat(ends(sizing, Side.RIGHT)).isEqualTo(ends(sizing, Side.LEFT));
    }

    @Test
    void bumpComesFromTheClearanceThatMustBeLeft() {
        ScenarioOutcome scenario =
                sizing(Map.of("bump_rule[0]", "clearance", "clearance_wanted[0]", "8")).scenario(0);

        assertThat(scenario.clearanceAtBump()).isCloseTo(8 * INCH, within(1e-3));
    }

    private static Optional<Finding> leading(Sizing sizing, Side side) {
        return sizing.verdict(new Index(side, 0, 0)).orElseThrow().leading();
    }

    @Test
    void travelBeyondTheMeasuredHeightsGetsNoVerdict() {
        Sizing sizing = sizing(Map.of("bump_limit[0]", "9"));
        SideOutcome side = sizing.scenario(0).side(Side.LEFT);

        assertThat(leading(sizing, Side.LEFT)).contains(Finding.BEYOND_PATH);
        assertThat(side.trouble())
                .isEqualTo("bump travel goes beyond the measured or solved heights");
    }

    @Test
    void longerShaftIsChosenWhereASoftStopAsksForIt() {
        Sizing hard = sizing(Map.of());
        Sizing soft = sizing(Map.of("joint_outward_stop[0]", "soft"));
        SideResult shaft = soft.scenario(0).side(Side.LEFT).result().orElseThrow();

        assertThat(soft.verdict(0).orElseThrow().findings()).isEmpty();
        assertThat(shaft.length().endToEnd())
                .isGreaterThan(
                        hard.scenario(0).side(Side.LEFT).result().orElseThrow().length().endToEnd()
                                + 15);
        assertThat(shaft.leastSoftReserve().orElseThrow().value())
                .isGreaterThan(shaft.setup().marginOutward());
    }

    @Test
    void twoHeightsGiveNumbersButNoVerdict() {
        Map<String, String> typed = new TreeMap<>();
        for (int row = 1; row < 8; row++) {
            for (String name : List.of("height", "distance_first", "fore_aft", "camber", "toe")) {
                typed.put(name + "_left[" + row + "]", "");
            }
        }
        Sizing sizing = sizing(typed);

        assertThat(leading(sizing, Side.LEFT)).contains(Finding.TWO_HEIGHTS);
        assertThat(sizing.scenario(0).side(Side.LEFT).result().orElseThrow().window().width())
                .isFinite();
    }

    @Test
    void aColumnWithoutANameIsLeftAlone() {
        Sizing sizing = sizing(Map.of("scenario_name[1]", ""));

        assertThat(sizing.scenario(1).used()).isFalse();
        assertThat(sizing.verdict(1)).isEmpty();
        assertThat(sizing.scenario(1).cost().total().isKnown()).isFalse();
    }

    @Test
    void aMissingJointIsSaidInTheVerdict() {
        SideOutcome side = sizing(Map.of("joint_outer[0]", "")).scenario(0).side(Side.LEFT);

        assertThat(side.trouble()).isEqualTo("choose an outer joint");
    }
}
