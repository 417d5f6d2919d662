package shaftwright.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.study.Finding;
import shaftwright.study.Price;
import shaftwright.study.Severity;
import shaftwright.workbook.DemoBook;
import shaftwright.xlsx.XlsxBook;

/** Variants of a scenario, each held against a workbook into which the same was typed. */
class VariantsTest {
    /** Does not fit: the window is too short. */
    private static final int SMALL_JOINTS = 1;

    /** Does not fit: the inner joint is too steep. */
    private static final int RAISED = 3;

    @TempDir private static Path folder;
    private static Sizing sizing;

    @BeforeAll
    static void compute() {
        sizing = computed(List.of());
    }

    private static Sizing computed(List<TypedColumn> typed) {
        Path file = folder.resolve("demo.xlsx");
        if (!file.toFile().exists()) {
            DemoBook.write(file);
        }
        return Filling.fill(XlsxBook.open(file), typed).sizing().orElseThrow();
    }

    /** The changes as a builder would type them. */
    private static Sizing typed(List<Change> changes) {
        List<TypedColumn> columns = new ArrayList<>();
        for (Change change : changes) {
            String text =
                    change.text().isEmpty()
                            ? change.input().kind() == InputKind.LENGTH
                                    ? change.number() + " mm"
                                    : String.valueOf(change.number())
                            : change.text();
            SortedMap<Integer, String> texts = new TreeMap<>();
            texts.put(change.place(), text);
            columns.add(new TypedColumn(change.name(), texts, false));
        }
        return computed(columns);
    }

    private static double width(ScenarioOutcome outcome) {
        return Math.min(
                outcome.side(Side.LEFT).result().orElseThrow().window().width(),
                outcome.side(Side.RIGHT).result().orElseThrow().window().width());
    }

    private static boolean fits(ScenarioOutcome outcome) {
        return outcome.shaftVerdict().findings().stream()
                .allMatch(f -> f.severity() == Severity.FITS_BUT && f != Finding.NO_BLANK);
    }

    @Test
    void everyLeverDoesWhatItSays() {
        for (int scenario : new int[] {0, SMALL_JOINTS, RAISED}) {
            double before = width(sizing.scenario(scenario));
            List<Lever> levers = LeverSearch.of(sizing, scenario);
            assertThat(levers).hasSizeGreaterThan(5);
            for (Lever lever : levers) {
                ScenarioOutcome after = typed(lever.changes()).scenario(scenario);
                assertThat(width(after) - before)
                        .as(lever.words())
                        .isEqualTo(lever.gain(), within(1e-9));
                assertThat(fits(after)).as(lever.words()).isEqualTo(lever.fits());
                Price parts = after.cost().total().minus(sizing.scenario(scenario).cost().total());
                assertThat(lever.cost().isKnown())
                        .as(lever.words())
                        .isEqualTo(parts.isKnown() && work(lever).isKnown());
                if (lever.cost().isKnown()) {
                    assertThat(amount(lever.cost()))
                            .as(lever.words())
                            .isEqualTo(amount(parts.plus(work(lever))), within(1e-9));
                } else {
                    assertThat(lever.cost().words()).isEqualTo("not priced");
                }
            }
        }
    }

    private static double amount(Price price) {
        return price.amount().orElseThrow();
    }

    /** By the demo's prices of work for one piece: 38 a ring seat, 21 a spacer, 17 and 13. */
    private static Price work(Lever lever) {
        double sum = 0;
        for (Change change : lever.changes()) {
            switch (change.name()) {
                case "counterbore_inner", "counterbore_outer" -> sum += 2 * 38;
                case "joint_spacer_inner", "joint_spacer_outer" -> sum += 2 * 21;
                case "droop_limit" -> sum += 2 * 17;
                case "bump_limit", "clearance_wanted" -> sum += 2 * 13;
                case "joint_inner", "joint_outer", "boot_inner", "boot_outer", "blank_choice" ->
                        sum += 0;
                default -> {
                    return Price.lacking("not priced");
                }
            }
        }
        return Price.of(sum);
    }

