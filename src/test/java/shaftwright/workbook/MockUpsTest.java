package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.WindowEnd;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CorrectionLine;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.TravelSteps;
import shaftwright.study.Finding;
import shaftwright.study.MockUpWording;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** Mock-up sticks in the demo workbook. */
class MockUpsTest {
    private static final int C = 2;

    @TempDir private Path folder;

    private XlsxBook book(Map<String, List<String>> typed) {
        return XlsxBook.open(MockUpBook.write(folder.resolve("book.xlsx"), typed));
    }

    private Sizing sizing(Map<String, List<String>> typed) {
        return Filling.compute(book(typed)).sizing().orElseThrow();
    }

    private static List<Finding> findings(Sizing sizing, int scenario, Side side) {
        return sizing.verdict(new Index(side, scenario, 0)).orElseThrow().findings();
    }

    private static SideResult result(Sizing sizing, int scenario, Side side) {
        return sizing.result(new Index(side, scenario, 0)).orElseThrow();
    }

    private static String text(XlsxBook book, String name, int row) {
        CellPlace place = book.names().get(name).place(row);
        CellValue value = book.read(List.of(book.names().get(name))).at(place).value();
        return value instanceof CellValue.Text text ? text.value() : "";
    }

    private static Stream<Map<String, List<String>>> books() {
        return Stream.of(
                MockUpBook.typed(),
                MockUpBook.corrected(),
                MockUpBook.unusable(),
                MockUpBook.oneReading("99", ""));
    }

    @ParameterizedTest
    @MethodSource("books")
    void everyFormulaGivesWhatTheCoreGives(Map<String, List<String>> typed) throws Exception {
        Path file = MockUpBook.write(folder.resolve("book.xlsx"), typed);
        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
    }

    @Test
    void mockUpThatContradictsIsAFindingOfTheScenarioThatItWasBuiltAs() {
        Sizing sizing = sizing(MockUpBook.typed());

        for (int scenario = 0; scenario < sizing.scenarios().size(); scenario++) {
            assertThat(findings(sizing, scenario, Side.LEFT).contains(Finding.MOCK_UP_CONTRADICTS))
                    .as("scenario %d", scenario)
                    .isEqualTo(scenario == C);
        }
        assertThat(sizing.mockUp(Side.LEFT).check().orElseThrow().suspicion(false))
                .isEqualTo(Suspicion.PLACES);
    }

    @Test
    void cardOfAMockUpThatContradictsPrintsNoLengths() {
        Map<String, List<String>> typed = MockUpBook.typed();
        typed.put("shop_scenario", List.of("C"));
        XlsxBook book = book(typed);
        Filling.fill(book);
        Path saved = folder.resolve("saved.xlsx");
        book.save(saved);
        XlsxBook filled = XlsxBook.open(saved);

        assertThat(text(filled, "card_cut_left", 0)).startsWith("DO NOT CUT");
        assertThat(text(filled, "card_verdict_left", 0))
                .contains(
                        "the stick bottoms 0.4", " in sooner at ", "than the joints' figures say");
    }

    /** The races lie 0.35 in nearer at every height, within what a tape's steps hide. */
    @Test
    void correctedWindowIsNearerByWhatTheStickFound() {
        SideResult planned = result(sizing(MockUpBook.typed()), C, Side.LEFT);
        Sizing sizing = sizing(MockUpBook.corrected());
        SideResult corrected = result(sizing, C, Side.LEFT);
        CorrectionLine inward = corrected.setup().correction().inward().orElseThrow();

        assertThat(inward.at(0)).isCloseTo(-25.4 * 0.36, within(1.0));
        for (int row : new int[] {TravelSteps.DROOP, TravelSteps.RIDE, TravelSteps.BUMP}) {
            double travel = planned.positions().get(row).travel();
            assertThat(
                            corrected.positions().get(row).inward().spacing()
                                    - planned.positions().get(row).inward().spacing())
                    .isCloseTo(inward.at(travel), within(1e-9));
        }
        assertThat(corrected.length().endToEnd()).isLessThan(planned.length().endToEnd() - 6);
        assertThat(findings(sizing, C, Side.LEFT)).doesNotContain(Finding.MOCK_UP_CONTRADICTS);
    }

    @ParameterizedTest
    @CsvSource({
        "99, '', 'at reading 1, holes 99.00 in apart do not go between the cups, which take at most'",
        "'', 99, 'at reading 1, holes 99.00 in apart do not go between the cups, which take at most'",
        "24 7/16, 26 7/8, 'at reading 1, 24.44 in fully in is not more than 26.88 in fully out'"
    })
    void readingThatNoStickGivesCorrectsNothingAndIsNeverCalm(
            String in, String out, String expected) {
        SideResult planned = result(sizing(MockUpBook.typed()), C, Side.LEFT);
        XlsxBook book = book(MockUpBook.oneReading(in, out));
        Filling.fill(book);
        Path saved = folder.resolve("saved.xlsx");
        book.save(saved);
        Sizing sizing = Filling.compute(XlsxBook.open(saved)).sizing().orElseThrow();

        assertThat(result(sizing, C, Side.LEFT).window()).isEqualTo(planned.window());
        assertThat(sizing.verdict(new Index(Side.LEFT, C, 0)).orElseThrow().text(LengthUnit.INCH))
                .startsWith("Measure again before cutting: the mock-up can't be used: " + expected);
        assertThat(text(XlsxBook.open(saved), "stick_says_left", 0))
                .startsWith("not used: " + expected.substring("at reading 1, ".length()));
    }

