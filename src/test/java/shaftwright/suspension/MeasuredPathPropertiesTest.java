package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

class MeasuredPathPropertiesTest {
    /** Readings of one side with everything that a fit depends on. */
    record Side(List<TapeRow> rows, double ride, double inner, TapeSettings settings) {
        MeasuredPath fit() {
            return MeasuredPath.fit(rows, ride, inner, settings);
        }

        Side map(double shift, double scale, double direction) {
            List<TapeRow> mapped = new ArrayList<>();
            for (TapeRow row : rows) {
                mapped.add(
                        new TapeRow(
                                row.number(),
                                row.height() * scale + shift,
                                row.distances().stream().map(c -> c * scale).toList(),
                                row.foreAft() * scale * direction,
                                row.camber(),
                                row.toe()));
            }
            TapeSettings scaled =
                    new TapeSettings(
                            settings.tapeGraduation() * scale,
                            settings.heightGraduation() * scale,
                            settings.degree(),
                            0,
                            0);
            return new Side(mapped, ride * scale + shift, inner * scale + shift, scaled);
        }
    }

    @Provide
    Arbitrary<Side> sides() {
        return Arbitraries.integers()
                .between(2, 15)
                .flatMap(count -> Arbitraries.longs().map(seed -> side(count, new Random(seed))));
    }

    private static Side side(int count, Random random) {
        List<TapeRow> rows = new ArrayList<>();
        double step = 260.0 / count;
        for (int i = 0; i < count; i++) {
            double height = 400 + step * (i + 0.6 * random.nextDouble());
            List<Double> readings = new ArrayList<>();
            for (int k = 0; k <= random.nextInt(3); k++) {
                readings.add(600 + 30 * random.nextDouble());
            }
            OptionalDouble camber =
                    random.nextBoolean()
                            ? OptionalDouble.of(0.1 * random.nextDouble())
                            : OptionalDouble.empty();
            rows.add(
                    new TapeRow(
                            i + 1,
                            height,
                            readings,
                            10 * random.nextDouble(),
                            camber,
                            OptionalDouble.empty()));
        }
        double ride = rows.get(count / 2).height();
        TapeSettings settings = new TapeSettings(1.5, 1, DegreeChoice.AUTO, 0, 0);
        return new Side(rows, ride, 480 + 80 * random.nextDouble(), settings);
    }

    @Property
    void orderOfRowsDoesNotMatter(@ForAll("sides") Side side, @ForAll long seed) {
        List<TapeRow> shuffled = new ArrayList<>(side.rows());
        Collections.shuffle(shuffled, new Random(seed));
        assertSame(side.fit(), new Side(shuffled, side.ride, side.inner, side.settings).fit(), 1);
    }

    @Property
    void heightsMayBeTakenFromAnyReference(
            @ForAll("sides") Side side, @ForAll @DoubleRange(min = -900, max = 900) double shift) {
        assertSame(side.fit(), side.map(shift, 1, 1).fit(), 1);
    }

    @Property
    void anotherUnitGivesTheSamePath(
            @ForAll("sides") Side side, @ForAll @DoubleRange(min = 0.1, max = 25.4) double scale) {
        assertSame(side.fit(), side.map(0, scale, 1).fit(), scale);
    }

    @Property
    void aMirroredSideHasTheMirroredPath(@ForAll("sides") Side side) {
        HubPath path = side.fit().path();
        HubPath mirrored = side.map(0, 1, -1).fit().path();
        for (double s = -1; s <= 1; s += 0.25) {
            assertThat(mirrored.foreAft().at(s)).isCloseTo(-path.foreAft().at(s), within(1e-9));
            assertThat(mirrored.reachSquared().at(s))
                    .isCloseTo(path.reachSquared().at(s), within(1e-6));
        }
    }

    @Property
    void hatValuesAddUpToTheNumberOfCoefficients(@ForAll("sides") Side side) {
        MeasuredPath measured = side.fit();
        OrthogonalBasis basis = measured.reach().basis();
        double sum = 0;
        for (int row = 0; row < measured.rows().size(); row++) {
            sum += basis.hat(row);
        }
        assertThat(sum).isCloseTo(measured.degree() + 1.0, within(1e-9));
    }

    /** Whatever is typed, there is a path of numbers or a list of reasons, nothing else. */
    @Property
    void wildReadingsGiveAPathOrReasons(@ForAll("wildSides") Side side) {
        MeasuredPath measured;
        try {
            measured = side.fit();
        } catch (UnusableReadingsException refusal) {
            assertThat(refusal.problems()).isNotEmpty();
            Statistics.collect("refused");
            return;
        }
        Statistics.collect("fitted");
        Statistics.coverage(
                coverage -> {
                    coverage.check("fitted").percentage(share -> share > 5);
                    coverage.check("refused").percentage(share -> share > 5);
                });
        HubPoint ride = measured.path().at(0);
        assertThat(ride.reach()).isPositive().isFinite();
        assertThat(ride.doubt()).isPositive().isFinite();
        assertThat(measured.rows()).allSatisfy(row -> assertThat(row.residual()).isNotNaN());
    }

    @Provide
    Arbitrary<Side> wildSides() {
        Arbitrary<Double> wild =
                Arbitraries.oneOf(
                        Arbitraries.doubles().between(-10, 1200),
                        Arbitraries.doubles(),
                        Arbitraries.of(
                                0.0, -0.0, Double.NaN, Double.POSITIVE_INFINITY, 1e300, 1e-300));
        return Combinators.combine(sides(), wild, Arbitraries.longs())
                .as((side, value, seed) -> spoiled(side, value, new Random(seed)));
    }

    /** The side with one of its numbers replaced. */
    private static Side spoiled(Side side, double value, Random random) {
        int which = random.nextInt(6);
        int at = random.nextInt(side.rows.size());
        TapeRow row = side.rows.get(at);
        List<Double> distances = new ArrayList<>(row.distances());
        if (which == 0) {
            distances.set(0, value);
        } else if (which == 1) {
            distances.add(value);
        }
        TapeRow spoiled =
                new TapeRow(
                        row.number(),
                        which == 2 ? value : row.height(),
                        distances,
                        which == 3 ? value : row.foreAft(),
                        which == 4 ? OptionalDouble.of(value) : row.camber(),
                        row.toe());
        List<TapeRow> rows = new ArrayList<>(side.rows);
        rows.set(at, spoiled);
        return new Side(rows, which == 5 ? value : side.ride, side.inner, side.settings);
    }

    private static void assertSame(MeasuredPath one, MeasuredPath other, double scale) {
        for (double s = -1; s <= 1; s += 0.25) {
            double t = one.path().tMin() + one.path().travel() * (s + 1) / 2;
            HubPoint point = one.path().at(t);
            double there = other.path().tMin() + other.path().travel() * (s + 1) / 2;
            HubPoint same = other.path().at(there);
            double tolerance = 1e-8 * Math.max(1, scale);
            assertThat(same.reach()).isCloseTo(point.reach() * scale, within(tolerance));
            assertThat(same.foreAft()).isCloseTo(point.foreAft() * scale, within(tolerance));
            assertThat(same.rise()).isCloseTo(point.rise() * scale, within(tolerance));
            assertThat(same.camber()).isCloseTo(point.camber(), within(1e-9));
            assertThat(same.doubt()).isCloseTo(point.doubt() * scale, within(tolerance));
        }
    }
}