    @Test
    void aCostIsSaidOnlyWhereBothTotalsAreKnown() {
        // No blank is long enough there, so the total after it lacks the shafts.
        Lever lever = lever(LeverSearch.of(sizing, RAISED), "hubs 3 in further out");

        assertThat(lever.fits()).isFalse();
        assertThat(lever.cost()).isEqualTo(Price.lacking("not priced"));

        // With a price for the hubs too: what a blank saved would cost nothing is not said.
        Sizing priced = typed(List.of(Change.number("hub_price", 0, 55)));
        assertThat(lever(LeverSearch.of(priced, RAISED), "hubs 3 in further out").cost())
                .isEqualTo(Price.lacking("not priced"));
    }

    @Test
    void workThatHasNoPriceIsNotFree() {
        for (int scenario : new int[] {0, SMALL_JOINTS, RAISED}) {
            assertThat(LeverSearch.of(sizing, scenario))
                    .filteredOn(lever -> lever.words().startsWith("transaxle"))
                    .isNotEmpty()
                    .allSatisfy(lever -> assertThat(lever.cost().isKnown()).isFalse());
        }
    }

    @Test
    void aSmallerMarginIsNeverAmongTheChanges() {
        for (int scenario = 0; scenario < 5; scenario++) {
            for (Lever lever : LeverSearch.of(sizing, scenario)) {
                assertThat(lever.changes())
                        .as(lever.words())
                        .extracting(Change::name)
                        .noneMatch(name -> name.startsWith("margin"));
            }
        }
    }

    /** Short by 0.21 in: 1/4 in is the least of sixteenths that does. */
    @Test
    void smallerMarginsThatWouldDoAreSaidToBeAChoice() {
        assertThat(LeverSearch.marginChoice(sizing, SMALL_JOINTS))
                .hasValue(
                        "Margins 1/4 in smaller in all would do too. How much to keep is your"
                                + " choice: it is safety given up, not room gained.");
        assertThat(LeverSearch.marginChoice(sizing, 0)).isEmpty();
        assertThat(LeverSearch.marginChoice(sizing, RAISED)).isEmpty();
    }

    @Test
    void theLimitStrapIsShortenedByNoMoreThanItTakes() {
        Lever strap = lever(LeverSearch.of(sizing, SMALL_JOINTS), "limit strap");
        double droop = strap.changes().get(0).number();

        assertThat(fits(trial(droop))).isTrue();
        assertThat(fits(trial(droop + 25.4 / 16))).isFalse();
    }

    private static ScenarioOutcome trial(double droop) {
        return typed(List.of(Change.number("droop_limit", SMALL_JOINTS, droop)))
                .scenario(SMALL_JOINTS);
    }

    private static Lever lever(List<Lever> levers, String start) {
        return levers.stream().filter(l -> l.words().startsWith(start)).findFirst().orElseThrow();
    }

    @Test
    void whatMakesItFitComesFirstAndCheapestFirst() {
        List<Lever> levers = LeverSearch.of(sizing, SMALL_JOINTS);

        for (int i = 1; i < levers.size(); i++) {
            Lever before = levers.get(i - 1);
            Lever after = levers.get(i);
            assertThat(before.fits() || !after.fits()).isTrue();
            assertThat(
                            !after.fits()
                                    || known(before) < known(after)
                                    || (known(before) == known(after)
                                            && before.gain() >= after.gain()))
                    .as(after.words())
                    .isTrue();
        }
    }

