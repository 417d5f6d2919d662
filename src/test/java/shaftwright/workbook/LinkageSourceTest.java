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
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.live.LiveLines;
import shaftwright.reading.SidePath;
import shaftwright.reading.Sizing;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.HubPath;
import shaftwright.xlsx.XlsxBook;

/** The demo's linkage as the source of its hub paths. */
public class LinkageSourceTest {
    private static final String STALE = "out of date: fill again";

    @TempDir private static Path shared;
    @TempDir private Path folder;
    private static Path measured;
    private static Path chosen;

    @BeforeAll
    static void makeDemos() {
        measured = filled(DemoBook.typed(), shared.resolve("measured.xlsx"));
        chosen = filled(byLinkage(), shared.resolve("linkage.xlsx"));
    }

    /** The demo's typed cells with both paths from the linkage. */
    public static Map<String, List<String>> byLinkage() {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("path_source_left", List.of("linkage"));
        typed.put("path_source_right", List.of("Linkage"));
        return typed;
    }

    private static Path filled(Map<String, List<String>> typed, Path file) {
        DemoBook.write(file, typed, DemoBook.scenarios());
        XlsxBook book = XlsxBook.open(file);
        assertThat(Filling.fill(book).problems()).noneMatch(Problem::isError);
        book.save(file);
        return file;
    }

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws Exception {
        try (PoiRecalculation poi = PoiRecalculation.of(chosen)) {
            assertThat(Agreement.of(XlsxBook.open(chosen), poi::value).differences()).isEmpty();
        }
    }

