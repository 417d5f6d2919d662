package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.filling.TypedOver;
import shaftwright.live.LiveLines;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.reading.StopSentence;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.SideStops;
import shaftwright.study.StopsAlone;
import shaftwright.travel.TravelRange;
import shaftwright.xlsx.XlsxBook;

/** Engine blocks of the demo workbook: figures that a fill writes, and the stamp over them. */
public class FreshnessTest {
    private static final String STALE = "out of date: fill again";
    private static final String CURRENT = "current";

    /** Scenario columns: five used ones and a spare one. */
    private static final int COLUMNS = 6;

    /** Contract version from which on inputs are tried one and all. */
    private static final int LATER = 6;

    @TempDir private static Path shared;
    @TempDir private Path folder;
    private static Path demo;
    private static TypedOver read;
    private static PoiRecalculation demoInPoi;

    @BeforeAll
    static void makeDemo() {
        demo = filledDemo(shared.resolve("demo.xlsx"));
        read = TypedOver.of(demo);
        demoInPoi = PoiRecalculation.of(demo);
    }

    /** The demo with a spare scenario column, filled. */
    public static Path filledDemo(Path file) {
        DemoBook.write(file, DemoBook.typed(), COLUMNS);
        fill(file);
        return file;
    }

    @AfterAll
    static void close() throws IOException {
        demoInPoi.close();
    }

    @Test
    void stampsAreCurrentAfterAFillAndEmptyWhereNothingIsComputed() {
        List<String> expected = List.of(CURRENT, CURRENT, CURRENT, CURRENT, CURRENT, "");

        assertThat(stamps(demoInPoi, demo, Side.LEFT)).isEqualTo(expected);
        assertThat(stamps(demoInPoi, demo, Side.RIGHT)).isEqualTo(expected);
    }

    @Test
    void figuresAreTheCoresInTheWorkbooksUnit() {
        XlsxBook book = XlsxBook.open(demo);
        Sizing sizing = Filling.compute(book).sizing().orElseThrow();

        for (int scenario = 0; scenario < COLUMNS - 1; scenario++) {
            TravelRange range =
                    sizing.scenario(scenario).side(Side.LEFT).travelAllowed().orElseThrow();
            assertThat(content(book, "travel_up_left", scenario).value())
                    .isEqualTo(CellValue.of(range.up() / 25.4));
            assertThat(content(book, "travel_down_stop_left", scenario).value())
                    .isEqualTo(CellValue.of(range.downStop().words()));
            assertThat(content(book, "travel_up_left", scenario).hasFormula()).isFalse();
        }
        assertThat(content(book, "travel_up_left", COLUMNS - 1).value())
                .isEqualTo(CellValue.of("–"));
    }

    @Test
    void anotherJointMakesItsOwnScenarioStale() {
        assertStale(List.of("A"), "joint_outer", 0, "113 mm six-ball plunging joint");
    }

    @Test
    void aSizeInTheJointTableMakesItsUsersStale() {
        assertStale(List.of("A", "C", "D"), "joint_angle_max", 0, 21.5);
    }

    @Test
    void aBenchReadingMakesItsUsersStale() {
        assertStale(List.of("E"), "bench_outward", 4, "1/4");
    }

    @Test
    void aCounterboreMakesItsScenarioStale() {
        assertStale(List.of("C"), "counterbore_inner", 2, "1/8");
    }

    @Test
    void aTyreThatMovesTheBumpLimitAndSoTheShaftMakesItsScenarioStale() {
        assertStale(List.of("C"), "tyre_measured", 2, "26");
    }

    @Test
    void aReadingMakesItsSideStale() {
        Map<Side, List<String>> stamps = stampsWith("distance_first_left", 3, "26 3/16");

        assertThat(stamps.get(Side.LEFT)).containsOnly(STALE, "");
        assertThat(stamps.get(Side.RIGHT)).containsOnly(CURRENT, "");
    }

