package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.joint.BenchTable;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.xlsx.XlsxBook;

/**
 * Bench tables of the demo's second joint, to 25 deg, that end below the angles of its shaft, or
 * have more rows than a page.
 */
class ShortBenchTest {
    /** Scenario with two of that joint. */
    private static final Index BENCHED = new Index(Side.LEFT, 4, 0);

    @TempDir private Path folder;

    private Path typed(List<String> angles, List<String> inward, List<String> outward) {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put(
                "bench_joint", Collections.nCopies(angles.size(), typed.get("bench_joint").get(0)));
        typed.put("shop_scenario", List.of("E"));
        typed.put("bench_angle", angles);
        typed.put("bench_inward", inward);
        typed.put("bench_outward", outward);
        return DemoBook.write(folder.resolve("bench.xlsx"), typed, DemoBook.scenarios());
    }

    private static Sizing sizing(Path file) {
        return Filling.compute(XlsxBook.open(file)).sizing().orElseThrow();
    }

    private static BenchTable bench(Sizing sizing) {
        return sizing.scenario(BENCHED.scenario()).side(Side.LEFT).inner().joint().bench();
    }

    @Test
    void formulasAndCoreReadRowsInAnyOrderAlike() throws Exception {
        Path file = typed(List.of("5", "0"), List.of("7/8", "1"), List.of("13/16", "15/16"));

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
        BenchTable bench = bench(sizing(file));
        assertThat(bench.lastAngle()).isCloseTo(Math.toRadians(5), within(1e-12));
        assertThat(bench.inward(Math.toRadians(25))).isCloseTo(0.3 * 25.4, within(1e-9));
    }

    /** The page on how a length came about has room for six rows. */
    @Test
    void rowsThatThePageHasNoRoomForAreCounted() throws Exception {
        Path file =
                typed(
                        List.of("0", "3", "5", "8", "11", "14", "20", "25"),
                        List.of("1", "1", "15/16", "7/8", "3/4", "11/16", "7/16", "3/16"),
                        List.of("7/8", "7/8", "7/8", "13/16", "11/16", "5/8", "3/8", "1/8"));

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
        assertThat(sizing(file).derivation(BENCHED).orElseThrow().benchRowsLeftOut())
                .isEqualTo(
                        "Bench rows of steeper angles not shown: inner end 2, outer end 2; see the"
                                + " sheet Parts.");
    }

    @Test
    void aSingleRowSaysWhereItEndsAndWhichAngleIsNeeded() throws Exception {
        Path file = typed(List.of("0"), List.of("1"), List.of("15/16"));

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
        Sizing sizing = sizing(file);
        assertThat(sizing.verdict(BENCHED).orElseThrow().findings())
                .contains(Finding.INNER_BENCH_ENDS, Finding.OUTER_BENCH_ENDS);
        assertThat(bench(sizing).inward(Math.toRadians(12.5))).isCloseTo(25.4 * 0.65, within(1e-9));
    }

    @Test
    void outwardTravelThatGrowsWithTheAngleIsToldApart() {
        Path file = typed(List.of("8", "0"), List.of("7/8", "1"), List.of("15/16", "7/8"));

        assertThat(Filling.compute(XlsxBook.open(file)).problems())
                .filteredOn(problem -> problem.toString().contains("does not grow"))
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.isError()).isFalse();
                            assertThat(problem.toString())
                                    .contains("\"15/16\" at 8 deg, more than \"7/8\" at 0 deg");
                        });
    }
}
