package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.suspension.ReadingRemark.Kind;

class MeasuredPathTest {
    private static final double INCH = 25.4;
    private static final double RIDE = 500;
    private static final double INNER = 520;
    private static final TapeSettings TAPE = TapeSettings.of(INCH / 16, 1);

    /** A true path: reach and fore-aft cubic in height above ride. */
    private static double reach(double t) {
        double s = t / 130;
        return Math.sqrt(360_000 - 4_000 * s - 9_000 * s * s + 700 * s * s * s);
    }

    private static double foreAft(double t) {
        return 4 + 0.03 * t;
    }

    private static double distance(double height) {
        double t = height - RIDE;
        return Math.hypot(Math.hypot(reach(t), foreAft(t)), height - INNER);
    }

    private static TapeRow row(int number, double height, double... errors) {
        List<Double> readings = new ArrayList<>();
        for (double error : errors.length == 0 ? new double[1] : errors) {
            readings.add(distance(height) + error);
        }
        return new TapeRow(
                number,
                height,
                readings,
                foreAft(height - RIDE),
                OptionalDouble.of(-0.0002 * (height - RIDE)),
                OptionalDouble.of(0.003));
    }

    /** Rows evenly over 260 mm of travel, without error. */
    private static List<TapeRow> rows(int count) {
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rows.add(row(i + 1, RIDE - 130 + 260.0 * i / (count - 1)));
        }
        return rows;
    }

    private static MeasuredPath fit(List<TapeRow> rows) {
        return MeasuredPath.fit(rows, RIDE, INNER, TAPE);
    }

    @Test
    void goesThroughExactReadingsOfItsOwnKindOfCurve() {
        MeasuredPath measured = fit(rows(7));
        for (double t = -130; t <= 130; t += 10) {
            HubPoint point = measured.path().at(t);
            assertThat(point.reach()).isCloseTo(reach(t), within(1e-9));
            assertThat(point.foreAft()).isCloseTo(foreAft(t), within(1e-10));
            assertThat(point.rise()).isCloseTo(t + RIDE - INNER, within(1e-10));
            assertThat(point.camber()).isCloseTo(-0.0002 * t, within(1e-14));
            assertThat(point.toe()).isCloseTo(0.003, within(1e-14));
        }
        assertThat(measured.rows())
                .allSatisfy(row -> assertThat(row.residual()).isCloseTo(0, within(1e-9)))
                .noneSatisfy(row -> assertThat(row.isSuspect()).isTrue());
        assertThat(measured.contradiction().exists()).isFalse();
        assertThat(measured.warnings()).isEmpty();
    }

    /**
     * Common practice, no source: cups 25 1/2 in apart at the tightest and 28 in apart with the
     * wheel 12 in lower need 3 in of extension from a 25 in shaft; √(25.5² + 12²) = 28.18 says that
     * 28 is plausible.
     */
    @Test
    void distancesOfATradeExampleComeBack() {
        List<TapeRow> rows =
                List.of(TapeRow.of(1, 20 * INCH, 25.5 * INCH), TapeRow.of(2, 8 * INCH, 28 * INCH));
        MeasuredPath measured = MeasuredPath.fit(rows, 20 * INCH, 20 * INCH, TAPE);
        double tight = measured.path().at(0).distance();
        double hanging = measured.path().at(-12 * INCH).distance();
        assertThat(tight / INCH).isCloseTo(25.5, within(1e-12));
        assertThat(hanging / INCH - 25).isCloseTo(3, within(1e-12));
        assertThat(Math.hypot(tight, 12 * INCH)).isCloseTo(hanging, within(0.2 * INCH));
        assertThat(measured.mayGiveVerdict()).isFalse();
        assertThat(kinds(measured.warnings())).contains(Kind.NO_VERDICT, Kind.NO_CROSS_CHECK);
    }

    /** JCGM 100:2008, H.5.2: the days' deviations of Table H.9 pool to 85 µV. */
    @Test
    void repeatsPoolAsInThePublishedExample() {
        List<TapeRow> rows = new ArrayList<>();
        for (String[] day : Csv.read("gum-h5-table-h9.csv")) {
            double deviation = Double.parseDouble(day[2]) / 100;
            int number = Integer.parseInt(day[0]);
            // Three readings with the day's mean and the day's deviation.
            rows.add(row(number, RIDE - 150 + 30 * number, -deviation, 0, deviation));
        }
        MeasuredPath measured = fit(rows);
        assertThat(measured.pooledDeviation()).isCloseTo(0.85, within(0.005));
    }

    /** {@code σ² = s_p²/n + σ_tape² + (D'σ_z)² + (b/2)²}: repeats average their scatter only. */
    @Test
    void repeatsAverageNeitherTheTapeNorTheHeight() {
        List<TapeRow> rows = rows(7);
        rows.set(0, row(1, RIDE - 130, -1, 0, 1));
        MeasuredPath measured = fit(rows);
        double tape = INCH / 16 / Math.sqrt(12);
        double curve = 0.4 * Math.pow(260 / 450.0, 4);
        for (int i : new int[] {0, 3}) {
            FittedRow row = measured.rows().get(i);
            double slope = slope(row.row().height());
            double variance = 1.0 / row.counted().readings() + tape * tape + slope * slope / 12;
            assertThat(row.readingDeviation()).isCloseTo(Math.sqrt(variance), within(1e-6));
            assertThat(row.deviation())
                    .isCloseTo(Math.sqrt(variance + curve * curve), within(1e-6));
            double perSquare = 2 * row.distance() * row.deviation();
            assertThat(measured.reach().basis().weight(i) * perSquare * perSquare)
                    .isCloseTo(1, within(1e-12));
        }
        assertThat(measured.rows().get(0).counted().readings()).isEqualTo(3);
    }

    private static double slope(double height) {
        return (distance(height + 0.01) - distance(height - 0.01)) / 0.02;
    }

    @Test
    void withoutRepeatsOnlyTapeHeightAndCurveCount() {
        MeasuredPath measured =
                MeasuredPath.fit(rows(5), RIDE, INNER, TapeSettings.of(INCH / 16, 0));
        assertThat(measured.pooledDeviation()).isZero();
        assertThat(measured.rows().get(2).readingDeviation())
                .isCloseTo(INCH / 16 / Math.sqrt(12), within(1e-12));
    }

    /**
     * The stated doubt, less the curve allowance, is twice the scatter of the fitted distance when
     * the same true path is measured again and again: 4,000 seeded simulations.
     */
    @Test
    void doubtIsTwiceTheScatterOfSimulatedMeasurements() {
        TapeSettings settings = new TapeSettings(2, 2, DegreeChoice.AUTO, 0, 0);
        double[] travels = {-130, -60, 0, 75, 130};
        double[] squares = new double[travels.length];
        Random random = new Random(7);
        int trials = 4_000;
        for (int trial = 0; trial < trials; trial++) {
            List<TapeRow> rows = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                double height = RIDE - 130 + 260.0 * i / 6;
                double seen = height + 2 * (random.nextDouble() - 0.5);
                double c = distance(height) + 2 * (random.nextDouble() - 0.5);
                // The ends keep their heights so that every trial covers the same travel.
                boolean end = i == 0 || i == 6;
                rows.add(TapeRow.of(i + 1, end ? height : seen, c));
            }
            HubPath path = MeasuredPath.fit(rows, RIDE, INNER, settings).path();
            for (int k = 0; k < travels.length; k++) {
                double error = path.at(travels[k]).distance() - distance(RIDE + travels[k]);
                squares[k] += error * error;
            }
        }
        HubPath stated = MeasuredPath.fit(rows(7), RIDE, INNER, settings).path();
        for (int k = 0; k < travels.length; k++) {
            double scatter = Math.sqrt(squares[k] / trials);
            assertThat(2 * scatter)
                    .as("at %s mm", travels[k])
                    .isCloseTo(stated.at(travels[k]).doubt(), within(0.1 * scatter));
        }
    }

    @Test
    void aSlipOfTheTapeIsNamedFromSevenRowsOn() {
        List<TapeRow> rows = rows(7);
        rows.set(3, row(4, rows.get(3).height(), INCH / 2));
        MeasuredPath measured = fit(rows);
        assertThat(measured.crossCheck()).isEqualTo(CrossCheck.NAMES_THE_ROW);
        assertThat(measured.contradiction().suspectRows()).containsExactly(4);
        assertThat(measured.contradiction().unplaced()).isEmpty();
        SuspectReading suspect = measured.contradiction().suspects().get(0);
        double height = rows.get(3).height();
        assertThat(suspect.read()).isCloseTo(distance(height) + INCH / 2, within(1e-9));
        assertThat(suspect.expected()).isCloseTo(distance(height), within(1e-6));
        assertThat(suspect.isRepeat()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"5", "6"})
    void aSlipAmongFiveOrSixRowsShowsButNotWhere(int count) {
        List<TapeRow> rows = rows(count);
        rows.set(2, row(3, rows.get(2).height(), INCH / 2));
        MeasuredPath measured = fit(rows);
        assertThat(measured.crossCheck()).isEqualTo(CrossCheck.SHOWS_A_CONTRADICTION);
        assertThat(measured.contradiction().suspects()).isEmpty();
        assertThat(measured.contradiction().unplaced()).containsExactly(MeasuredQuantity.DISTANCE);
        assertThat(measured.contradiction().exists()).isTrue();
        assertThat(measured.path().at(0).doubt())
                .isGreaterThan(5 * fit(rows(count)).path().at(0).doubt());
        assertThat(kinds(measured.warnings())).containsExactly(Kind.ENDS_NOT_CHECKED);
    }

    /** Heights 60 mm apart but for one gap of 140: there the curve is known least. */
    @Test
    void theNextHeightBelongsInTheWidestGap() {
        List<TapeRow> rows = new ArrayList<>();
        for (double t : new double[] {-130, -70, -10, 130}) {
            rows.add(row(rows.size() + 1, RIDE + t));
        }
        assertThat(fit(rows).contradiction().nextHeight()).isCloseTo(RIDE + 60, within(1e-9));
    }

    @Test
    void whatASuspectRowMovesJoinsTheDoubt() {
        List<TapeRow> rows = rows(9);
        double before = fit(rows).path().at(130).doubt();
        rows.set(8, row(9, RIDE + 130, 20));
        HubPath path = fit(rows).path();
        double moved = path.at(130).distance() - distance(RIDE + 130);
        assertThat(moved).isGreaterThan(15);
        assertThat(path.at(130).doubt()).isCloseTo(before + moved, within(0.3));
    }

    @Test
    void threeRowsCannotCheckEachOther() {
        List<TapeRow> rows = rows(3);
        rows.set(1, row(2, rows.get(1).height(), INCH));
        MeasuredPath measured = fit(rows);
        assertThat(measured.crossCheck()).isEqualTo(CrossCheck.NONE);
        assertThat(measured.contradiction().exists()).isFalse();
        assertThat(kinds(measured.warnings())).contains(Kind.NO_CROSS_CHECK);
        assertThat(measured.mayGiveVerdict()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"2, AUTO, 1", "3, AUTO, 2", "4, AUTO, 2", "5, AUTO, 3", "9, QUARTIC, 4"})
    void degreeOfTheCurve(int rows, DegreeChoice choice, int degree) {
        TapeSettings settings = new TapeSettings(1, 1, choice, 2, 0.8);
        MeasuredPath measured = MeasuredPath.fit(rows(rows), RIDE, INNER, settings);
        assertThat(measured.degree()).isEqualTo(degree);
        assertThat(measured.path().doubt().variance().degree()).isEqualTo(2 * degree);
    }

    @Test
    void aSingleCamberReadingHoldsForTheWholeTravel() {
        List<TapeRow> rows = new ArrayList<>();
        for (TapeRow row : rows(5)) {
            rows.add(TapeRow.of(row.number(), row.height(), row.meanDistance()));
        }
        TapeRow third = rows.get(2);
        rows.set(
                2,
                new TapeRow(
                        3,
                        third.height(),
                        third.distances(),
                        0,
                        OptionalDouble.of(-0.02),
                        OptionalDouble.empty()));
        MeasuredPath measured = fit(rows);
        assertThat(measured.path().at(-130).camber()).isEqualTo(-0.02);
        assertThat(measured.path().at(130).camber()).isEqualTo(-0.02);
        assertThat(kinds(measured.warnings()))
                .contains(Kind.CAMBER_BEYOND_ROWS, Kind.NO_TOE)
                .doesNotContain(Kind.NO_CAMBER);
    }

    @Test
    void refusesADistanceShorterThanTheHeightDifference() {
        List<TapeRow> rows = rows(5);
        rows.set(4, TapeRow.of(5, INNER + 600, 500));
        assertThat(problems(rows)).containsExactly(Tuple.tuple(Kind.IMPOSSIBLE_TRIANGLE, 5));
    }

    @Test
    void namesEveryProblemAtOnce() {
        List<TapeRow> rows =
                List.of(
                        row(1, RIDE + 50, 0, 0, 0, 0),
                        new TapeRow(
                                2,
                                RIDE + 60,
                                List.of(),
                                0,
                                OptionalDouble.empty(),
                                OptionalDouble.empty()),
                        TapeRow.of(3, RIDE + 70, -5),
                        TapeRow.of(4, Double.NaN, 600),
                        row(6, RIDE + 50.2));
        assertThat(problems(rows))
                .containsExactlyInAnyOrder(
                        Tuple.tuple(Kind.TOO_MANY_READINGS, 1),
                        Tuple.tuple(Kind.NO_DISTANCE, 2),
                        Tuple.tuple(Kind.BAD_DISTANCE, 3),
                        Tuple.tuple(Kind.BAD_HEIGHT, 4),
                        Tuple.tuple(Kind.SAME_HEIGHT, 6),
                        Tuple.tuple(Kind.RIDE_OUTSIDE_ROWS, 0));
        assertThatThrownBy(() -> fit(rows)).hasMessageContaining("row 3: a distance must be above");
    }

    @Test
    void refusesOneRow() {
        assertThat(problems(List.of(row(1, RIDE))))
                .containsExactly(Tuple.tuple(Kind.TOO_FEW_ROWS, 0));
    }

    @Test
    void refusesAHighDegreeFromFewRows() {
        TapeSettings settings = new TapeSettings(1, 1, DegreeChoice.QUINTIC, 2, 0.8);
        assertThatThrownBy(() -> MeasuredPath.fit(rows(8), RIDE, INNER, settings))
                .isInstanceOf(UnusableReadingsException.class)
                .hasMessageContaining("nine heights");
    }

    @Test
    void refusesAnglesInAWrongUnit() {
        List<TapeRow> rows = rows(3);
        rows.set(
                0,
                new TapeRow(
                        1,
                        RIDE - 130,
                        List.of(600.0),
                        0,
                        OptionalDouble.of(2.5),
                        OptionalDouble.empty()));
        assertThat(problems(rows)).containsExactly(Tuple.tuple(Kind.BAD_ANGLE, 1));
    }

    @Test
    void refusesACurveThatLeavesTheSideOfTheVehicle() {
        List<TapeRow> rows =
                List.of(
                        TapeRow.of(1, INNER - 100, 500),
                        TapeRow.of(2, INNER, 1),
                        TapeRow.of(3, INNER + 20, 60),
                        TapeRow.of(4, INNER + 150, 151));
        assertThat(problems(rows)).containsExactly(Tuple.tuple(Kind.CURVE_THROUGH_AXIS, 0));
    }

    @Test
    void warnsOfRepeatsThatCannotBothBeRight() {
        List<TapeRow> rows = rows(5);
        rows.set(0, row(1, RIDE - 130, 0, 5, 10));
        assertThat(fit(rows).warnings())
                .extracting(ReadingRemark::kind, ReadingRemark::row)
                .contains(Tuple.tuple(Kind.REPEATS_DIFFER, 1));
    }

    private static List<Kind> kinds(List<ReadingRemark> remarks) {
        return remarks.stream().map(ReadingRemark::kind).toList();
    }

    private static List<Tuple> problems(List<TapeRow> rows) {
        UnusableReadingsException refusal =
                catchThrowableOfType(UnusableReadingsException.class, () -> fit(rows));
        return refusal.problems().stream()
                .map(problem -> Tuple.tuple(problem.kind(), problem.row()))
                .toList();
    }
}
