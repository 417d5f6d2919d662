package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.build.WheelPlace;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.reading.FinishedShafts;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.AsBuilt;
import shaftwright.xlsx.XlsxBook;

/** Finished shafts against the plan. Geometry is its own check; what counts is common practice. */
class AsBuiltTest {
    private static final double LONGER = 4;

    @TempDir private static Path folder;
    private static Path demo;

    @BeforeAll
    static void write() {
        demo = DemoBook.write(folder.resolve("demo.xlsx"));
    }

    @Test
    void aShaftCutLongerLosesSlackInwardAndGainsItOutward() {
        Sizing sizing = with(Map.of("built_k_left", List.of(k() + LONGER + " mm"))).sizing;
        AsBuilt built = FinishedShafts.of(sizing, Side.LEFT).orElseThrow();
        SideResult planned = sizing.result(new Index(Side.LEFT, 0, 0)).orElseThrow();

        assertThat(built.shift()).isCloseTo(LONGER, within(1e-9));
        assertThat(built.slackIn())
                .isCloseTo(planned.leastSlackIn().value() - LONGER, within(1e-9));
        assertThat(built.slackOut())
                .isCloseTo(planned.leastSlackOut().value() + LONGER, within(1e-9));
    }

    /** A shaft of that length, computed anew, instead of a shift of the planned slack. */
    @Test
    void playAndAnglesAreThoseOfAShaftOfTheLengthAsCut() {
        Sizing sizing = with(Map.of("built_k_left", List.of(k() + LONGER + " mm"))).sizing;
        AsBuilt built = FinishedShafts.of(sizing, Side.LEFT).orElseThrow();
        SideResult planned = sizing.result(new Index(Side.LEFT, 0, 0)).orElseThrow();

        for (WheelPlace place : WheelPlace.values()) {
            FittedPosition row = planned.fitted().get(place.step());
            FittedPosition anew =
                    FittedPosition.of(
                            planned.setup(), row.position(), planned.length().spacing() + LONGER);
            assertThat(built.play(place)).isCloseTo(anew.freePlay(), within(1e-9));
            assertThat(built.angle(place, ShaftEnd.INNER).orElseThrow())
                    .isCloseTo(anew.innerAngle(), within(1e-12));
            assertThat(built.angle(place, ShaftEnd.OUTER).orElseThrow())
                    .isCloseTo(anew.outerAngle(), within(1e-12));
            // The cut moves them by more than nothing: those planned are not it.
            assertThat(built.angle(place, ShaftEnd.INNER).orElseThrow())
                    .isNotCloseTo(row.innerAngle(), within(1e-4));
        }
    }

    @Test
    void whatIsWithinTheDoubtIsNoFindingAndWhatIsBeyondIsOne() {
        assertThat(with(Map.of()).problems).isEmpty();

        assertThat(with(Map.of("built_play_left", List.of("3/8"))).problems)
                .singleElement()
                .asString()
                .contains("End play at full bump, left")
                .contains("within a doubt of");
        assertThat(with(Map.of("built_angle_inner_left", List.of("", "", "12"))).problems)
                .singleElement()
                .asString()
                .contains("Inner joint angle at full droop, left")
                .contains("found 12.0°");
    }

    @Test
    void aShaftCutTooLongIsSaidToBottom() {
        assertThat(with(Map.of("built_k_left", List.of(k() + 40 + " mm"))).problems)
                .anySatisfy(problem -> assertThat(problem).contains("this one bottoms by"));
    }

    @Test
    void aShaftTooShortToJoinTheCentresHasNoAngles() {
        AsBuilt built =
                FinishedShafts.of(with(Map.of("built_k_left", List.of("10 mm"))).sizing, Side.LEFT)
                        .orElseThrow();

        for (WheelPlace place : WheelPlace.values()) {
            assertThat(built.push(place)).isEmpty();
            assertThat(built.angle(place, ShaftEnd.INNER)).isEmpty();
            assertThat(built.angle(place, ShaftEnd.OUTER)).isEmpty();
        }
    }

    @Test
    void boltsAreDueUntilTheLogHasThem() {
        assertThat(with(Map.of("service_bolts", List.of("no"))).problems)
                .singleElement()
                .asString()
                .contains("bolts torqued again after the first run");
        assertThat(with(Map.of("service_boots", List.of("torn"))).problems)
                .singleElement()
                .asString()
                .contains("a torn boot");
        assertThat(with(Map.of("service_boots", List.of("torn", "replaced"))).problems).isEmpty();
    }

    private record Outcome(Sizing sizing, List<String> problems) {}

    private static double k() {
        return with(Map.of())
                .sizing
                .result(new Index(Side.LEFT, 0, 0))
                .orElseThrow()
                .length()
                .clipToClip();
    }

    private static Outcome with(Map<String, List<String>> changes) {
        XlsxBook book = XlsxBook.open(demo);
        Map<String, Area> names = book.names();
        Map<CellPlace, CellValue> cells = new HashMap<>();
        for (Map.Entry<String, List<String>> change : changes.entrySet()) {
            Area area = names.get(change.getKey());
            for (int row = 0; row < area.size(); row++) {
                String text = row < change.getValue().size() ? change.getValue().get(row) : "";
                cells.put(area.place(row), Contract.named(change.getKey()).typed(text));
            }
        }
        book.write(cells);
        Path changed = folder.resolve("changed.xlsx");
        book.save(changed);
        Filling.Report report = Filling.compute(XlsxBook.open(changed));
        List<String> problems = new ArrayList<>();
        for (Problem problem : report.problems()) {
            problems.add(problem.toString());
        }
        return new Outcome(report.sizing().orElseThrow(), problems);
    }
}