    @Test
    void aScenarioThatCanNoLongerBeComputedIsStale() {
        assertStale(List.of("B"), "joint_inner", 1, "");
    }

    @Test
    void aColumnOutOfUseIsStaleWhileOldFiguresStandInIt() {
        assertStale(List.of("E"), "scenario_name", 4, "");
    }

    @Test
    void whatTheTravelDoesNotFollowFromLeavesItCurrent() {
        assertStale(List.of(), "joint_price", 0, 999.0);
        assertStale(List.of(), "wheel_spacer", 0, "1/4");
    }

    @Test
    void anotherFillMakesItCurrentAgain() throws IOException {
        Path changed = Files.copy(demo, folder.resolve("changed.xlsx"));
        XlsxBook book = XlsxBook.open(changed);
        book.write(Map.of(book.names().get("counterbore_inner").place(2), CellValue.of("1/8")));
        book.save(changed);
        fill(changed);

        assertThat(stamps(changed, Side.LEFT)).containsOnly(CURRENT, "");
    }

    @Test
    void fillingTwiceGivesTheSameBytes() throws IOException {
        Path twice = Files.copy(demo, folder.resolve("twice.xlsx"));
        fill(twice);

        assertThat(Files.readAllBytes(twice)).isEqualTo(Files.readAllBytes(demo));
    }

    /** Changes that move hub or inner flange as such, and so whatever follows from a position. */
    private static final String[][] MOVES = {
        {"steer_angle", "1", "12"},
        {"kingpin_inclination", "0", "7"},
        {"kingpin_caster", "0", "5"},
        {"kingpin_inward", "0", "2 1/2"},
        {"kingpin_ahead", "0", "1/2"},
        {"mount_load", "2", "overrun"},
        {"mount_drive_forward", "0", "1 1/2"},
        {"mount_drive_left", "0", "1/2"},
        {"mount_drive_up", "0", "1"},
        {"mount_drive_roll", "0", "4"},
    };

    private static String[][] withMoves(String[][] changes) {
        return Stream.of(changes, MOVES).flatMap(Arrays::stream).toArray(String[][]::new);
    }

    /** Every single change that moves an end of the range by a hair is seen by the fingerprint. */
    @Test
    void noChangeOfTheFiguresGoesUnseen() {
        String[][] changes = {
            {"joint_datum_offset", "0", "34.3 mm"},
            {"joint_race_half_width", "0", "13.2 mm"},
            {"joint_cup_bottom", "0", "30 mm"},
            {"joint_cup_radius", "0", "19 mm"},
            {"joint_lip_radius", "1", "22 mm"},
            {"joint_angle_max", "0", "15"},
            {"joint_outward_stop", "0", "soft"},
            {"joint_plunge", "0", "30 mm"},
            {"joint_plunge_residual", "0", "0.1"},
            {"bench_inward", "2", "1/4"},
            {"bench_angle", "4", "24"},
            {"boot_outward_change", "0", "-5/8"},
            {"shaft_end_diameter_inner", "0", "46 mm"},
            {"stub_outer", "0", "1"},
            {"cup_spacer_outer", "1", "1/2"},
            {"hub_shift", "2", "1 1/16"},
            {"transaxle_forward", "0", "4"},
            {"transaxle_up", "0", "3"},
            {"transaxle_left", "0", "1/2"},
            {"inner_tilt", "0", "4"},
            {"inner_sweep", "0", "7"},
            {"inner_height_left", "0", "22"},
            {"ride_height_left", "0", "18 3/8"},
            {"height_left", "8", "23 3/4"},
            {"fore_aft_left", "0", "2"},
            {"camber_left", "0", "-8"},
            {"toe_left", "0", "4"},
            {"length_bias", "0", "0.9"},
            {"restraint_shortest", "0", "15"},
            {"restraint_longest", "1", "12"},
            {"restraint_moving_out", "0", "24"},
            {"restraint_fixed_height", "1", "24 1/2"},
            {"restraint_kind", "1", "damper"},
            {"boot_length", "0", "11"},
            {"boot_diameter", "0", "9"},
            {"tube_diameter", "0", "9"},
        };
        assertSeen("travel_print", withMoves(changes), FreshnessTest::allowed);
    }