    /** A semi-trailing arm on the left, no readings there, and the right the same as the left. */
    @Test
    void everyFormulaGivesWhatTheCoreGivesWithoutReadings() throws Exception {
        Map<String, List<String>> typed = byLinkage();
        for (String name : new String[] {"height", "distance_first", "distance_second"}) {
            typed.put(name + "_left", List.of());
        }
        typed.put("distance_third_left", List.of());
        typed.put("fore_aft_left", List.of());
        typed.put("camber_left", List.of());
        typed.put("toe_left", List.of());
        typed.put("right_side", List.of("same as left"));
        typed.put("linkage_kind", List.of("semi-trailing arm"));
        typed.put("point_ahead_left", List.of("12", "16"));
        typed.put("point_out_left", List.of("10", "24"));
        typed.put("point_height_left", List.of("19", "19 1/2"));
        Path file = filled(typed, folder.resolve("arm.xlsx"));

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            Agreement agreement = Agreement.of(XlsxBook.open(file), poi::value);
            assertThat(agreement.differences()).isEmpty();
        }
        Sizing sizing = Filling.compute(XlsxBook.open(file)).sizing().orElseThrow();
        assertThat(sizing.path(Side.RIGHT).chosen()).isEqualTo(sizing.path(Side.LEFT).chosen());
        assertThat(sizing.path(Side.RIGHT).mayGiveVerdict()).isTrue();
        assertThat(sizing.scenario(0).side(Side.RIGHT).result()).isPresent();
    }

    @Test
    void tapeAndLinkageOfTheDemoTellOneStory() {
        Sizing sizing = Filling.compute(XlsxBook.open(measured)).sizing().orElseThrow();
        for (Side side : Side.values()) {
            SidePath path = sizing.path(side);
            assertThat(path.linkage().calibration().orElseThrow().agreement())
                    .isEqualTo(Calibration.Agreement.WITHIN_TAPE);
            assertThat(path.linkage().agreement()).startsWith("Tape and linkage agree: ");
            assertThat(path.linkage().status())
                    .as("in the workbook's own unit")
                    .matches(
                            "double wishbone with toe link: curves within 0\\.000\\d\\d in and .*");
            assertThat(path.chosen()).isEqualTo(path.readings().path().map(p -> p.path()));
            HubPath linkage = path.linkage().doubtedPath().orElseThrow();
            for (double t = -115; t <= 125; t += 20) {
                assertThat(linkage.at(t).distance())
                        .isCloseTo(path.chosen().get().at(t).distance(), within(2.5));
            }
        }
    }

    /** The figures of the last fill are there: turning to the other source needs none. */
    @Test
    void sourceIsChangedInTheSpreadsheetAlone() throws IOException {
        Path turned = typed(measured, "path_source_left", 0, "linkage");
        Sizing byLinkage = Filling.compute(XlsxBook.open(chosen)).sizing().orElseThrow();

        try (PoiRecalculation poi = PoiRecalculation.of(turned)) {
            CellValue.Numeric squared =
                    (CellValue.Numeric) poi.value(place(turned, "coef_reach_squared_left", 0));
            HubPath path = byLinkage.path(Side.LEFT).chosen().orElseThrow();
            assertThat(squared.value()).isCloseTo(path.reachSquared().coefficient(0), within(1e-6));
            double left = ((CellValue.Numeric) content(measured, "s_max_left", 0)).value();
            assertThat(((CellValue.Numeric) poi.value(place(turned, "s_max_left", 0))).value())
                    .isNotCloseTo(left, within(0.1));
            double right = ((CellValue.Numeric) content(measured, "s_max_right", 0)).value();
            assertThat(((CellValue.Numeric) poi.value(place(turned, "s_max_right", 0))).value())
                    .isCloseTo(right, within(1e-9 * right));
        }
    }

    @Test
    void movedPointMakesThePathUnusableUntilTheNextFill() throws IOException {
        Path moved = typed(chosen, "point_height_left", 2, "22 3/4");

        try (PoiRecalculation poi = PoiRecalculation.of(moved)) {
            assertThat(poi.value(place(moved, "linkage_stamp_left", 0)))
                    .isEqualTo(CellValue.of(STALE));
            assertThat(poi.value(place(moved, "linkage_stamp_right", 0)))
                    .isEqualTo(CellValue.of("current"));
            assertThat(((CellValue.Text) poi.value(place(moved, "verdict", 0))).value())
                    .contains("the linkage was changed: fill again");
        }
        XlsxBook book = XlsxBook.open(moved);
        Filling.fill(book);
        book.save(moved);
        try (PoiRecalculation poi = PoiRecalculation.of(moved)) {
            assertThat(poi.value(place(moved, "linkage_stamp_left", 0)))
                    .isEqualTo(CellValue.of("current"));
            assertThat(((CellValue.Text) poi.value(place(moved, "verdict", 0))).value())
                    .startsWith("Fits");
        }
    }

    /** The figures of the block are stale then, but the linkage stands where it stood. */
    @Test
    void aCorrectedReadingLeavesTheLinkageInTheDrawing() throws IOException {
        Path corrected = typed(measured, "distance_first_left", 4, "26 1/4");
        Path moved = typed(measured, "point_height_left", 2, "22 3/4");

        try (PoiRecalculation poi = PoiRecalculation.of(corrected)) {
            assertThat(poi.value(place(corrected, "linkage_stamp_left", 0)))
                    .isEqualTo(CellValue.of(STALE));
            assertThat(poi.value(place(corrected, "view_linked_left", 0)))
                    .isEqualTo(CellValue.of(1));
        }
        try (PoiRecalculation poi = PoiRecalculation.of(moved)) {
            assertThat(poi.value(place(moved, "view_linked_left", 0))).isEqualTo(CellValue.of(0));
        }
    }

    @Test
    void whatTheLinkageDoesNotFollowFromLeavesItCurrent() throws IOException {
        Path changed = typed(chosen, "hub_shift", 0, "1/2");

        try (PoiRecalculation poi = PoiRecalculation.of(changed)) {
            assertThat(poi.value(place(changed, "linkage_stamp_left", 0)))
                    .isEqualTo(CellValue.of("current"));
            Sizing sizing = Filling.compute(XlsxBook.open(changed)).sizing().orElseThrow();
            double longest =
                    sizing.scenario(0)
                            .side(Side.LEFT)
                            .result()
                            .orElseThrow()
                            .window()
                            .longest()
                            .value();
            assertThat(((CellValue.Numeric) poi.value(place(changed, "s_max_left", 0))).value())
                    .isCloseTo(longest, within(1e-9 * longest));
            assertThat(poi.value(place(changed, "s_max_left", 0)))
                    .isNotEqualTo(content(chosen, "s_max_left", 0));
        }
    }

    /** Every single change that moves a figure of the block is seen by the fingerprint. */
    @Test
    void noChangeOfTheFiguresGoesUnseen() {
        String[][] changes = {
            {"linkage_kind", "0", "trailing arm"},
            {"linkage_up", "0", "5 3/4"},
            {"linkage_down", "0", "5 5/8"},
            {"inner_ahead_left", "0", "1/16"},
            {"inner_height_left", "0", "20 5/8"},
            {"inner_offset_left", "0", "5 15/16"},
            {"ride_height_left", "0", "18 3/8"},
            {"outer_ahead_left", "0", "5/16"},
            {"outer_out_left", "0", "32"},
            {"static_camber_left", "0", "-0.9"},
            {"static_toe_left", "0", "0.4"},
            {"point_ahead_left", "0", "4 13/16"},
            {"point_out_left", "3", "13 1/16"},
            {"point_height_left", "7", "15 1/16"},
            {"height_left", "2", "16"},
            {"distance_first_left", "4", "26 1/4"},
            {"distance_second_left", "4", "26 3/16"},
            {"fore_aft_left", "1", "1/4"},
            {"tape_graduation", "0", "1/8"},
            {"height_graduation", "0", "1/8"},
            {"toe_left", "0", "0.9"},
            {"right_side", "0", "same as left"},
        };
        Sizing before = sizing(null, 0, "");
        int seen = 0;
        for (String[] change : changes) {
            Sizing after = sizing(change[0], Integer.parseInt(change[1]), change[2]);
            if (!figures(after).equals(figures(before))) {
                seen++;
                assertThat(figure(after, "linkage_print", 0))
                        .as(change[0])
                        .isNotEqualTo(figure(before, "linkage_print", 0));
            }
        }
        assertThat(seen).isGreaterThanOrEqualTo(changes.length - 3);
    }

    private static List<CellValue> figures(Sizing sizing) {
        List<CellValue> figures = new ArrayList<>();
        for (String curve : new String[] {"fore_aft", "reach_squared", "camber", "toe"}) {
            for (int power = 0; power < Grid.POWER.rows(); power++) {
                figures.add(figure(sizing, "linkage_" + curve, power));
            }
        }
        for (String single : new String[] {"low", "high", "doubt", "off_before", "off_after"}) {
            figures.add(figure(sizing, "linkage_" + single, 0));
        }
        return figures;
    }

    private static CellValue figure(Sizing sizing, String name, int row) {
        return LiveLines.all().line(name).core().at(sizing, new Index(Side.LEFT, 0, row));
    }

    private static Sizing sizing(String name, int place, String text) {
        List<TypedColumn> typed = new ArrayList<>();
        if (name != null) {
            typed.add(new TypedColumn(name, new TreeMap<>(Map.of(place, text)), false));
        }
        Filling.Report report = Filling.fill(XlsxBook.open(measured), typed);
        assertThat(report.problems()).as(name).noneMatch(Problem::isError);
        return report.sizing().orElseThrow();
    }

    /** A copy in which one cell was typed into and nothing filled. */
    private Path typed(Path from, String name, int place, String text) throws IOException {
        Path file = folder.resolve(name + ".xlsx");
        Files.copy(from, file);
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(book.names().get(name).place(place), CellValue.of(text)));
        book.save(file);
        return file;
    }

    private static CellPlace place(Path file, String name, int offset) {
        return XlsxBook.open(file).names().get(name).place(offset);
    }

    private static CellValue content(Path file, String name, int offset) {
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get(name);
        return book.read(List.of(area)).at(area.place(offset)).value();
    }
}