    private static double known(Lever lever) {
        return lever.cost().amount().orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void whereNoSingleChangeHelpsPairsAreTried() {
        List<Change> worse =
                List.of(
                        Change.number("transaxle_up", SMALL_JOINTS, 120),
                        Change.number("margin_inward", SMALL_JOINTS, 3),
                        Change.number("margin_outward", SMALL_JOINTS, 3));
        List<Lever> levers = LeverSearch.of(typed(worse), SMALL_JOINTS);

        assertThat(levers).isNotEmpty();
        assertThat(levers.get(0).fits()).isTrue();
        assertThat(levers.get(0).words()).contains("; and ");
    }

    @Test
    void aSweepsCellIsTheWorkbookWithBothValuesTyped() {
        SweepAxis across = new SweepAxis(Contract.input("droop_limit"), 60, 120, 4);
        SweepAxis down = new SweepAxis(Contract.input("transaxle_up"), -30, 30, 3);
        Sweep sweep = Sweep.of(sizing, SMALL_JOINTS, across, down);

        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 4; column++) {
                ScenarioOutcome typed =
                        typed(
                                        List.of(
                                                Change.number(
                                                        "droop_limit",
                                                        SMALL_JOINTS,
                                                        60 + 20 * column),
                                                Change.number(
                                                        "transaxle_up",
                                                        SMALL_JOINTS,
                                                        -30 + 30 * row)))
                                .scenario(SMALL_JOINTS);
                assertThat(sweep.cell(row, column).width()).isEqualTo(width(typed), within(1e-9));
                assertThat(sweep.cell(row, column).fits()).isEqualTo(fits(typed));
            }
        }
    }

    @Test
    void sweepsThatMakeNoSenseAreRefused() {
        Input droop = Contract.input("droop_limit");

        assertThatThrownBy(() -> new SweepAxis(droop, 2, 2, 3)).hasMessageContaining("upward");
        assertThatThrownBy(() -> new SweepAxis(droop, 3, 2, 3)).hasMessageContaining("upward");
        assertThatThrownBy(() -> new SweepAxis(droop, 1, 2, 1)).hasMessageContaining("2 to 100");
        assertThatThrownBy(() -> new SweepAxis(droop, 1, 2, 101)).hasMessageContaining("2 to 100");
        assertThatThrownBy(() -> new SweepAxis(droop, 1, 1e6, 5)).hasMessageContaining("may be");
        assertThatThrownBy(() -> new SweepAxis(droop, Double.NaN, 2, 3))
                .hasMessageContaining("upward");
        assertThatThrownBy(() -> new SweepAxis(Contract.input("scenario_name"), 1, 2, 3))
                .hasMessageContaining("no number");
        assertThatThrownBy(() -> new SweepAxis(Contract.input("ring_thickness"), 1, 2, 3))
                .hasMessageContaining("no number");
    }

    @Test
    void tradeOffsAreTheUnbeatenOnesOfAllThatFit() {
        List<TradeOff> front = TradeOffSearch.of(sizing, SMALL_JOINTS);

        assertThat(front).isNotEmpty();
        for (TradeOff one : front) {
            for (TradeOff other : front) {
                boolean cheaper = amount(other.cost()) < amount(one.cost()) - 1e-9;
                boolean further = other.travel() > one.travel() + 0.1;
                boolean roomier = other.leastSlack() > one.leastSlack() + 0.1;
                assertThat(cheaper && further && roomier).isFalse();
            }
            ScenarioOutcome typed =
                    typed(
                                    List.of(
                                            Change.text(
                                                    "joint_inner", SMALL_JOINTS, one.innerJoint()),
                                            Change.text(
                                                    "joint_outer", SMALL_JOINTS, one.outerJoint()),
                                            Change.text("blank_choice", SMALL_JOINTS, "auto"),
                                            Change.number(
                                                    "hub_shift", SMALL_JOINTS, one.hubShift()),
                                            Change.number("bump_limit", SMALL_JOINTS, one.bump()),
                                            Change.number(
                                                    "droop_limit", SMALL_JOINTS, one.droop())))
                            .scenario(SMALL_JOINTS);
            assertThat(fits(typed)).isTrue();
            assertThat(amount(typed.cost().total())).isEqualTo(amount(one.cost()), within(1e-9));
        }
    }
}