    /** The same of the chances, which follow from the doubt too. */
    @Test
    void noChangeOfTheChancesGoesUnseen() {
        String[][] changes = {
            {"joint_cup_bottom", "0", "30 mm"},
            {"joint_plunge", "0", "38 mm"},
            {"joint_plunge", "2", "26 mm"},
            {"bench_inward", "2", "1/4"},
            {"stub_outer", "1", "5/8"},
            {"hub_shift", "1", "1/16"},
            {"transaxle_forward", "1", "1/2"},
            {"transaxle_left", "1", "1/8"},
            {"transaxle_up", "1", "1/4"},
            {"inner_tilt", "0", "1"},
            {"inner_height_left", "0", "20 3/4"},
            {"height_left", "8", "23 3/4"},
            {"distance_second_left", "3", "26 1/4"},
            {"distance_third_left", "0", ""},
            {"tape_graduation", "0", "1/8"},
            {"height_graduation", "0", "1/4"},
            {"curve_allowance_cubic", "0", "3 mm"},
            {"camber_left", "0", "-3"},
            {"droop_limit", "1", "4 1/2"},
            {"bump_limit", "1", "4 3/4"},
            {"length_bias", "1", "0.9"},
            {"doubt_amount", "0", "1/16"},
            {"doubt_kind", "0", "scatter"},
            {"doubt_kind", "3", "plus or minus"},
            {"doubt_on", "1", "no"},
            {"trial_count", "0", "4000"},
            {"trial_seed", "0", "2"},
            {"margin_choice", "0", "worst case"},
        };
        assertSeen("chance_print", withMoves(changes), FreshnessTest::chances);
    }

    /** The same of the longest travel, which follows from blanks, rings and margins too. */
    @Test
    void noChangeOfTheLongestTravelGoesUnseen() {
        String[][] changes = {
            {"blank_length", "1", "25 3/4"},
            {"blank_spline_length_inner", "1", "2"},
            {"blank_spline_length_outer", "2", "2"},
            {"blank_splines_inner", "6", "28"},
            {"blank_groove_outer", "1", "5/8"},
            {"blank_in_stock", "1", "no"},
            {"blank_price", "2", "200"},
            {"joint_splines", "0", "33"},
            {"joint_race_half_width", "0", "12 mm"},
            {"joint_plunge", "0", "40 mm"},
            {"joint_angle_max", "0", "18"},
            {"stub_inner", "0", "5/8"},
            {"counterbore_outer", "0", "1/8"},
            {"margin_inward", "1", "1/4"},
            {"margin_outward", "1", "1/8"},
            {"length_bias", "0", "0.9"},
            {"shop_increment", "0", "1/4"},
            {"spline_runout", "0", "1"},
            {"ring_thickness", "0", "3 mm"},
            {"groove_depth", "0", "4 mm"},
            {"groove_width", "0", "9 mm"},
            {"tape_graduation", "0", "1/2"},
            {"curve_allowance_cubic", "0", "9 mm"},
            {"height_left", "8", "23 3/4"},
            {"camber_left", "0", "-3"},
            {"inner_tilt", "0", "4"},
            {"hub_shift", "2", "1 1/4"},
            {"transaxle_up", "3", "3"},
            {"restraint_shortest", "0", "15"},
            {"restraint_longest", "1", "12"},
            {"spline_angle", "0", "45"},
            {"boot_longest", "0", "70 mm"},
        };
        assertSeen("longest_print", withMoves(changes), FreshnessTest::longest);
    }

