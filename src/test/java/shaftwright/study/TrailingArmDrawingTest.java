package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shaftwright.build.Side;
import shaftwright.suspension.Vector;

/** A drawing of a vehicle whose hubs go round circles, from a build alone. */
class TrailingArmDrawingTest {
    /** What curves may be off the linkage, mm. */
    private static final double CURVES = 0.02;

    private static final SideStudy SIDE =
            Study.of(LinkageBuild.of(LinkageBuild.unread())).scenario("A").side(Side.LEFT);
    private static final SideDrawing DRAWING = SIDE.drawing();

    @Test
    void outerDatumGoesRoundTheArmsPivot() {
        List<Vector> way = DRAWING.line(ViewPart.WAY, ViewPart.RIDE);

        assertThat(way.get(0).z()).isCloseTo(-110, within(CURVES));
        assertThat(way.get(way.size() - 1).z()).isCloseTo(110, within(CURVES));
        assertThat(way)
                .allSatisfy(
                        point -> {
                            double ahead = point.x() - LinkageBuild.ARM;
                            assertThat(Math.hypot(ahead, point.z()))
                                    .isCloseTo(LinkageBuild.ARM, within(CURVES));
                            assertThat(point.y()).isCloseTo(850, within(CURVES));
                        });
    }

    @Test
    void armIsDrawnFromTheHubToItsPivotAndBack() {
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            List<Vector> arm = DRAWING.line(ViewPart.LINKAGE, stand);
            Vector datum = DRAWING.stand(stand).datum();

            assertThat(arm.get(0)).isEqualTo(datum);
            assertThat(arm.get(1)).isEqualTo(new Vector(LinkageBuild.ARM, 500, 0));
            assertThat(arm.subList(2, arm.size())).containsOnly(datum);
        }
    }

    @Test
    void shaftIsDrawnFromCentreToCentre() {
        List<Vector> chain = DRAWING.line(ViewPart.CHAIN, ViewPart.RIDE);

        assertThat(chain.get(1).distanceTo(chain.get(2)))
                .isCloseTo(
                        SIDE.result().orElseThrow().atRide().position().distance(), within(1e-9));
    }
}
