package shaftwright.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.BumpRule;
import shaftwright.build.Margins;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.Ends;
import shaftwright.study.Finding;
import shaftwright.study.Lever;
import shaftwright.study.Modification;
import shaftwright.study.Price;
import shaftwright.study.Severity;
import shaftwright.study.Sweep;
import shaftwright.study.TradeOff;
import shaftwright.units.LengthUnit;
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

    /** What a builder types into a scenario's column, or into the first row of a table. */
    private record Typed(String input, int place, String text) {
        static Typed mm(String input, int place, double mm) {
            return new Typed(input, place, mm + " mm");
        }
    }

    private static Sizing typed(List<Typed> cells) {
        List<TypedColumn> columns = new ArrayList<>();
        for (Typed cell : cells) {
            SortedMap<Integer, String> texts = new TreeMap<>();
            texts.put(cell.place(), cell.text());
            columns.add(new TypedColumn(cell.input(), texts, false));
        }
        return computed(columns);
    }

    /** The changes as a builder would type them. */
    private static Sizing typed(Lever lever, int scenario) {
        return typed(
                lever.changes().stream()
                        .flatMap(change -> cells(change, lever.scenario(), scenario).stream())
                        .toList());
    }

    private static List<Typed> cells(Modification change, Scenario with, int column) {
        if (change instanceof Modification.Moved moved) {
            return List.of(
                    switch (moved.move()) {
                        case LESS_DROOP -> Typed.mm("droop_limit", column, with.travel().droop());
                        case LESS_BUMP ->
                                with.travel().bump() instanceof BumpRule.Stop stop
                                        ? Typed.mm("bump_limit", column, stop.travel())
                                        : Typed.mm(
                                                "clearance_wanted",
                                                column,
                                                with.travel().bump().clearance().orElseThrow());
                        case HIGHER, LOWER ->
                                Typed.mm("transaxle_up", column, with.driveUnit().up());
                        case FORWARD, BACK ->
                                Typed.mm("transaxle_forward", column, with.driveUnit().forward());
                        case HUBS_OUT, HUBS_IN -> Typed.mm("hub_shift", column, with.hubShift());
                    });
        }
        if (change instanceof Modification.Preferred preferred) {
            return List.of(new Typed("length_bias", column, "" + preferred.share()));
        }
        if (change instanceof Modification.AnyBlank) {
            return List.of(new Typed("blank_choice", column, "auto"));
        }
        return ends(change).each().stream().map(end -> cell(change, with, end, column)).toList();
    }

    private static Ends ends(Modification change) {
        if (change instanceof Modification.Counterbored sunk) {
            return sunk.ends();
        }
        if (change instanceof Modification.Spaced spaced) {
            return spaced.ends();
        }
        return change instanceof Modification.OtherJoint joint
                ? joint.ends()
                : ((Modification.OtherBoot) change).ends();
    }

    private static Typed cell(Modification change, Scenario with, ShaftEnd end, int column) {
        MountedJoint mounted = with.joint(end);
        if (change instanceof Modification.Counterbored) {
            return Typed.mm("counterbore_" + end.word(), column, mounted.counterbore());
        }
        if (change instanceof Modification.Spaced) {
            return Typed.mm("joint_spacer_" + end.word(), column, mounted.joint().spacer());
        }
        return change instanceof Modification.OtherJoint
                ? new Typed("joint_" + end.word(), column, mounted.joint().name())
                : new Typed("boot_" + end.word(), column, mounted.boot().name());
    }

    private static List<Lever> levers(Sizing sizing, int scenario) {
        return sizing.variants(scenario).orElseThrow().levers(LengthUnit.INCH);
    }

    private static double width(ScenarioOutcome outcome) {
        return Math.min(
                outcome.side(Side.LEFT).result().orElseThrow().window().width(),
                outcome.side(Side.RIGHT).result().orElseThrow().window().width());
    }

    private static boolean fits(ScenarioOutcome outcome) {
        return Stream.of(Side.values())
                .map(side -> outcome.side(side).study().orElseThrow().shaftVerdict())
                .flatMap(verdict -> verdict.findings().stream())
                .allMatch(f -> f.severity() == Severity.FITS_BUT && f != Finding.NO_BLANK);
    }

    @Test
    void everyLeverDoesWhatItSays() {
        for (int scenario : new int[] {0, SMALL_JOINTS, RAISED}) {
            double before = width(sizing.scenario(scenario));
            List<Lever> levers = levers(sizing, scenario);
            assertThat(levers).hasSizeGreaterThan(5);
            for (Lever lever : levers) {
                ScenarioOutcome after = typed(lever, scenario).scenario(scenario);
                assertThat(width(after) - before)
                        .as(words(lever))
                        .isEqualTo(lever.gain(), within(1e-9));
                assertThat(fits(after)).as(words(lever)).isEqualTo(lever.fits());
                Price parts = after.cost().total().minus(sizing.scenario(scenario).cost().total());
                assertThat(lever.cost().isKnown())
                        .as(words(lever))
                        .isEqualTo(parts.isKnown() && work(lever).isKnown());
                if (lever.cost().isKnown()) {
                    assertThat(amount(lever.cost()))
                            .as(words(lever))
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

    private static String words(Lever lever) {
        return lever.words(LengthUnit.INCH);
    }

    /** By the demo's prices of work for one piece: 38 a ring seat, 21 a spacer, 17 and 13. */
    private static Price work(Lever lever) {
        return lever.changes().stream().map(VariantsTest::work).reduce(Price.of(0), Price::plus);
    }

    private static Price work(Modification change) {
        if (change instanceof Modification.Moved moved) {
            return switch (moved.move()) {
                case LESS_DROOP -> Price.of(2 * 17);
                case LESS_BUMP -> Price.of(2 * 13);
                default -> Price.lacking("not priced");
            };
        }
        if (change instanceof Modification.Counterbored sunk) {
            return Price.of(2 * 38 * sunk.ends().each().size());
        }
        return Price.of(
                change instanceof Modification.Spaced spaced
                        ? 2 * 21 * spaced.ends().each().size()
                        : 0);
    }

    @Test
    void aCostIsSaidOnlyWhereBothTotalsAreKnown() {
        // No blank is long enough there, so the total after it lacks the shafts.
        Lever lever = lever(levers(sizing, RAISED), "hubs 3 in further out");

        assertThat(lever.fits()).isFalse();
        assertThat(lever.cost()).isEqualTo(Price.lacking("not priced"));

        // With a price for the hubs too: what a blank saved would cost nothing is not said.
        Sizing priced = typed(List.of(new Typed("hub_price", 0, "55")));
        assertThat(lever(levers(priced, RAISED), "hubs 3 in further out").cost())
                .isEqualTo(Price.lacking("not priced"));
    }

    @Test
    void workThatHasNoPriceIsNotFree() {
        for (int scenario : new int[] {0, SMALL_JOINTS, RAISED}) {
            assertThat(levers(sizing, scenario))
                    .filteredOn(lever -> words(lever).startsWith("transaxle"))
                    .isNotEmpty()
                    .allSatisfy(lever -> assertThat(lever.cost().isKnown()).isFalse());
        }
    }

    @Test
    void aSmallerMarginIsNeverAmongTheChanges() {
        for (int scenario = 0; scenario < 5; scenario++) {
            Margins now = sizing.variants(scenario).orElseThrow().scenario().margins();
            assertThat(levers(sizing, scenario))
                    .extracting(lever -> lever.scenario().margins())
                    .allMatch(now::equals);
        }
    }

    /** Short by 0.21 in: 1/4 in is the least of sixteenths that does. */
    @Test
    void smallerMarginsThatWouldDoAreSaidToBeAChoice() {
        assertThat(marginChoice(SMALL_JOINTS))
                .hasValue(
                        "Margins 1/4 in smaller in all would do too. How much to keep is your"
                                + " choice: it is safety given up, not room gained.");
        assertThat(marginChoice(0)).isEmpty();
        assertThat(marginChoice(RAISED)).isEmpty();
    }

    private static Optional<String> marginChoice(int scenario) {
        return sizing.variants(scenario)
                .orElseThrow()
                .smallerMargins(LengthUnit.INCH)
                .map(margins -> margins.words(LengthUnit.INCH));
    }

    @Test
    void theLimitStrapIsShortenedByNoMoreThanItTakes() {
        Lever strap = lever(levers(sizing, SMALL_JOINTS), "limit strap");
        double droop = strap.scenario().travel().droop();

        assertThat(fits(trial(droop))).isTrue();
        assertThat(fits(trial(droop + 25.4 / 16))).isFalse();
    }

    private static ScenarioOutcome trial(double droop) {
        return typed(List.of(Typed.mm("droop_limit", SMALL_JOINTS, droop))).scenario(SMALL_JOINTS);
    }

    private static Lever lever(List<Lever> levers, String start) {
        return levers.stream().filter(l -> words(l).startsWith(start)).findFirst().orElseThrow();
    }

    @Test
    void whatMakesItFitComesFirstAndCheapestFirst() {
        List<Lever> levers = levers(sizing, SMALL_JOINTS);

        for (int i = 1; i < levers.size(); i++) {
            Lever before = levers.get(i - 1);
            Lever after = levers.get(i);
            assertThat(before.fits() || !after.fits()).isTrue();
            assertThat(
                            !after.fits()
                                    || known(before) < known(after)
                                    || (known(before) == known(after)
                                            && before.gain() >= after.gain()))
                    .as(words(after))
                    .isTrue();
        }
    }

    private static double known(Lever lever) {
        return lever.cost().amount().orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void whereNoSingleChangeHelpsPairsAreTried() {
        List<Typed> worse =
                List.of(
                        Typed.mm("transaxle_up", SMALL_JOINTS, 120),
                        Typed.mm("margin_inward", SMALL_JOINTS, 3),
                        Typed.mm("margin_outward", SMALL_JOINTS, 3));
        List<Lever> levers = levers(typed(worse), SMALL_JOINTS);

        assertThat(levers).isNotEmpty();
        assertThat(levers.get(0).fits()).isTrue();
        assertThat(words(levers.get(0))).contains("; and ");
    }

    @Test
    void aSweepsCellIsTheWorkbookWithBothValuesTyped() {
        InputAxis across = new InputAxis(Contract.input("droop_limit"), 60, 120, 4);
        InputAxis down = new InputAxis(Contract.input("transaxle_up"), -30, 30, 3);
        Sweep sweep = sizing.sweep(SMALL_JOINTS, across, down).orElseThrow();

        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 4; column++) {
                ScenarioOutcome typed =
                        typed(
                                        List.of(
                                                Typed.mm(
                                                        "droop_limit",
                                                        SMALL_JOINTS,
                                                        60 + 20 * column),
                                                Typed.mm(
                                                        "transaxle_up",
                                                        SMALL_JOINTS,
                                                        -30 + 30 * row)))
                                .scenario(SMALL_JOINTS);
                assertThat(sweep.cell(row, column).window().orElseThrow())
                        .isEqualTo(width(typed), within(1e-9));
                assertThat(sweep.cell(row, column).fits()).isEqualTo(fits(typed));
            }
        }
    }

    @Test
    void sweepsThatMakeNoSenseAreRefused() {
        Input droop = Contract.input("droop_limit");

        assertThatThrownBy(() -> new InputAxis(droop, 2, 2, 3)).hasMessageContaining("upward");
        assertThatThrownBy(() -> new InputAxis(droop, 3, 2, 3)).hasMessageContaining("upward");
        assertThatThrownBy(() -> new InputAxis(droop, 1, 2, 1)).hasMessageContaining("2 to 100");
        assertThatThrownBy(() -> new InputAxis(droop, 1, 2, 101)).hasMessageContaining("2 to 100");
        assertThatThrownBy(() -> new InputAxis(droop, 1, 1e6, 5)).hasMessageContaining("may be");
        assertThatThrownBy(() -> new InputAxis(droop, Double.NaN, 2, 3))
                .hasMessageContaining("upward");
        assertThatThrownBy(() -> new InputAxis(Contract.input("scenario_name"), 1, 2, 3))
                .hasMessageContaining("no number");
        assertThatThrownBy(() -> new InputAxis(Contract.input("ring_thickness"), 1, 2, 3))
                .hasMessageContaining("no number");
        assertThatThrownBy(() -> new InputAxis(Contract.input("first_gear"), 1, 2, 3))
                .hasMessageContaining("no shaft follows from first_gear");
    }

    @Test
    void everyNumberThatAShaftFollowsFromCanBeSwept() {
        List<String> refused =
                Contract.inputs(Grid.SCENARIO).stream()
                        .filter(input -> input.kind().numeric())
                        .filter(input -> InputAxis.flaw(input, 0.25, 0.5, 2).isPresent())
                        .filter(input -> input.allowed().contains(0.25))
                        .map(Input::name)
                        .toList();

        assertThat(refused)
                .containsOnly(
                        "lock_left",
                        "first_gear",
                        "final_drive",
                        "reverse_gear",
                        "shaft_pair_price",
                        "other_cost");
    }

    @Test
    void tradeOffsAreTheUnbeatenOnesOfAllThatFit() {
        List<TradeOff> front = sizing.variants(SMALL_JOINTS).orElseThrow().tradeOffs();

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
                                            new Typed(
                                                    "joint_inner",
                                                    SMALL_JOINTS,
                                                    one.scenario().inner().joint().name()),
                                            new Typed(
                                                    "joint_outer",
                                                    SMALL_JOINTS,
                                                    one.scenario().outer().joint().name()),
                                            new Typed("blank_choice", SMALL_JOINTS, "auto"),
                                            Typed.mm(
                                                    "hub_shift",
                                                    SMALL_JOINTS,
                                                    one.scenario().hubShift()),
                                            Typed.mm("bump_limit", SMALL_JOINTS, one.bump()),
                                            Typed.mm("droop_limit", SMALL_JOINTS, one.droop())))
                            .scenario(SMALL_JOINTS);
            assertThat(fits(typed)).isTrue();
            assertThat(amount(typed.cost().total())).isEqualTo(amount(one.cost()), within(1e-9));
        }
    }
}