    /** The same of each stop alone, which follows from boots, tubes and clearance too. */
    @Test
    void noChangeOfStopsAloneGoesUnseen() {
        String[][] changes = {
            {"joint_datum_offset", "0", "34.3 mm"},
            {"joint_cup_bottom", "0", "30 mm"},
            {"joint_angle_max", "0", "15"},
            {"joint_outward_stop", "0", "soft"},
            {"boot_outward_change", "0", "-5/8"},
            {"boot_length", "0", "11"},
            {"boot_diameter", "0", "9"},
            {"tube_diameter", "0", "9"},
            {"tube_second_height", "0", "22 3/4"},
            {"stub_outer", "0", "1"},
            {"hub_shift", "2", "1 1/16"},
            {"transaxle_up", "0", "3"},
            {"inner_tilt", "0", "4"},
            {"height_left", "8", "23 3/4"},
            {"camber_left", "0", "-8"},
            {"length_bias", "0", "0.9"},
            {"restraint_shortest", "0", "15"},
            {"restraint_longest", "1", "12"},
            {"clearance_ride", "0", "11"},
            {"clearance_wanted", "0", "6 1/2"},
            {"tyre_measured", "1", "28"},
            {"clearance_tyre_diameter", "0", "28"},
            {"steer_angle", "1", "12"},
            {"mount_drive_up", "0", "1"},
            {"boot_longest", "0", "70 mm"},
            {"boot_shortest", "0", "60 mm"},
            {"boot_angle", "0", "8"},
            {"boot_cup_seat", "0", "5 mm"},
            {"boot_shaft_seat", "0", "5 mm"},
            {"boot_cup_diameter", "0", "70 mm"},
            {"boot_shaft_diameter", "0", "30 mm"},
        };
        assertSeen("alone_print", changes, FreshnessTest::alone);
    }

    /** The same of shafts for all states, which follow from locks and mounts too. */
    @Test
    void noChangeOfAllStatesGoesUnseen() {
        String[][] changes = {
            {"lock_left", "1", "11"},
            {"lock_right", "1", "-12"},
            {"steer_angle", "0", "3"},
            {"kingpin_inclination", "0", "9"},
            {"kingpin_caster", "0", "3"},
            {"kingpin_inward", "0", "2 1/4"},
            {"kingpin_ahead", "0", "1/2"},
            {"mount_drive_forward", "0", "3/4"},
            {"mount_drive_left", "0", "1/4"},
            {"mount_drive_up", "0", "1/2"},
            {"mount_drive_roll", "0", "3"},
            {"mount_overrun_forward", "0", "-1"},
            {"mount_overrun_left", "0", "1/4"},
            {"mount_overrun_up", "0", "-1/2"},
            {"mount_overrun_roll", "0", "-2"},
            {"mount_load", "1", "overrun"},
            {"inner_offset_left", "0", "6"},
            {"hub_shift", "1", "1/16"},
            {"transaxle_forward", "1", "1/2"},
            {"transaxle_left", "1", "1/8"},
            {"transaxle_up", "1", "1/4"},
            {"inner_tilt", "0", "1"},
            {"inner_sweep", "0", "1"},
            {"bump_limit", "1", "4 3/4"},
            {"droop_limit", "1", "4 1/2"},
            {"joint_datum_offset", "0", "35 mm"},
            {"joint_cup_bottom", "0", "30 mm"},
            {"joint_race_half_width", "0", "12 mm"},
            {"joint_plunge", "0", "40 mm"},
            {"stub_inner", "1", "5/8"},
            {"counterbore_outer", "1", "1/8"},
            {"margin_inward", "1", "1/8"},
            {"margin_outward", "1", "1/8"},
            {"length_bias", "0", "0.9"},
            {"shop_increment", "0", "1/8"},
            {"tape_graduation", "0", "1/2"},
            {"curve_allowance_cubic", "0", "9 mm"},
            {"height_left", "8", "23 3/4"},
            {"camber_left", "0", "-3"},
            {"blank_groove_outer", "1", "5/8"},
            {"blank_choice", "0", "auto"},
        };
        List<TypedColumn> asked = new ArrayList<>(MOVED);
        asked.add(cell("all_states", 0, "yes"));
        asked.add(cell("all_states", 1, "yes"));
        asked.add(cell("lock_left", 1, "10"));
        asked.add(cell("lock_right", 1, "-9"));
        asked.add(cell("all_states", 2, "yes"));
        assertSeen("states_print", asked, changes, FreshnessTest::allStates);
    }

