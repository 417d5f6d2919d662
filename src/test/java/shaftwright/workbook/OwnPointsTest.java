package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.live.LiveLines;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Position;
import shaftwright.study.SideDrawing;
import shaftwright.study.ViewPart;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageSolver;
import shaftwright.suspension.Vector;
import shaftwright.xlsx.XlsxBook;

/** Scenarios of the demo with pick-up points of their own: arms an inch longer. All invented. */
class OwnPointsTest {
    private static final int B = 1;
    private static final String[] LONGER = {
        "Outer datum",
        "upper wishbone, ball joint",
        "lower wishbone, ball joint",
        "toe link, hub end"
    };

    @TempDir private static Path shared;
    @TempDir private Path folder;
    private static Path own;
    private static Sizing sizing;

    @BeforeAll
    static void fill() {
        own = shared.resolve("own.xlsx");
        DemoBook.write(own, withLongerArms(), DemoBook.scenarios());
        XlsxBook book = XlsxBook.open(own);
        Filling.Report report = Filling.fill(book);
        assertThat(report.problems()).noneMatch(Problem::isError);
        sizing = report.sizing().orElseThrow();
        book.save(own);
    }

    /** Scenario B's arms an inch longer on the left side. */
    private static Map<String, List<String>> withLongerArms() {
        Map<String, List<String>> typed = LinkageSourceTest.byLinkage();
        typed.put("own_scenario", List.of("B", "b", "B", "B"));
        typed.put("own_side", List.of("left", "left", "Left", "left"));
        typed.put("own_point", List.of(LONGER));
        typed.put("own_out", List.of("32 15/16", "30 5/8", "31 5/8", "31 5/16"));
        typed.put("shop_scenario", List.of("B"));
        return typed;
    }

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws Exception {
        try (PoiRecalculation poi = PoiRecalculation.of(own)) {
            assertThat(Agreement.of(XlsxBook.open(own), poi::value).differences()).isEmpty();
        }
    }

    /** The same points typed as those of all scenarios: another way to the same path. */
    @Test
    void scenarioStandsAsItWouldWereThePointsThoseOfAll() {
        Sizing all =
                sizing(
                        own,
                        typed("outer_out_left", 0, "32 15/16"),
                        typed("point_out_left", 2, "30 5/8"),
                        typed("point_out_left", 5, "31 5/8"),
                        typed("point_out_left", 7, "31 5/16"),
                        typed("own_scenario", 0, "", "", "", ""),
                        typed("own_side", 0, "", "", "", ""),
                        typed("own_point", 0, "", "", "", ""),
                        typed("own_out", 0, "", "", "", ""));
        List<Position> wanted = positions(all, B, Side.LEFT);
        List<Position> found = positions(sizing, B, Side.LEFT);
        assertThat(found).hasSameSizeAs(wanted);
        for (int row = 0; row < wanted.size(); row++) {
            assertThat(found.get(row).distance())
                    .isCloseTo(wanted.get(row).distance(), within(1e-9));
            assertThat(found.get(row).hub().camber())
                    .isCloseTo(wanted.get(row).hub().camber(), within(1e-12));
        }
    }

    @Test
    void othersAreWhereTheyWere() {
        Sizing none = sizing(own, cleared());
        for (int scenario = 0; scenario < DemoBook.scenarios(); scenario++) {
            for (Side side : Side.values()) {
                if (sizing.scenario(scenario).side(side).result().isPresent()
                        && !(scenario == B && side == Side.LEFT)) {
                    assertThat(positions(sizing, scenario, side))
                            .isEqualTo(positions(none, scenario, side));
                }
            }
        }
        double before = positions(none, B, Side.LEFT).get(12).distance();
        assertThat(positions(sizing, B, Side.LEFT).get(12).distance())
                .isCloseTo(before + 25.4, within(0.5));
    }

    /** A pitched hub is drawn by curves; the linkage's own solver moves it by its ties. */
    @Test
    void drawingShowsTheScenariosOwnPoints() {
        SideDrawing drawing = sizing.drawing(Side.LEFT).orElseThrow();
        Linkage linkage = sizing.path(Side.LEFT, B).linkage().linkage().orElseThrow();
        LinkageSolver solver = new LinkageSolver(linkage);
        assertThat(solver.moveTo(drawing.stand(2).travel())).isTrue();
        Vector ball = solver.pose().carry(linkage.points().get(2));
        assertThat(drawing.point(2, 2).y()).isCloseTo(ball.y(), within(0.03));
        assertThat(drawing.point(2, ViewPart.RIDE).y()).isCloseTo(30.625 * 25.4, within(0.03));
        Vector mirrored = sizing.drawing(Side.RIGHT).orElseThrow().point(2, ViewPart.RIDE);
        assertThat(mirrored.y()).isCloseTo(29.625 * 25.4, within(0.03));
    }

    @Test
    void movedPointMakesItsScenarioUnusableUntilTheNextFill() throws IOException {
        Path moved = changed("own_out", 1, "30 3/4");

        try (PoiRecalculation poi = PoiRecalculation.of(moved)) {
            assertThat(poi.value(place(moved, "own_stamp_left", B)))
                    .isEqualTo(CellValue.of("out of date: fill again"));
            assertThat(text(poi, moved, "side_trouble_left", B)).contains("fill again");
            assertThat(text(poi, moved, "side_trouble_right", B)).isEmpty();
            assertThat(text(poi, moved, "side_trouble_left", 0)).isEmpty();
        }
        XlsxBook book = XlsxBook.open(moved);
        Filling.fill(book);
        book.save(moved);
        try (PoiRecalculation poi = PoiRecalculation.of(moved)) {
            assertThat(text(poi, moved, "own_stamp_left", B)).isEqualTo("current");
            assertThat(text(poi, moved, "side_trouble_left", B)).isEmpty();
        }
    }

