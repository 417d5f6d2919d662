package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;

class ShowCommandTest {
    @TempDir private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"", "--all"})
    void linesFitIntoEightyColumns(String option) {
        Path inches = Demo.inches(folder);
        Path millimetres = Demo.millimetres(folder);
        for (Path file : List.of(inches, millimetres)) {
            Run run = option.isEmpty() ? Run.of("show", file) : Run.of("show", option, file);

            assertThat(run.code()).isZero();
            assertThat(run.out().lines().filter(line -> !line.startsWith("warning: ")))
                    .hasSizeGreaterThan(60)
                    .allSatisfy(line -> assertThat(line.length()).as(line).isLessThan(81));
        }
    }

    @Test
    void noLineEndsWithinAFigure() {
        Run run = Run.of("show", "--all", Demo.inches(folder));

        assertThat(run.out().lines())
                .noneMatch(line -> line.matches(" +(in|lb·ft|%)(\\W.*)?"))
                .noneMatch(line -> line.matches(" +[0-9]+/[0-9]+ in.*"));
    }

    @Test
    void saysBySideWhetherToGoOnMeasuring() throws IOException {
        Path file = Demo.inches(folder);

        assertThat(Run.of("show", "--side", "right", file).out())
                .containsSubsequence("Go on measuring?", "right", "The largest doubt", "Caution")
                .doesNotContain("\n  left  ");
        assertThat(Run.of("check", file).out())
                .contains("note: " + file.getFileName() + ": left: The largest doubt of");
        Map<?, ?> next = (Map<?, ?>) path(file, "left").get("next_reading");
        assertThat((Double) next.get("doubt_largest_then_mm"))
                .isLessThan((Double) next.get("doubt_largest_mm"));
    }

    @Test
    void jsonTellsStepByStepHowALengthCameAboutWhenAsked() throws IOException {
        Path file = Demo.inches(folder);

        String asked = Run.of("show", "--json", "--explain", file).out();
        Map<?, ?> scenario = (Map<?, ?>) ((List<?>) json(asked).get("scenarios")).get(0);
        List<?> steps = (List<?>) ((Map<?, ?>) scenario.get("left")).get("derivation");
        Map<?, ?> last = (Map<?, ?>) steps.get(steps.size() - 1);

        assertThat(last.get("step")).isEqualTo("SLACK");
        assertThat((List<?>) last.get("figures")).hasSize(2);
        assertThat(Run.of("show", "--json", file).out()).doesNotContain("derivation");
    }

    @Test
    void withoutAScenarioOnTheCardsThereIsNothingToExplain() {
        Path file = Demo.inches(folder);
        assertThat(Run.of("fill", "--set", "shop_scenario=", file).code()).isZero();

        assertThat(Run.of("show", "--explain", file).out()).contains("choose one on the left card");
    }

    /** A terminal has 24 lines, the last of them for the next command. */
    @Test
    void everyScenarioFitsOntoAScreen() {
        String[] blocks = Run.of("show", Demo.inches(folder)).out().split("\n\n");

        assertThat(blocks).hasSizeGreaterThan(5);
        for (String block : blocks) {
            assertThat(block.lines().toList()).hasSizeLessThan(24);
        }
    }

    @Test
    void bothSidesStandBesideEachOtherWithWhatIsCommonSaidOnce() {
        String shown = Run.of("show", "--scenario", "B", Demo.inches(folder)).out();

        assertThat(shown)
                .startsWith("B Small joints from the shelf\n  DO NOT CUT. Does not fit:\n")
                .contains("  - Left: No length works", "  - Right: No length works")
                .containsOnlyOnce("  - Both sides: The weakest part ")
                .containsPattern("window +short by 0\\.\\d+ in +short by 0\\.\\d+ in\n")
                .containsPattern("before bottoming +\\d\\.\\d+ in at .+ in at ")
                .containsPattern("before pull-out +\\d\\.\\d+ in at .+ in at ")
                .containsPattern("worst angle +inner \\d+\\.\\d° of 19\\.0° +inner ")
                .containsPattern("weakest part +factor 0\\.73, flange bolts")
                .containsPattern("cost +\\d+\\.\\d\\d\n");
    }

    @Test
    void onlyTheSideThatIsNotToBeCutSaysSo() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "distance_first_left[5]=26 9/16", file);

        assertThat(Run.of("show", "--scenario", "A", file).out())
                .contains("  Left: DO NOT CUT. ")
                .doesNotContain("Right: DO NOT CUT")
                .containsPattern("end to end, E +- +\\d+\\.\\d+ in = ");
    }

    @Test
    void strengthOfBothSidesIsSaidOnceWhereItIsTheSame() {
        assertThat(Run.of("show", "--all", "--scenario", "A", Demo.inches(folder)).out())
                .containsOnlyOnce(": shaft bar")
                .contains("    takes           same as left");
        assertThat(
                        Run.of(
                                        "show",
                                        "--all",
                                        "--side",
                                        "right",
                                        "--scenario",
                                        "A",
                                        Demo.inches(folder))
                                .out())
                .containsOnlyOnce(": shaft bar");
    }

    @Test
    void oneSideOfOneScenario() {
        Run run = Run.of("show", "--scenario", "b", "--side", "right", Demo.inches(folder));

        assertThat(run.out())
                .startsWith("B Small joints from the shelf, right\n")
                .doesNotContainIgnoringCase("left")
                .doesNotContain("As measured");
    }

    /** A shaft that must not be cut: nothing in the terminal that one could cut by. */
    @Test
    void noLengthsAreShownOfAScenarioThatIsNotToBeCut() {
        Path file = Demo.inches(folder);

        assertThat(shown(file, "A"))
                .contains("end to end, E", "clip to clip, K", "E from, to", "weakest part");
        assertThat(all(file, "A"))
                .contains("end to end, E", "clip to clip, K", "cut off", "E from ", "with E ");
        assertThat(shown(file, "B"))
                .contains("  DO NOT CUT. Does not fit:\n  - No length works, short by ")
                .contains("\n  - The weakest part (")
                .doesNotContain("end to end, E", "clip to clip, K", "E from");
        assertThat(all(file, "B"))
                .contains("  DO NOT CUT. Does not fit:\n  - No length works, short by ")
                .contains("\n  - The weakest part (")
                .contains(": no length fits\n")
                .doesNotContain(
                        "end to end, E", "clip to clip, K", "cut off", "E from ", "with E ");
    }

    @Test
    void wrongReadingKeepsLengthsBack() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "distance_first_left[5]=26 9/16", file);

        String warned = "  DO NOT CUT. Measure again before cutting:\n  - The readings contradict ";
        assertThat(shown(file, "A"))
                .contains(warned)
                .doesNotContain("end to end, E", "clip to clip, K", "E from");
        assertThat(all(file, "A"))
                .contains(warned)
                .doesNotContain(
                        "end to end, E", "clip to clip, K", "cut off", "E from ", "with E ");
        assertThat(Run.of("show", "--scenario", "A", "--side", "right", file).out())
                .contains("end to end, E");
    }

    @Test
    void onlyTheWindowIsShownWhereTheShopIncrementMissesIt() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "shop_increment=1", "--set", "margin_inward[A]=1", file);

        String warned = "  DO NOT CUT YET. Fits, but:\n  - The window is ";
        assertThat(shown(file, "A"))
                .contains(warned, "E from, to")
                .doesNotContain("end to end, E", "clip to clip, K");
        assertThat(all(file, "A"))
                .contains(warned, "E from ")
                .doesNotContain("end to end, E", "clip to clip, K", "cut off", "with E ");
    }

    @Test
    void noCutsAreShownWithoutABlank() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "hub_shift[A]=4", file);

        String warned = "  NO CUTS YET. Fits, but:\n  - No blank on Parts gives ";
        assertThat(shown(file, "A"))
                .contains(warned, "end to end, E", "clip to clip, K", "E from, to");
        assertThat(all(file, "A"))
                .contains(warned, "end to end, E", "clip to clip, K", "E from ")
                .doesNotContain("cut off");
    }

    /** What the left side of a scenario shows first. */
    private static String shown(Path file, String scenario) {
        return Run.of("show", "--scenario", scenario, "--side", "left", file).out();
    }

    /** All that the left side of a scenario has, each text on one line. */
    private static String all(Path file, String scenario) {
        return unwrapped(
                Run.of("show", "--all", "--scenario", scenario, "--side", "left", file).out());
    }

    private static String unwrapped(String shown) {
        return shown.replaceAll("\n {20}(?=\\S)", " ");
    }

    @Test
    void jsonKeepsNumbersAndSaysWhatTheCardPrints() throws IOException {
        List<?> scenarios =
                (List<?>)
                        json(Run.of("show", "--json", Demo.inches(folder)).out()).get("scenarios");

        Map<?, ?> fits = (Map<?, ?>) ((Map<?, ?>) scenarios.get(0)).get("left");
        Map<?, ?> none = (Map<?, ?>) ((Map<?, ?>) scenarios.get(1)).get("left");
        assertThat(fits.get("card")).isEqualTo("ALL");
        assertThat(none.get("card")).isEqualTo("NOTHING");
        assertThat(none.get("end_to_end_mm")).isInstanceOf(Double.class);
    }

    @Test
    void refusesASideThatIsNone() {
        Run run = Run.of("show", "--side", "driver", Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("--side: found \"driver\"; expected left or right.");
    }

    @Test
    void jsonHasTheNumbersOfTheWorkbook() throws IOException {
        Path file = Demo.inches(folder);

        Map<String, Object> report = json(Run.of("show", "--json", file).out());

        assertThat(report)
                .containsEntry("contract", (double) Contract.VERSION)
                .containsEntry("unit", "inch");
        List<?> scenarios = (List<?>) report.get("scenarios");
        assertThat(scenarios).hasSize(5);
        Map<?, ?> left = (Map<?, ?>) ((Map<?, ?>) scenarios.get(0)).get("left");
        assertThat(left.get("end_to_end_mm")).isEqualTo(number(file, "e_final_left"));
        assertThat(left.get("slack_in_mm")).isEqualTo(number(file, "worst_slack_in_left"));
        assertThat((List<?>) left.get("positions")).hasSize(25);
        Map<?, ?> bump = (Map<?, ?>) ((List<?>) left.get("positions")).get(24);
        int place = 24 * Demo.SCENARIOS;
        assertThat(Math.toDegrees((Double) bump.get("outer_front_rad")))
                .isCloseTo(number(file, "table_front_out_left", place), within(1e-9));
        assertThat((Double) bump.get("track_mm"))
                .isCloseTo(25.4 * number(file, "table_track_left", place), within(1e-9));
    }

    @Test
    void jsonNamesReadingsThatTheOthersSpeakAgainst() throws IOException {
        Path file = Demo.inches(folder);
        assertThat(path(file, "left"))
                .containsEntry("contradiction", "false")
                .containsEntry("suspect_rows", List.of())
                .containsEntry("suspects", List.of());

        Run run =
                Run.of(
                        "fill",
                        "--set",
                        "distance_first_left[5]=26 9/16",
                        "--set",
                        "distance_second_right[7]=26 5/16",
                        file);

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Measure again before cutting");
        Map<?, ?> left = path(file, "left");
        assertThat(left.get("contradiction")).isEqualTo("true");
        assertThat(left.get("suspect_rows")).isEqualTo(List.of(5.0));
        Map<?, ?> suspect = (Map<?, ?>) ((List<?>) left.get("suspects")).get(0);
        assertThat(suspect.get("row")).isEqualTo(5.0);
        assertThat(suspect.get("quantity")).isEqualTo("distance");
        assertThat(suspect.get("repeat")).isEqualTo("null");
        assertThat((Double) suspect.get("read_mm")).isCloseTo(26.5625 * 25.4, within(1e-9));
        assertThat((Double) suspect.get("expected_mm")).isCloseTo(26.19 * 25.4, within(1.0));
        Map<?, ?> right = path(file, "right");
        assertThat(right.get("contradiction")).isEqualTo("true");
        assertThat(right.get("suspect_rows")).isEqualTo(List.of());
        Map<?, ?> mistyped = (Map<?, ?>) ((List<?>) right.get("suspects")).get(0);
        assertThat(mistyped.get("row")).isEqualTo(7.0);
        assertThat(mistyped.get("repeat")).isEqualTo(2.0);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> path(Path file, String side) throws IOException {
        Map<String, Object> report = json(Run.of("show", "--json", file).out());
        return (Map<String, Object>) ((Map<?, ?>) report.get("paths")).get(side);
    }

    @Test
    void jsonHasStrengthChancesAndWarnings() throws IOException {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "trial_count=500", "--set", "done_level=no", file);

        Map<String, Object> report = json(Run.of("show", "--json", file).out());

        Map<?, ?> first = (Map<?, ?>) ((List<?>) report.get("scenarios")).get(0);
        Map<?, ?> strength = (Map<?, ?>) first.get("strength");
        assertThat(strength.get("least_factor")).isEqualTo(number(file, "result_factor"));
        double least = (Double) strength.get("least_factor");
        double found = Double.POSITIVE_INFINITY;
        for (Object part : (List<?>) strength.get("parts")) {
            found = Math.min(found, (Double) ((Map<?, ?>) part).get("factor"));
        }
        assertThat(found).isEqualTo(least);
        Map<?, ?> chances = (Map<?, ?>) ((Map<?, ?>) first.get("left")).get("chances");
        assertThat(chances.get("trials")).isEqualTo(500.0);
        assertThat((Double) chances.get("bottoming")).isBetween(0.0, 1.0);
        assertThat((List<?>) report.get("warnings"))
                .singleElement()
                .asString()
                .contains("Level on stands not ticked");
    }

    @Test
    void tableHasStrengthAndChances() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "trial_count=500", file);

        assertThat(all(file, "A"))
                .contains("of 500 trials")
                .containsPattern("takes +[0-9]+ lb·ft, factor");
    }

    /** The strap's length by Pythagoras: 3 out and 10 up; what it may open to is the demo's. */
    @Test
    void jsonHasDampersStrapsAndBootGaps() throws IOException {
        Path file = Demo.inches(folder);

        Map<String, Object> report = json(Run.of("show", "--json", file).out());

        Map<?, ?> path = (Map<?, ?>) ((Map<?, ?>) report.get("paths")).get("left");
        Map<?, ?> strap = (Map<?, ?>) ((List<?>) path.get("restraints")).get(1);
        assertThat(strap.get("kind")).isEqualTo("STRAP");
        assertThat((Double) strap.get("length_ride_mm"))
                .isCloseTo(25.4 * Math.hypot(3, 10), within(1e-6));
        assertThat(strap.get("open_mm")).isEqualTo(13.4375 * 25.4);
        assertThat((Double) strap.get("stops_down_mm"))
                .isCloseTo(25.4 * number(file, "restraint_down_left", 1), within(1e-9));
        Map<?, ?> first = (Map<?, ?>) ((List<?>) report.get("scenarios")).get(0);
        Map<?, ?> left = (Map<?, ?>) first.get("left");
        assertThat(left.get("stopped_up_by")).isEqualTo("null");
        assertThat(left.get("travel_up_stop")).isEqualTo("DAMPER_CLOSED");
        Map<?, ?> course = (Map<?, ?>) ((List<?>) left.get("restraints")).get(0);
        assertThat((Double) course.get("longest_mm"))
                .isCloseTo(25.4 * number(file, "span_longest_left", 0), within(1e-9));
        assertThat((Double) course.get("shortest_mm"))
                .isLessThan((Double) course.get("longest_mm"));
        Map<?, ?> gap = (Map<?, ?>) left.get("outer_boot_gap");
        assertThat((Double) gap.get("least_mm"))
                .isCloseTo(25.4 * number(file, "stop_gap_out_left"), within(1e-9));
        assertThat((Double) gap.get("ride_mm")).isGreaterThan((Double) gap.get("least_mm"));
    }

    @Test
    void longestTravelIsInTableAndJson() throws IOException {
        Path file = Demo.inches(folder);

        Map<String, Object> report = json(Run.of("show", "--json", file).out());
        Map<?, ?> second = (Map<?, ?>) ((List<?>) report.get("scenarios")).get(1);
        Map<?, ?> left = (Map<?, ?>) second.get("left");
        Map<?, ?> alone = (Map<?, ?>) left.get("stops_alone");
        assertThat(alone.containsKey("BOTTOMS")).isTrue();
        double strap = (Double) ((Map<?, ?>) alone.get("RESTRAINT")).get("down_mm");
        assertThat(strap).isEqualTo(left.get("travel_down_mm"));
        Map<?, ?> longest = (Map<?, ?>) left.get("longest_travel");

        // Scenario B does not fit its wanted travel, so no blank can give that.
        double wanted = (Double) left.get("bump_mm") - (Double) left.get("droop_mm");
        assertThat((Double) longest.get("total_mm")).isLessThan(wanted);
        assertThat((Double) longest.get("total_mm"))
                .isCloseTo(25.4 * number(file, "longest_total_left", 1), within(1e-9));
        assertThat(all(file, "B"))
                .containsPattern("most travel +any blank, \\d+\\.\\d+ in: .* up \\(margin before ")
                .containsPattern("margins kept, with a shaft from 31-spline blank");
    }

    @Test
    void tableHasDampersStrapsAndBootGaps() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "restraint_shortest[1]=15", "--set", "bump_limit[B]=2 in", file);

        Run run = Run.of("show", "--all", "--side", "left", file);

        assertThat(unwrapped(run.out()))
                .containsPattern(
                        "dampers, straps +damper closed at 4\\.\\d+ in bump, 5.0 in wanted")
                .containsPattern("outer boot +clears the tube of row 1 by 1\\.\\d+ in at ")
                .contains("droop strap (invented): 10.440 in at ride, motion ratio 0.62, slackens");
    }

    @Test
    void everyNumberOfASideNamesItsUnit() throws IOException {
        Map<String, Object> report = json(Run.of("show", "--json", Demo.inches(folder)).out());
        for (Object scenario : (List<?>) report.get("scenarios")) {
            for (Map.Entry<?, ?> field :
                    ((Map<?, ?>) ((Map<?, ?>) scenario).get("right")).entrySet()) {
                if (field.getValue() instanceof Double) {
                    assertThat((String) field.getKey()).matches(".*(_mm|_rad)");
                }
            }
        }
    }

    @Test
    void inputsOfTheReportMakeTheSameWorkbookAgain() throws IOException {
        Path file = Demo.inches(folder);
        String shown = Run.of("show", "--json", file).out();
        Path report = Files.writeString(folder.resolve("report.json"), shown);
        Path again = folder.resolve("again.xlsx");

        Run made = Run.of("new", "--inputs", report, again);

        assertThat(made.code()).as(made.err()).isZero();
        assertThat(Demo.all(again)).isEqualTo(Demo.all(file));
        assertThat(Run.of("show", "--json", again).out().replace("again.xlsx", "forest.xlsx"))
                .isEqualTo(shown);
    }

    @Test
    void inputsAloneCanBeFedToAFill() throws IOException {
        Path file = Demo.millimetres(folder);
        String shown = Run.of("show", "--json", file).out();
        int start = shown.indexOf('{', shown.indexOf("\"inputs\""));
        Path inputs =
                Files.writeString(
                        folder.resolve("in.json"),
                        shown.substring(start, shown.indexOf("\"scenarios\"") - 4));
        Path empty = folder.resolve("empty.xlsx");
        Run.of("new", "--unit", "mm", empty);

        Run filled = Run.of("fill", "--inputs", inputs, empty);

        assertThat(filled.code()).as(filled.err()).isZero();
        assertThat(Demo.all(empty)).isEqualTo(Demo.all(file));
    }

    @Test
    void brokenInputsNameTheirLine() throws IOException {
        Path inputs = Files.writeString(folder.resolve("in.json"), "{\n\"unit\": mm\n}");

        Run run = Run.of("fill", "--inputs", inputs, Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("in.json, line 2: found no valid JSON near ");
    }

    @Test
    void inputsMustBeTextsNumbersOrLists() throws IOException {
        Path inputs = Files.writeString(folder.resolve("in.json"), "{\"hub_shift\": [true]}");

        Run run = Run.of("fill", "--inputs", inputs, Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("expected a text, a number or a list of them for hub_shift");
    }

    private static double number(Path file, String name) {
        return number(file, name, 0);
    }

    private static double number(Path file, String name, int offset) {
        return ((CellValue.Numeric) Demo.cell(file, name, offset).value()).value();
    }

    private static Map<String, Object> json(String text) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            return object(parser);
        }
    }

    private static Map<String, Object> object(JsonParser parser) throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            object.put(name, value(parser, parser.nextToken()));
        }
        return object;
    }

    private static Object value(JsonParser parser, JsonToken token) throws IOException {
        if (token == JsonToken.START_OBJECT) {
            return object(parser);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Object> list = new ArrayList<>();
            for (JsonToken next = parser.nextToken();
                    next != JsonToken.END_ARRAY;
                    next = parser.nextToken()) {
                list.add(value(parser, next));
            }
            return list;
        }
        return token.isNumeric() ? (Object) parser.getDoubleValue() : parser.getText();
    }
}