    /** The same of windows that a mock-up corrects, for one state and for all. */
    @Test
    void noChangeOfAMockUpGoesUnseen() {
        String[][] changes = {
            {"stick_corrects", "1", "no"},
            {"stick_scenario_left", "0", "A"},
            {"stick_height_left", "2", "21 1/2"},
            {"stick_holes_in_left", "0", "26 3/4"},
            {"stick_holes_out_left", "2", "23 3/8"},
            {"stick_stop_outer_left", "0", "tape"},
            {"stick_slide_inner_left", "0", "1/8"},
            {"stick_slide_outer_left", "0", "1/8"},
            {"stick_kind_right", "0", "sliding"},
            {"stick_holes_right", "0", "24 3/4"},
            {"stick_stub_inner_right", "0", "1"},
            {"stick_end_inner_right", "0", "1"},
            {"stick_pin_length_left", "0", "1"},
            {"stick_play_right", "0", "1 1/8"},
            {"stick_inboard_right", "1", "bottom"},
            {"stick_outboard_right", "0", "bottom"},
        };
        List<TypedColumn> corrected = corrected();
        assertSeen("longest_print", corrected, changes, FreshnessTest::longest);

        corrected.add(cell("all_states", 2, "yes"));
        corrected.add(cell("all_states", 4, "yes"));
        assertSeen("states_print", corrected, changes, FreshnessTest::allStates);
    }

    private static List<TypedColumn> corrected() {
        List<TypedColumn> corrected = new ArrayList<>(MOVED);
        MockUpBook.corrected()
                .forEach(
                        (name, texts) -> {
                            for (int at = 0; name.startsWith("stick_") && at < texts.size(); at++) {
                                corrected.add(cell(name, at, texts.get(at)));
                            }
                        });
        return corrected;
    }

    /**
     * Each input that came after the first versions, typed into its first cell: what it may be
     * chosen to be, or both ends of what is usual. What moves a figure moves its fingerprint.
     */
    @Test
    void noChangeOfALaterInputGoesUnseen() {
        Map<String, Figures> blocks =
                Map.of(
                        "travel_print", FreshnessTest::allowed,
                        "longest_print", FreshnessTest::longest,
                        "alone_print", FreshnessTest::alone,
                        "stop_print", FreshnessTest::stops,
                        "states_print", FreshnessTest::allStates);
        List<TypedColumn> from = corrected();
        from.add(cell("all_states", 2, "yes"));
        Sizing before = sizing(from);
        Set<String> moved = new TreeSet<>();
        for (Input input : Contract.inputs()) {
            for (String text : input.since() < LATER ? List.<String>of() : texts(input)) {
                List<TypedColumn> typed = new ArrayList<>(from);
                typed.add(cell(input.definedName(Side.LEFT), 0, text));
                Filling.Report report = read.with(typed);
                if (report.hasErrors()) {
                    continue;
                }
                Sizing after = report.sizing().orElseThrow();
                blocks.forEach(
                        (print, figures) -> {
                            if (seen(print, figures, before, after, input.name())) {
                                moved.add(input.name());
                            }
                        });
            }
        }
        assertThat(moved).hasSizeGreaterThan(15);
    }

