package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the readings of nine linkages, seeded, say of themselves when one is wrong or none is. */
class SuspectReadingsTest {
    private static final List<HubPath> PATHS = SimulatedReadings.paths();
    private static final int SETS = 540;
    private static final int POSITIONS = 24;

    private static SimulatedReadings set(int number, int rows) {
        return SimulatedReadings.of(
                PATHS.get(number % PATHS.size()),
                rows,
                number % 2 == 0 ? SimulatedReadings.INCH_TAPE : SimulatedReadings.MILLIMETRE_TAPE,
                new Random(1000L * rows + number));
    }

    /** How many of a hundred sets something is true of, row by row wrong in turn. */
    private static double inHundred(int rows, double mm, Function<MeasuredPath, Boolean> ask) {
        int count = 0;
        for (int number = 0; number < SETS; number++) {
            SimulatedReadings wrong = set(number, rows).off(wrongRow(number, rows), mm);
            count += ask.apply(wrong.fit()) ? 1 : 0;
        }
        return 100.0 * count / SETS;
    }

    private static int wrongRow(int number, int rows) {
        return number / PATHS.size() % rows;
    }

    @ParameterizedTest
    @CsvSource({"5", "6", "7", "9"})
    void healthyWorkbooksSeldomAlarm(int rows) {
        int alarms = 0;
        for (int workbook = 0; workbook < SETS; workbook++) {
            boolean left = set(2 * workbook, rows).fit().contradiction().exists();
            boolean right = set(2 * workbook + 1, rows).fit().contradiction().exists();
            alarms += left || right ? 1 : 0;
        }
        assertThat(100.0 * alarms / SETS).isLessThanOrEqualTo(5);
    }

    @ParameterizedTest
    @CsvSource({"20", "-20"})
    void aDistanceFarOffAmongNineIsNamedAlone(double mm) {
        int alone = 0;
        for (int number = 0; number < SETS; number++) {
            int row = wrongRow(number, 9);
            List<Integer> named = set(number, 9).off(row, mm).fit().contradiction().suspectRows();
            alone += named.equals(List.of(row + 1)) ? 1 : 0;
        }
        assertThat(100.0 * alone / SETS).isGreaterThanOrEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource({"9, 20, 95", "9, -20, 95", "7, 20, 90", "7, -20, 90", "9, 9.5, 90", "6, 20, 90"})
    void theTrueDistanceLiesInsideTheDoubt(int rows, double mm, double leastInHundred) {
        int inside = 0;
        for (int number = 0; number < SETS; number++) {
            SimulatedReadings wrong = set(number, rows).off(wrongRow(number, rows), mm);
            HubPath fitted = wrong.fit().path();
            for (int step = 0; step <= POSITIONS; step++) {
                double t = fitted.tMin() + fitted.travel() * step / POSITIONS;
                HubPoint at = fitted.at(t);
                double error = Math.abs(at.distance() - wrong.path().at(t).distance());
                inside += error <= at.doubt() ? 1 : 0;
            }
        }
        assertThat(100.0 * inside / SETS / (POSITIONS + 1)).isGreaterThanOrEqualTo(leastInHundred);
    }

    @ParameterizedTest
    @CsvSource({"5, 75", "6, 95", "7, 98", "9, 99"})
    void aDistanceFarOffAlarms(int rows, double leastInHundred) {
        assertThat(inHundred(rows, 20, path -> path.contradiction().exists()))
                .isGreaterThanOrEqualTo(leastInHundred);
    }

    /**
     * Weights, suspects, doubt and expected distances against fits made anew by another library,
     * from the formulas of the trade document written out once more.
     */
    @Test
    void agreesWithFitsMadeAnew() {
        int suspects = 0;
        for (int number = 0; number < SETS; number++) {
            int rows = 5 + number % 6;
            SimulatedReadings readings = set(number, rows);
            if (number % 3 > 0) {
                readings = readings.off(wrongRow(number, rows), number % 3 == 1 ? 20 : -9.5);
            }
            suspects += compared(readings);
        }
        assertThat(suspects).isGreaterThan(200);
    }

    private static int compared(SimulatedReadings readings) {
        MeasuredPath path = readings.fit();
        List<TapeRow> rows = readings.rows();
        int count = rows.size();
        double[] s = new double[count];
        double[] number = new double[count];
        double[] reach = new double[count];
        double squares = 0;
        double freedom = 0;
        for (int i = 0; i < count; i++) {
            TapeRow row = rows.get(i);
            s[i] = path.rows().get(i).s();
            number[i] = row.readings();
            double rise = row.height() - SimulatedReadings.INNER;
            double c = row.meanDistance();
            reach[i] = c * c - row.foreAft() * row.foreAft() - rise * rise;
            squares += row.scatter();
            freedom += row.readings() - 1;
        }
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        double[] ahead = rows.stream().mapToDouble(TapeRow::foreAft).toArray();
        Refits first = new Refits(s, number, reach, 3);
        Refits foreAft = new Refits(s, ones, ahead, 3);
        double travel = path.path().travel();
        double allowance = 0.8 * Math.pow(travel / 450, 4);
        double resolution = readings.settings().tapeGraduation() / Math.sqrt(12);
        double[] weights = new double[count];
        for (int i = 0; i < count; i++) {
            double step = 1e-4;
            double up =
                    distance(first, foreAft, s[i] + step, rows.get(i).height() + step * travel / 2);
            double down =
                    distance(first, foreAft, s[i] - step, rows.get(i).height() - step * travel / 2);
            double slope = (up - down) / (step * travel);
            double variance =
                    squares / freedom / number[i]
                            + resolution * resolution
                            + Math.pow(slope * resolution, 2)
                            + Math.pow(allowance / 2, 2);
            weights[i] = 1 / (4 * Math.pow(rows.get(i).meanDistance(), 2) * variance);
            assertThat(path.reach().basis().weight(i))
                    .isCloseTo(weights[i], within(1e-6 * weights[i]));
        }
        Refits fit = new Refits(s, weights, reach, 3);
        List<Integer> gone = fit.leftOut(6);
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (gone.contains(i)) {
                numbers.add(i + 1);
                double expected =
                        Math.sqrt(
                                fit.value(gone, s[i])
                                        + ahead[i] * ahead[i]
                                        + Math.pow(
                                                rows.get(i).height() - SimulatedReadings.INNER, 2));
                assertThat(path.rows().get(i).expected()).isCloseTo(expected, within(1e-5));
            }
        }
        assertThat(path.contradiction().suspectRows()).isEqualTo(numbers);
        double largest = 0;
        for (double z : fit.standardised(gone)) {
            largest = Math.max(largest, z);
        }
        if (largest <= 3.5) {
            for (double at = -1; at <= 1; at += 0.125) {
                double t = path.path().tMin() + travel * (at + 1) / 2;
                double c = distance(fit, foreAft, at, SimulatedReadings.RIDE + t);
                double shift = (fit.value(gone, at) - fit.value(List.of(), at)) / (2 * c);
                double doubt = fit.deviation(at) / c + allowance + Math.abs(shift);
                assertThat(path.path().at(t).distance()).isCloseTo(c, within(1e-5));
                assertThat(path.path().at(t).doubt()).isCloseTo(doubt, within(1e-5));
            }
        }
        return gone.size();
    }