    @Test
    void usableReadingsBesideOneThatIsNotStillCorrect() {
        Sizing sizing = sizing(MockUpBook.unusable());
        MockUpCheck check = sizing.mockUp(Side.LEFT).check().orElseThrow();

        assertThat(check.unusable()).hasSize(2);
        assertThat(check.correction().inward().orElseThrow().at(0))
                .isCloseTo(-25.4 * 0.36, within(1.5));
        assertThat(findings(sizing, C, Side.LEFT)).contains(Finding.MOCK_UP_CONTRADICTS);
        assertThat(MockUpWording.summary(check)).endsWith(MockUpWording.SOME_UNUSED);
    }

    @Test
    void whatIsTriedOnACorrectedScenarioIsCorrectedToo() {
        Sizing sizing = sizing(MockUpBook.corrected());

        double tried =
                sizing.variants(C)
                        .orElseThrow()
                        .tried(scenario -> scenario)
                        .orElseThrow()
                        .side(Side.LEFT)
                        .result()
                        .orElseThrow()
                        .window()
                        .width();

        assertThat(tried).isEqualTo(result(sizing, C, Side.LEFT).window().width());
    }

    @Test
    void fixedStickIsHeldAgainstItsPlay() {
        Sizing sizing = sizing(MockUpBook.typed());
        var check = sizing.mockUp(Side.RIGHT).check().orElseThrow();

        assertThat(check.at(0, WindowEnd.OUT)).isPresent();
        // From one joint's bottom to its pull-out: nothing of the window.
        assertThat(check.at(1, WindowEnd.IN)).isEmpty();
        assertThat(check.at(1, WindowEnd.OUT)).isEmpty();
        assertThat(check.at(2, WindowEnd.IN)).isPresent();
        // Below the path.
        assertThat(check.at(3, WindowEnd.OUT)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "stick_scenario_left, Q, stick_scenario, 'a letter from A to ', false",
        "stick_holes_in_left, 23, stick_holes_in, 'Are in and out swapped?', false",
        "stick_holes_in_left, 40, stick_holes_in, 'which no longer stick goes into', false",
        "stick_holes_out_left, 99, stick_holes_out, 'which no longer stick goes into', false",
        "stick_holes_right, '', stick_holes, 'the hole spacing of the fixed stick', true",
        "stick_holes_right, 40, stick_holes, 'which no longer stick goes into', false",
        "stick_height_left, '', stick_height, 'a height beside the reading', true",
        "stick_height_left, 30, stick_height, 'where the hub''s path is known', false",
        "stick_stop_inner_left, '', stick_stop_inner, 'fully in is not judged without', false",
        "stick_inboard_right, '', stick_inboard, 'the end play is not judged without', false",
        "stick_play_left, 1, stick_play, 'the stick''s kind is sliding', false",
        "stick_holes_in_right, 27, stick_holes_in, 'the stick''s kind is fixed', false"
    })
    void whatIsWrongIsSaidByCell(
            String name, String typed, String input, String expected, boolean error) {
        Map<String, List<String>> cells = MockUpBook.typed();
        ArrayList<String> column = new ArrayList<>(cells.getOrDefault(name, List.of("")));
        column.set(0, typed);
        cells.put(name, column);
        List<Problem> problems = Filling.compute(book(cells)).problems();

        assertThat(problems)
                .filteredOn(problem -> problem.expected().contains(expected))
                .isNotEmpty()
                .allSatisfy(
                        problem -> {
                            assertThat(problem.isError()).isEqualTo(error);
                            assertThat(problem.place().orElseThrow().sheet()).isEqualTo("Mock-up");
                        });
    }

    @Test
    void playThatMakesAFixedStickTooLongIsSaidByItsCell() {
        assertThat(Filling.compute(book(MockUpBook.unusable())).problems())
                .filteredOn(problem -> problem.subject().startsWith("End play of a fixed stick"))
                .filteredOn(problem -> problem.expected().contains("cup bottom"))
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.found()).isEqualTo("30.0 in");
                            assertThat(problem.expected()).startsWith("at most ");
                        });
    }

    @Test
    void pinsThatAreTooLongForTheCounterboreAreAskedAbout() {
        Map<String, List<String>> cells = MockUpBook.typed();
        cells.put("counterbore_inner", List.of("", "", "1/8"));
        cells.put("stick_pin_length_left", List.of("2"));
        cells.put("stick_seat_left", List.of("1 3/4"));
        assertThat(Filling.compute(book(cells)).problems())
                .filteredOn(
                        problem ->
                                problem.expected()
                                        .startsWith("less than the counterbore's diameter"))
                .singleElement()
                .satisfies(problem -> assertThat(problem.isError()).isFalse());
    }

    @Test
    void correctionOfOtherJointsIsAskedAbout() {
        assertThat(Filling.compute(book(MockUpBook.corrected())).problems())
                .filteredOn(problem -> problem.found().startsWith("yes, with other joints"))
                .isNotEmpty()
                .noneMatch(Problem::isError);
    }

    @Test
    void lengthsAreSaidInTheWorkbooksUnit() {
        Sizing sizing = sizing(MockUpBook.typed());
        assertThat(
                        MockUpWording.correction(
                                sizing.mockUp(Side.LEFT).check().orElseThrow(),
                                LengthUnit.MILLIMETRE))
                .startsWith("Fully in: -")
                .contains(" mm at ", " mm droop, ", " mm bump; fully out: ")
                .endsWith(" mm added to the doubt.");
    }
}