    private static boolean seen(
            String print, Figures figures, Sizing before, Sizing after, String input) {
        boolean moved = false;
        for (int scenario = 0; scenario < COLUMNS - 1; scenario++) {
            for (Side side : Side.values()) {
                Index index = new Index(side, scenario, 0);
                if (!figures.of(before, index).equals(figures.of(after, index))) {
                    moved = true;
                    assertThat(print(print, after, index))
                            .as("%s by %s in %s", print, input, index)
                            .isNotEqualTo(print(print, before, index));
                }
            }
        }
        return moved;
    }

    private static List<String> texts(Input input) {
        return switch (input.kind()) {
            case CHOICE -> input.choices();
            case PICK -> DemoBook.typed().get(input.choices().get(0)).subList(0, 2);
            case TEXT, TYRE -> List.of();
            case LENGTH -> List.of(input.usual().least() + " mm", input.usual().most() + " mm");
            default ->
                    List.of(
                            String.valueOf(input.usual().least()),
                            String.valueOf(input.usual().most()));
        };
    }

    /** The same of where one more reading would tell most. */
    @Test
    void noChangeOfTheFurtherReadingGoesUnseen() {
        String[][] changes = {
            {"height_left", "8", "23 3/4"},
            {"height_left", "3", "17 1/2"},
            {"height_right", "2", "16"},
            {"distance_first_left", "4", "26 5/16"},
            {"distance_second_left", "3", "26 1/4"},
            {"distance_third_left", "0", ""},
            {"distance_first_left", "2", "28"},
            {"height_right", "1", "15"},
            {"fore_aft_left", "0", "2"},
            {"inner_height_left", "0", "20 3/4"},
            {"ride_height_left", "0", "18 3/8"},
            {"tape_graduation", "0", "1/8"},
            {"height_graduation", "0", "1/4"},
            {"curve_allowance_cubic", "0", "3 mm"},
            {"right_side", "0", "same as left"},
            {"path_source_left", "0", "linkage"},
        };
        assertSeen("further_print", changes, FreshnessTest::further);
    }

    /** To a millionth; from it and the rows' number follows all that is said. */
    private static Object further(Sizing sizing, Index index) {
        return sizing.measured(index.side())
                .map(
                        path ->
                                path.nextReading()
                                        .map(
                                                next ->
                                                        List.of(
                                                                Math.round(1e6 * next.height()),
                                                                Math.round(1e6 * next.doubt()),
                                                                Math.round(1e6 * next.doubtThen()),
                                                                path.settings().tapeGraduation(),
                                                                path.crossCheck()))
                                        .orElse(List.of()));
    }

    /** To a millionth: what varies nothing may still move last digits. */
    private static Object allStates(Sizing sizing, Index index) {
        return side(sizing, index)
                .result()
                .flatMap(SideResult::states)
                .map(
                        all ->
                                Stream.of(
                                                all.window().shortest(),
                                                all.window().longest(),
                                                all.slackIn(),
                                                all.slackOut(),
                                                all.steepestInner(),
                                                all.steepestOuter())
                                        .map(met -> Math.round(1e6 * met.value()) + met.state())
                                        .toList())
                .orElse(List.of());
    }

    /** To a millionth: how a linkage is come upon leaves the last digits open. */
    private static Object alone(Sizing sizing, Index index) {
        Optional<StopsAlone> stops = side(sizing, index).stopsAlone();
        List<Object> figures = new ArrayList<>();
        for (StopsAlone.Thing thing : StopsAlone.Thing.values()) {
            stops.flatMap(all -> all.of(thing))
                    .ifPresent(
                            alone -> {
                                figures.add(Math.round(1e6 * alone.up()));
                                figures.add(Math.round(1e6 * alone.down()));
                            });
            figures.add(thing);
        }
        return figures;
    }

    private static Object longest(Sizing sizing, Index index) {
        return side(sizing, index)
                .longestTravel()
                .map(
                        found ->
                                List.of(
                                        found.range(),
                                        found.plan().length(),
                                        found.plan().blank().name()))
                .orElse(List.of());
    }