    @Test
    void fingerprintsSeeEveryChangeOfTheRows() {
        Object[][] changes = {
            {"own_out", 2, "31 11/16"},
            {"own_ahead", 2, "3/8"},
            {"own_height", 3, "15 1/16"},
            {"own_side", 0, "both"},
            {"own_scenario", 3, "C"},
        };
        for (Object[] change : changes) {
            Sizing after =
                    sizing(own, typed((String) change[0], (int) change[1], (String) change[2]));
            for (String print : new String[] {"own_print", "travel_print"}) {
                assertThat(figure(after, print)).isNotEqualTo(figure(sizing, print));
            }
            assertThat(LiveLines.all().line("column_print").core().at(after, index(B)))
                    .isNotEqualTo(LiveLines.all().line("column_print").core().at(sizing, index(B)));
        }
    }

    @Test
    void whatIsWrongIsSaidOfItsCell() {
        refused("own_scenario", 0, "Q", "\"Q\"; expected a letter from A to");
        refused("own_scenario", 0, "", "nothing; expected a letter");
        refused(
                "own_point",
                1,
                "upper arm",
                "\"upper arm\"; expected upper wishbone, front pivot;");
        refused("own_out", 2, "", "nothing; expected where the point is in this scenario");
        refused("own_height", 0, "18", "expected nothing: all scenarios have one ride height");
        refused("own_point", 1, "outer datum", "expected one row per point; row 1 has it");
        refused("own_side", 1, "rear", "\"rear\"; expected");
        refused("own_out", 2, "12 in 3", "left over after the number");
        refused(
                "path_source_left",
                0,
                "measured",
                "while the hub path of the left side comes from readings");
    }

    @Test
    void unreachableTravelNamesScenarioPartAndEnd() {
        Filling.Report report =
                report(own, typed("own_out", 3, "14"), typed("own_ahead", 3, "-10"));
        assertThat(report.problems())
                .filteredOn(Problem::isError)
                .extracting(Problem::toString)
                .anySatisfy(
                        text ->
                                assertThat(text)
                                        .contains("points of scenario B")
                                        .contains("cell B")
                                        .contains("can't reach at"));
    }

    private static void refused(String name, int row, String text, String said) {
        Filling.Report report = report(own, typed(name, row, text));
        assertThat(report.problems())
                .as(name + " " + text)
                .filteredOn(Problem::isError)
                .extracting(Problem::toString)
                .anySatisfy(problem -> assertThat(problem).contains(said).contains("cell "));
    }

    private static List<Position> positions(Sizing sizing, int scenario, Side side) {
        return sizing.scenario(scenario).side(side).result().orElseThrow().positions();
    }

    private static TypedColumn[] cleared() {
        List<TypedColumn> cleared = new ArrayList<>();
        for (Input input : Contract.inputs(Grid.OWN_POINT)) {
            cleared.add(typed(input.name(), 0, "", "", "", ""));
        }
        return cleared.toArray(new TypedColumn[0]);
    }

    private static TypedColumn typed(String name, int first, String... texts) {
        TreeMap<Integer, String> cells = new TreeMap<>();
        for (int i = 0; i < texts.length; i++) {
            cells.put(first + i, texts[i]);
        }
        return new TypedColumn(name, cells, false);
    }

    private static Filling.Report report(Path file, TypedColumn... typed) {
        return Filling.fill(XlsxBook.open(file), merged(typed));
    }

    /** One column a name. */
    private static List<TypedColumn> merged(TypedColumn... typed) {
        TreeMap<String, TreeMap<Integer, String>> byName = new TreeMap<>();
        for (TypedColumn column : typed) {
            byName.computeIfAbsent(column.definedName(), name -> new TreeMap<>())
                    .putAll(column.texts());
        }
        List<TypedColumn> merged = new ArrayList<>();
        byName.forEach((name, texts) -> merged.add(new TypedColumn(name, texts, false)));
        return merged;
    }

    private static Sizing sizing(Path file, TypedColumn... typed) {
        Filling.Report report = report(file, typed);
        assertThat(report.problems()).noneMatch(Problem::isError);
        return report.sizing().orElseThrow();
    }

    private static Index index(int scenario) {
        return new Index(Side.LEFT, scenario, 0);
    }

    private static CellValue figure(Sizing sizing, String name) {
        return LiveLines.all().line(name).core().at(sizing, index(B));
    }

    private Path changed(String name, int place, String text) throws IOException {
        Path file = folder.resolve(name + ".xlsx");
        Files.copy(own, file);
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(book.names().get(name).place(place), CellValue.of(text)));
        book.save(file);
        return file;
    }

    private static String text(PoiRecalculation poi, Path file, String name, int offset) {
        return ((CellValue.Text) poi.value(place(file, name, offset))).value();
    }

    private static CellPlace place(Path file, String name, int offset) {
        return XlsxBook.open(file).names().get(name).place(offset);
    }
}
