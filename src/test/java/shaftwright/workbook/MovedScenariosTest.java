package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.filling.TypedOver;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Position;
import shaftwright.study.Finding;
import shaftwright.study.SideDrawing;
import shaftwright.study.ViewPart;
import shaftwright.suspension.Vector;
import shaftwright.xlsx.XlsxBook;

/** Columns of the demo with steered hubs, and with its drive unit pushed. All figures invented. */
class MovedScenariosTest {
    private static final int A = 0;
    private static final int B = 1;
    private static final int C = 2;

    @TempDir private static Path folder;
    private static Path demo;
    private static TypedOver read;

    @BeforeAll
    static void write() {
        demo = DemoBook.write(folder.resolve("demo.xlsx"));
        read = TypedOver.of(demo);
    }

    private static TypedColumn typed(String name, int place, String text) {
        return new TypedColumn(name, new TreeMap<>(Map.of(place, text)), false);
    }

    private static List<TypedColumn> kingpin(TypedColumn... more) {
        List<TypedColumn> typed = new ArrayList<>();
        typed.add(typed("right_side", 0, "same as left"));
        typed.add(typed("kingpin_inclination", 0, "8"));
        typed.add(typed("kingpin_caster", 0, "4"));
        typed.add(typed("kingpin_inward", 0, "2 1/4"));
        typed.addAll(List.of(more));
        return typed;
    }

    private static Sizing sizing(List<TypedColumn> typed) {
        Filling.Report report = read.with(typed);
        assertThat(report.problems()).noneMatch(Problem::isError);
        return report.sizing().orElseThrow();
    }

    private static Optional<Finding> leading(Sizing sizing) {
        return sizing.verdict(new Index(Side.LEFT, A, 0)).orElseThrow().leading();
    }

    private static List<Position> positions(Sizing sizing, int scenario, Side side) {
        return sizing.scenario(scenario).side(side).result().orElseThrow().positions();
    }

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws IOException {
        Path file = folder.resolve("moved.xlsx");
        Files.copy(demo, file);
        XlsxBook book = XlsxBook.open(file);
        List<TypedColumn> typed =
                kingpin(
                        typed("kingpin_ahead", 0, "1/4"),
                        typed("steer_angle", A, "9"),
                        typed("steer_angle", B, "-12.5"),
                        typed("mount_load", B, "drive"),
                        typed("mount_load", C, "Overrun"),
                        typed("mount_drive_forward", 0, "1/8"),
                        typed("mount_drive_left", 0, "-1/16"),
                        typed("mount_drive_up", 0, "3/8"),
                        typed("mount_drive_roll", 0, "1.5"),
                        typed("mount_overrun_roll", 0, "-1"),
                        typed("all_states", B, "yes"),
                        typed("lock_left", B, "14"),
                        typed("lock_right", B, "-13"),
                        typed("all_states", C, "yes"),
                        typed("shop_scenario", 0, "B"));
        assertThat(Filling.fill(book, typed).problems()).noneMatch(Problem::isError);
        book.save(file);

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
    }

    /** With both sides alike, the left one steered left is the right one steered right. */
    @Test
    void sidesMirrorEachOtherWhenSteered() {
        Sizing sizing =
                sizing(
                        kingpin(
                                typed("inner_sweep", 0, "1"),
                                typed("transaxle_left", A, "0"),
                                typed("steer_angle", A, "10")));
        Sizing mirrored =
                sizing(
                        kingpin(
                                typed("inner_sweep", 0, "1"),
                                typed("transaxle_left", A, "0"),
                                typed("steer_angle", A, "-10")));

        assertThat(positions(sizing, A, Side.LEFT)).isEqualTo(positions(mirrored, A, Side.RIGHT));
        assertThat(positions(sizing, A, Side.LEFT)).isNotEqualTo(positions(sizing, A, Side.RIGHT));
        double straight = positions(sizing, B, Side.LEFT).get(12).outerAngle();
        assertThat(positions(sizing, A, Side.LEFT).get(12).outerAngle())
                .isBetween(straight, straight + Math.toRadians(11));
    }

    @Test
    void theHubsOwnTablesStayThoseStraightAhead() {
        Sizing straight = sizing(kingpin());
        Sizing steered = sizing(kingpin(typed("steer_angle", A, "10")));

        assertThat(steered.scenario(A).track()).isEqualTo(straight.scenario(A).track());
        assertThat(positions(steered, A, Side.LEFT).get(5).hub())
                .isEqualTo(positions(straight, A, Side.LEFT).get(5).hub());
    }