    /** The same of what dampers, straps and tubes make of the wanted travel. */
    @Test
    void noChangeOfStopsAndGapsGoesUnseen() {
        String[][] changes = {
            {"restraint_kind", "1", "bump stop"},
            {"restraint_carried_by", "1", "upright"},
            {"restraint_fixed_ahead", "0", "3"},
            {"restraint_fixed_out", "0", "17 1/4"},
            {"restraint_fixed_height", "1", "24 1/2"},
            {"restraint_moving_ahead", "1", "-4"},
            {"restraint_moving_out", "1", "24"},
            {"restraint_moving_height", "0", "15"},
            {"restraint_shortest", "0", "15"},
            {"restraint_longest", "1", "12"},
            {"tube_carried_by", "0", "upright"},
            {"tube_first_ahead", "0", "5"},
            {"tube_first_out", "0", "15"},
            {"tube_first_height", "0", "22"},
            {"tube_second_ahead", "0", "0"},
            {"tube_second_out", "0", "29"},
            {"tube_second_height", "0", "22 3/4"},
            {"tube_diameter", "0", "7/8"},
            {"boot_length", "0", "3 1/2"},
            {"boot_diameter", "0", "4"},
            {"boot_outer", "2", "short heavy boot"},
            {"joint_datum_offset", "0", "35 mm"},
            {"inner_tilt", "0", "2"},
            {"inner_sweep", "0", "2"},
            {"inner_offset_left", "0", "6"},
            {"inner_height_left", "0", "20 3/4"},
            {"inner_ahead_left", "0", "1/4"},
            {"point_height_left", "2", "23"},
            {"static_camber_left", "0", "-1"},
            {"hub_shift", "2", "1 1/4"},
            {"transaxle_up", "0", "1/2"},
            {"droop_limit", "0", "4 1/2"},
        };
        assertSeen("stop_print", withMoves(changes), FreshnessTest::stops);
    }

    /** To a millionth: how a linkage is come upon leaves the last digits open. */
    private static Object stops(Sizing sizing, Index index) {
        SideOutcome side = side(sizing, index);
        Optional<SideStops> found = side.stops();
        List<Object> figures = new ArrayList<>();
        if (found.isPresent()) {
            SideStops stops = found.get();
            figures.add(StopSentence.of(stops, side, sizing));
            for (int row = 0; row < 2; row++) {
                side.course(row)
                        .ifPresent(
                                course -> {
                                    figures.add(Math.round(1e6 * course.longest()));
                                    figures.add(Math.round(1e6 * course.shortest()));
                                });
            }
            for (ShaftEnd end : ShaftEnd.values()) {
                figures.add(Math.round(1e6 * stops.gap(end).orElseThrow().least()));
                figures.add(Math.round(1e6 * stops.gap(end).orElseThrow().atRide()));
            }
        }
        return figures;
    }

