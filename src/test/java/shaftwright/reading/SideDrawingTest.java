package shaftwright.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.filling.Filling;
import shaftwright.study.LinkageOutline;
import shaftwright.study.SideDrawing;
import shaftwright.study.SideDrawing.Way;
import shaftwright.study.ViewPart;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.LinkageSolver;
import shaftwright.suspension.Vector;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.DemoBook;
import shaftwright.workbook.LinkageSourceTest;
import shaftwright.xlsx.XlsxBook;

/** The drawing of a side, in cells that a fill wrote. Figures of the demo are invented. */
class SideDrawingTest {
    private static final double INCH = 25.4;

    @TempDir private static Path folder;
    private static Sizing sizing;
    private static XlsxBook book;

    @BeforeAll
    static void fill() {
        Path file = folder.resolve("linkage.xlsx");
        Map<String, List<String>> typed = LinkageSourceTest.byLinkage();
        DemoBook.write(file, typed, DemoBook.scenarios());
        XlsxBook filling = XlsxBook.open(file);
        sizing = Filling.fill(filling).sizing().orElseThrow();
        filling.save(file);
        book = XlsxBook.open(file);
    }

    /** The drawing carries points by curves; the solver moves them by the ties themselves. */
    @Test
    void pointsOfTheLinkageStandWhereTheSolverPutsThem() {
        SideDrawing drawing = sizing.drawing(Side.LEFT).orElseThrow();
        var linkage = sizing.path(Side.LEFT).linkage().linkage().orElseThrow();
        Vector seenFrom =
                new Vector(
                        number("inner_ahead_used_left", 0), 0, number("inner_height_used_left", 0));
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            LinkageSolver solver = new LinkageSolver(linkage);
            assertThat(solver.moveTo(drawing.stand(stand).travel())).isTrue();
            for (int point = 0; point < LinkageKind.DOUBLE_WISHBONE.points(); point++) {
                Vector atRide = linkage.points().get(point);
                Vector moved = point % 3 == 2 || point == 7 ? solver.pose().carry(atRide) : atRide;
                // 0.01 mm of the curves, 0.001° over half a metre.
                assertThat(drawing.point(point, stand).distanceTo(moved.plus(seenFrom)))
                        .isLessThan(0.03);
            }
        }
    }

    @Test
    void shaftIsDrawnAsLongAsItsCentresAreApart() {
        int rows = 25;
        int scenario = sizing.shopScenario().orElseThrow();
        int[] atStand = {0, 12, 24};
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            int first = ViewPart.CHAIN.first(stand) + 1;
            double length = 0;
            for (String way : new String[] {"ahead", "out", "up"}) {
                String name = "view_" + way + "_left";
                length += Math.pow(number(name, first + 1) - number(name, first), 2);
            }
            assertThat(Math.sqrt(length) * number("view_step_left", 0))
                    .isCloseTo(
                            number("centre_distance_left", scenario * rows + atStand[stand]),
                            within(1e-6));
        }
    }

    @Test
    void tyreIsRoundAndOfItsSize() {
        int first = ViewPart.TYRE_SIDE.first(ViewPart.RIDE);
        double radius = number("tyre_diameter", sizing.shopScenario().orElseThrow()) / 2;
        double across = number("view_wheel_ahead_left", ViewPart.RIDE);
        double up = number("view_wheel_up_left", ViewPart.RIDE);
        for (int i = 0; i < ViewPart.TYRE_SIDE.size(); i++) {
            double x = place("ahead", first + i) - across;
            double z = place("up", first + i) - up;
            // Seen along the vehicle's axis, camber and toe of some degrees flatten it a little.
            assertThat(Math.hypot(x, z)).isBetween(0.995 * radius, radius + 1e-6);
        }
    }

    @Test
    void everythingIsInsideTheFrameAndTheFrameIsNotMuchLarger() {
        for (Side side : Side.values()) {
            for (String way : new String[] {"ahead", "out", "up"}) {
                for (int row = 0; row < Grid.VIEW_SPOT.rows(); row++) {
                    assertThat(number("view_" + way + Contract.suffix(side), row))
                            .isBetween(0.0, (double) ViewPart.SQUARES);
                }
            }
        }
        SideDrawing drawing = sizing.drawing(Side.LEFT).orElseThrow();
        double most = 0;
        for (Way way : Way.values()) {
            most = Math.max(most, drawing.high(way) - drawing.low(way));
        }
        assertThat(most / drawing.frame(LengthUnit.INCH).step()).isGreaterThan(4.5);
    }

    @Test
    void edgesSayWhatTheSquaresStandFor() {
        // The left wheel is on the left: lengths grow to the left.
        assertThat(number("view_edge_out_left", 0)).isGreaterThan(number("view_edge_out_left", 7));
        assertThat(number("view_edge_out_right", 0)).isLessThan(number("view_edge_out_right", 7));
        double edge = number("view_edge_up_left", 7);
        double hub = number("view_hub_up_left", ViewPart.RIDE) / INCH;
        double squares = number("view_up_left", ViewPart.CHAIN.first(ViewPart.RIDE) + 3);
        assertThat(edge + squares * number("view_square_left", 0)).isCloseTo(hub, within(1e-9));
    }

    @Test
    void pointsOfEveryKindAreAllDrawn() {
        for (LinkageKind kind : LinkageKind.values()) {
            boolean[] met = new boolean[kind.points() + 1];
            for (int row = 0; row < ViewPart.LINKAGE.size(); row++) {
                met[new LinkageOutline(kind.members()).point(row)] = true;
            }
            assertThat(met).as(kind.tradeName()).doesNotContain(false);
        }
        assertThat(ViewPart.TYRE_SIDE.first(2) + ViewPart.TYRE_SIDE.size())
                .isEqualTo(Grid.VIEW_SPOT.rows());
    }

    private static double place(String way, int row) {
        return (number("view_" + way + "_left", row) + number("view_base_" + way + "_left", 0))
                * number("view_step_left", 0);
    }

    private static double number(String name, int row) {
        Area area = book.names().get(name);
        CellContent content = book.read(List.of(area)).at(area.place(row));
        return ((CellValue.Numeric) content.value()).value();
    }
}