    private static double distance(Refits reach, Refits foreAft, double s, double height) {
        double x = foreAft.value(List.of(), s);
        double rise = height - SimulatedReadings.INNER;
        return Math.sqrt(reach.value(List.of(), s) + x * x + rise * rise);
    }

    @Test
    void foreAftFarOffIsNamed() {
        for (int number = 0; number < 27; number++) {
            SimulatedReadings readings = set(number, 7);
            TapeRow row = readings.rows().get(3);
            MeasuredPath path =
                    readings.with(
                                    3,
                                    new TapeRow(
                                            4,
                                            row.height(),
                                            row.distances(),
                                            row.foreAft() + 20,
                                            row.camber(),
                                            row.toe()))
                            .fit();
            assertThat(path.contradiction().suspects())
                    .extracting(SuspectReading::row, SuspectReading::quantity)
                    .contains(Tuple.tuple(4, MeasuredQuantity.FORE_AFT));
        }
    }

    @Test
    void camberFarOffIsNamedAndNothingElse() {
        for (int number = 0; number < 27; number++) {
            SimulatedReadings readings = set(number, 7);
            TapeRow row = readings.rows().get(3);
            double wrong = row.camber().getAsDouble() + Math.toRadians(5);
            MeasuredPath path =
                    readings.with(
                                    3,
                                    new TapeRow(
                                            4,
                                            row.height(),
                                            row.distances(),
                                            row.foreAft(),
                                            OptionalDouble.of(wrong),
                                            row.toe()))
                            .fit();
            assertThat(path.contradiction().suspects()).hasSize(1);
            SuspectReading suspect = path.contradiction().suspects().get(0);
            assertThat(suspect.row()).isEqualTo(4);
            assertThat(suspect.quantity()).isEqualTo(MeasuredQuantity.CAMBER);
            assertThat(suspect.read()).isEqualTo(wrong);
            assertThat(suspect.expected())
                    .isCloseTo(row.camber().getAsDouble(), within(Math.toRadians(1)));
            // A wrong camber says nothing of distances.
            assertThat(path.contradiction().suspectRows()).isEmpty();
        }
    }
}