    private static SideOutcome side(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side());
    }

    private static Object chances(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario())
                .side(index.side())
                .chances()
                .<Object>map(chances -> chances)
                .orElse("none");
    }

    private static Object allowed(Sizing sizing, Index index) {
        return side(sizing, index).travelAllowed();
    }

    /** Figures of one side of one scenario. */
    private interface Figures {
        Object of(Sizing sizing, Index index);
    }

    /** Where a change moves a figure the fingerprint is another, and the changes move many. */
    private static void assertSeen(String print, String[][] changes, Figures figures) {
        assertSeen(print, MOVED, changes, figures);
    }

    private static void assertSeen(
            String print, List<TypedColumn> from, String[][] changes, Figures figures) {
        Sizing before = sizing(from);
        int moved = 0;
        for (String[] change : changes) {
            List<TypedColumn> typed = new ArrayList<>(from);
            typed.add(cell(change[0], Integer.parseInt(change[1]), change[2]));
            Sizing after = sizing(typed);
            for (int scenario = 0; scenario < COLUMNS - 1; scenario++) {
                for (Side side : Side.values()) {
                    Index index = new Index(side, scenario, 0);
                    if (!figures.of(before, index).equals(figures.of(after, index))) {
                        moved++;
                        assertThat(print(print, after, index))
                                .as("%s in %s", change[0], index)
                                .isNotEqualTo(print(print, before, index));
                    }
                }
            }
        }
        assertThat(moved).isGreaterThan(changes.length);
    }

    private static CellValue print(String line, Sizing sizing, Index index) {
        return LiveLines.all().line(line).core().at(sizing, index);
    }

    /** Scenario B steered, the drive unit of C pushed by drive. */
    private static final List<TypedColumn> MOVED =
            List.of(
                    cell("kingpin_inclination", 0, "8"),
                    cell("kingpin_inward", 0, "2"),
                    cell("steer_angle", 1, "8"),
                    cell("mount_load", 2, "drive"),
                    cell("mount_drive_up", 0, "1/4"),
                    cell("mount_drive_roll", 0, "2"),
                    cell("mount_overrun_up", 0, "-1/4"));

    private static TypedColumn cell(String name, int place, String text) {
        return new TypedColumn(name, new TreeMap<>(Map.of(place, text)), false);
    }

    private static Sizing sizing(List<TypedColumn> typed) {
        Filling.Report report = read.with(typed);
        assertThat(report.problems()).as("%s", typed).noneMatch(Problem::isError);
        return report.sizing().orElseThrow();
    }

    private static void assertStale(List<String> letters, String name, int place, Object typed) {
        List<String> stale = new ArrayList<>();
        List<String> stamps = stampsWith(name, place, typed).get(Side.LEFT);
        for (int scenario = 0; scenario < COLUMNS; scenario++) {
            if (stamps.get(scenario).equals(STALE)) {
                stale.add(ScenarioOutcome.letter(scenario));
            }
        }
        assertThat(stale).as("%s, %s", name, stamps).isEqualTo(letters);
    }

    /** What the stamps come to when one cell is typed into and nothing filled. */
    private static Map<Side, List<String>> stampsWith(String name, int place, Object typed) {
        CellPlace cell = XlsxBook.open(demo).names().get(name).place(place);
        try {
            demoInPoi.type(cell, value(typed));
            Map<Side, List<String>> stamps = new EnumMap<>(Side.class);
            for (Side side : Side.values()) {
                stamps.put(side, stamps(demoInPoi, demo, side));
            }
            return stamps;
        } finally {
            demoInPoi.type(cell, content(XlsxBook.open(demo), name, place).value());
        }
    }

    private static CellValue value(Object typed) {
        return typed instanceof Double number
                ? CellValue.of(number)
                : typed.equals("") ? CellValue.BLANK : CellValue.of((String) typed);
    }

    private static void fill(Path file) {
        XlsxBook book = XlsxBook.open(file);
        Filling.Report report = Filling.fill(book);
        assertThat(report.problems()).noneMatch(Problem::isError);
        assertThat(report.strayed()).isZero();
        book.save(file);
    }

    /** What the stamps come to when the file is recalculated, scenario by scenario. */
    private static List<String> stamps(Path file, Side side) {
        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            return stamps(poi, file, side);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> stamps(PoiRecalculation poi, Path file, Side side) {
        Area area = XlsxBook.open(file).names().get("travel_stamp" + Contract.suffix(side));
        List<String> stamps = new ArrayList<>();
        for (int scenario = 0; scenario < COLUMNS; scenario++) {
            CellValue value = poi.value(area.place(scenario));
            stamps.add(value instanceof CellValue.Text text ? text.value() : value.toString());
        }
        return stamps;
    }

    private static CellContent content(XlsxBook book, String name, int offset) {
        Area area = book.names().get(name);
        return book.read(List.of(area)).at(area.place(offset));
    }
}