    /** The drawing puts wheel, hub and shaft where the position table has them. */
    @Test
    void drawingShowsTheSteeredWheel() {
        Sizing sizing =
                sizing(
                        kingpin(
                                typed("steer_angle", B, "20"),
                                typed("mount_load", B, "drive"),
                                typed("mount_drive_roll", 0, "3"),
                                typed("shop_scenario", 0, "B")));
        SideDrawing drawing = sizing.drawing(Side.LEFT).orElseThrow();
        int[] rows = {0, 12, 24};

        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            List<Vector> chain = drawing.line(ViewPart.CHAIN, stand);
            assertThat(chain.get(1).distanceTo(chain.get(2)))
                    .isCloseTo(
                            positions(sizing, B, Side.LEFT).get(rows[stand]).distance(),
                            within(1e-6));
            // Steered to the left, the left wheel's front goes outward: toe-out.
            double straight = drawing.stand(stand).axes().toe();
            assertThat(Math.toDegrees(straight - drawing.stand(stand).steered().axes().toe()))
                    .isBetween(19.0, 21.0);
        }
    }

    @Test
    void aSteeredColumnWithoutAKingpinLineIsNotComputed() {
        Sizing sizing =
                sizing(List.of(typed("steer_angle", A, "10"), typed("linkage_kind", 0, "")));

        assertThat(leading(sizing)).contains(Finding.INCOMPLETE);
        assertThat(sizing.scenario(A).side(Side.LEFT).trouble())
                .isEqualTo("steered, but the kingpin line is not known: see the sheet Measure");
    }

    /** The demo's linkage, whose ball joints tell the kingpin line; no other is typed. */
    private static Path steeredByBallJoints() throws IOException {
        Path file = folder.resolve("balls.xlsx");
        Files.copy(demo, file, StandardCopyOption.REPLACE_EXISTING);
        XlsxBook book = XlsxBook.open(file);
        List<TypedColumn> typed =
                List.of(
                        typed("steer_angle", B, "-6"),
                        typed("all_states", A, "yes"),
                        typed("lock_left", A, "6"),
                        typed("lock_right", A, "-5"));
        assertThat(Filling.fill(book, typed).problems()).noneMatch(Problem::isError);
        book.save(file);
        return file;
    }

    @Test
    void ballJointsTellTheKingpinLineWhereNoneIsTyped() throws IOException {
        Path file = steeredByBallJoints();
        Sizing sizing = Filling.compute(XlsxBook.open(file)).sizing().orElseThrow();

        for (Side side : Side.values()) {
            assertThat(sizing.kingpinByLinkage(side)).isTrue();
            // By the typed points: 1 in over 8 7/8 up, 7/8 back over 8 7/8, on the left.
            assertThat(sizing.kingpin(side).orElseThrow().inclination())
                    .isEqualTo(Math.atan(1 / 8.875), within(0.002));
            assertThat(sizing.kingpin(side).orElseThrow().caster())
                    .isEqualTo(Math.atan(0.875 / 8.875), within(0.002));
        }
        assertThat(sizing(kingpin(typed("steer_angle", B, "-6"))).kingpinByLinkage(Side.LEFT))
                .isFalse();
        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
    }

    @Test
    void allStatesGiveNoVerdictUntilTheNextFill() throws IOException {
        Path file = steeredByBallJoints();
        Map<String, Area> names = XlsxBook.open(file).names();
        CellPlace verdict = names.get("verdict").place(A);
        CellPlace length = names.get("e_chosen_left").place(A);

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            double filled = ((CellValue.Numeric) poi.value(length)).value();
            poi.type(names.get("mount_drive_up").place(0), CellValue.of("1/2"));
            assertThat(((CellValue.Text) poi.value(verdict)).value())
                    .isEqualTo(
                            "No verdict: all states are asked for, and their figures are not"
                                    + " current: fill.");
            poi.type(names.get("mount_drive_up").place(0), CellValue.of("3/16"));
            poi.type(names.get("steer_angle").place(A), CellValue.of(4));
            assertThat(((CellValue.Text) poi.value(verdict)).value()).doesNotContain("not current");
            assertThat(((CellValue.Numeric) poi.value(length)).value())
                    .isEqualTo(filled, within(1e-9));
        }
    }

    @Test
    void statesThatCantBeAreSaidByTheirCells() {
        assertThat(problems(typed("lock_left", A, "20")))
                .anyMatch(said -> said.contains("right lock") && said.contains("nothing"));
        assertThat(problems(typed("lock_left", A, "-20")))
                .anyMatch(said -> said.contains("0 to 60") && said.contains("both locks swapped?"));
        assertThat(problems(typed("lock_right", A, "33")))
                .anyMatch(
                        said -> said.contains("-60 to 0") && said.contains("both locks swapped?"));
        assertThat(
                        problems(
                                typed("lock_left", A, "20"),
                                typed("lock_right", A, "-20"),
                                typed("steer_angle", A, "21")))
                .anyMatch(said -> said.contains("beyond the locks typed"));
        assertThat(
                        problems(
                                typed("mount_drive_forward", 0, ""),
                                typed("mount_drive_up", 0, ""),
                                typed("mount_drive_roll", 0, ""),
                                typed("mount_overrun_forward", 0, ""),
                                typed("mount_overrun_up", 0, ""),
                                typed("mount_overrun_roll", 0, "")))
                .anyMatch(said -> said.contains("with nothing that varies"));
    }

    private static List<String> problems(TypedColumn... more) {
        List<TypedColumn> typed = new ArrayList<>(List.of(more));
        typed.add(typed("all_states", A, "yes"));
        return read.with(typed).problems().stream().map(Problem::toString).toList();
    }

    /** What a push in the mounts does is what the same shift of the transaxle does. */
    @Test
    void aPushInTheMountsMovesTheFlangeAsAShiftDoes() {
        Sizing shifted =
                sizing(
                        List.of(
                                typed("transaxle_forward", A, "1/2"),
                                typed("transaxle_left", A, "-1/4"),
                                typed("transaxle_up", A, "3/8")));
        Sizing pushed =
                sizing(
                        List.of(
                                typed("transaxle_forward", A, "0"),
                                typed("transaxle_left", A, "0"),
                                typed("transaxle_up", A, "0"),
                                typed("mount_load", A, "overrun"),
                                typed("mount_overrun_forward", 0, "1/2"),
                                typed("mount_overrun_left", 0, "-1/4"),
                                typed("mount_overrun_up", 0, "3/8"),
                                typed("mount_overrun_roll", 0, "0")));

        for (Side side : Side.values()) {
            assertThat(positions(pushed, A, side)).isEqualTo(positions(shifted, A, side));
        }
    }

    @Test
    void aRollLiftsOneFlangeAndLowersTheOther() {
        Sizing sizing =
                sizing(
                        List.of(
                                typed("transaxle_left", A, "0"),
                                typed("transaxle_up", A, "0"),
                                typed("mount_load", A, "drive"),
                                typed("mount_drive_up", 0, "0"),
                                typed("mount_drive_roll", 0, "2")));
        double offset = sizing.inputs().number("inner_offset", Side.LEFT, 0);
        double lifted = offset * Math.sin(Math.toRadians(2));

        assertThat(sizing.scenario(A).side(Side.LEFT).flange().shift().z())
                .isCloseTo(lifted, within(1e-9));
        assertThat(sizing.scenario(A).side(Side.RIGHT).flange().shift().z())
                .isCloseTo(-lifted, within(1.0));
        assertThat(sizing.scenario(A).side(Side.RIGHT).flange().shift().z()).isNegative();
    }

    @Test
    void aRollNeedsTheDistanceFromTheMiddle() {
        Sizing sizing =
                sizing(
                        List.of(
                                typed("inner_offset_left", 0, ""),
                                typed("mount_load", A, "drive"),
                                typed("mount_drive_roll", 0, "2")));

        assertThat(leading(sizing)).contains(Finding.INCOMPLETE);
        assertThat(sizing.scenario(A).side(Side.LEFT).trouble())
                .isEqualTo(
                        "the drive unit rolls: type the distance from vehicle centre to inner datum");
    }

    @Test
    void anUnknownLoadIsAnError() {
        Filling.Report report =
                Filling.fill(XlsxBook.open(demo), List.of(typed("mount_load", A, "reverse")));

        assertThat(report.problems().toString())
                .contains("reverse")
                .contains("at rest")
                .contains("overrun");
        assertThat(report.hasErrors()).isTrue();
    }
}
