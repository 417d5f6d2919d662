package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any lengths: units do not matter, inverse functions undo each other. */
class FunctionPropertiesTest {
    private static final double MM_PER_INCH = 25.4;
    private static final int SETS = 200;

    static Stream<CellFunction> withUnit() {
        return Catalogue.all().stream().filter(f -> unitPlace(f) >= 0);
    }

    private static int unitPlace(CellFunction function) {
        int last = function.parameters().size() - 1;
        return function.parameters().get(last).measure() == Measure.UNIT ? last : -1;
    }

    /** The same lengths in inches and in millimetres give the same answer. */
    @ParameterizedTest
    @MethodSource("withUnit")
    void unitDoesNotMatter(CellFunction function) {
        RandomArguments random = new RandomArguments(function.name().hashCode() + 1);
        int compared = 0;
        for (int set = 0; set < SETS; set++) {
            List<Value> inches = random.plausible(function.parameters());
            List<Value> metric = new ArrayList<>();
            for (int i = 0; i < inches.size(); i++) {
                boolean length = function.parameters().get(i).measure() == Measure.LENGTH;
                metric.add(length ? scaled(inches.get(i)) : inches.get(i));
            }
            inches.set(unitPlace(function), Value.of("in"));
            metric.set(unitPlace(function), Value.of("mm"));
            compared +=
                    compare(
                            function,
                            cells(function.evaluate(inches)),
                            cells(function.evaluate(metric)));
        }
        assertThat(compared).isPositive();
    }

    private static int compare(CellFunction function, List<Value> inches, List<Value> metric) {
        int compared = 0;
        assertThat(metric).hasSameSizeAs(inches);
        for (int i = 0; i < inches.size(); i++) {
            if (inches.get(i) instanceof Value.Numeric a
                    && metric.get(i) instanceof Value.Numeric b) {
                int column =
                        Math.min(i % Math.max(1, inches.size()), function.columns().size() - 1);
                boolean length = function.columns().get(column) == Measure.LENGTH;
                double expected = length ? a.number() * MM_PER_INCH : a.number();
                assertThat(b.number())
                        .as(function.name())
                        .isCloseTo(expected, within(1e-7 * Math.abs(expected) + 1e-6));
                compared++;
            } else if (inches.get(i) instanceof Value.Text) {
                assertThat(metric.get(i)).isEqualTo(inches.get(i));
                compared++;
            } else {
                // A bound may be met by a hair on one side only after scaling; errors stay errors.
                assertThat(inches.get(i)).isInstanceOf(Value.Fault.class);
            }
        }
        return compared;
    }

    private static Value scaled(Value value) {
        if (value instanceof Value.Block block) {
            List<List<Value>> rows = new ArrayList<>();
            for (List<Value> row : block.rows()) {
                rows.add(row.stream().map(FunctionPropertiesTest::scaled).toList());
            }
            return new Value.Block(rows);
        }
        return value instanceof Value.Numeric number
                ? Value.of(number.number() * MM_PER_INCH)
                : value;
    }

    private static List<Value> cells(Value result) {
        return result instanceof Value.Block block
                ? block.rows().stream().flatMap(List::stream).toList()
                : List.of(result);
    }

    @Property
    void reachUndoesDistance(
            @ForAll @DoubleRange(min = 1, max = 900) double reach,
            @ForAll @DoubleRange(min = -300, max = 300) double rise,
            @ForAll @DoubleRange(min = -300, max = 300) double foreAft) {
        double distance = number("DISTANCE", reach, rise, foreAft);

        assertThat(number("REACH", distance, rise, foreAft)).isCloseTo(reach, within(1e-7));
    }

    @Property
    void clipToClipUndoesEndToEnd(
            @ForAll @DoubleRange(min = 1, max = 900) double clips,
            @ForAll @DoubleRange(min = 0, max = 50) double inner,
            @ForAll @DoubleRange(min = 0, max = 50) double outer) {
        double whole = number("ENDTOEND", clips, inner, outer);

        assertThat(number("CLIPTOCLIP", whole, inner, outer)).isCloseTo(clips, within(1e-9));
    }

    @Property
    void racesAndClipsUndoEachOther(
            @ForAll @DoubleRange(min = 100, max = 900) double clips,
            @ForAll @DoubleRange(min = 5, max = 30) double inner,
            @ForAll @DoubleRange(min = 5, max = 30) double outer,
            @ForAll @DoubleRange(min = 0, max = 9) double counterbore) {
        double races = number("RACESPACING", clips, inner, outer, counterbore);

        assertThat(number("CLIPSFORRACES", races, inner, outer, counterbore))
                .isCloseTo(clips, within(1e-9));
    }

    @Property
    void roadSpeedUndoesWheelSpeed(
            @ForAll @DoubleRange(min = 1, max = 300) double speed,
            @ForAll @DoubleRange(min = 15, max = 40) double diameter) {
        double rpm = number("WHEELSPEED", speed, diameter);

        assertThat(number("ROADSPEED", rpm, diameter)).isCloseTo(speed, within(1e-9 * speed));
    }

    @Property
    void pushedInBySoMuchTheShaftSpansThatSpacing(
            @ForAll @DoubleRange(min = 200, max = 500) double reach,
            @ForAll @DoubleRange(min = -80, max = 80) double rise,
            @ForAll @DoubleRange(min = -5, max = 5) double camber,
            @ForAll @DoubleRange(min = 0.97, max = 1.03) double longer) {
        double spacing = longer * number("DISTANCE", reach, rise, 0);
        double push = number("PUSHIN", reach, rise, 0, spacing, camber);

        assertThat(number("PUSHEDSPACING", reach, rise, 0, push, push, camber))
                .isCloseTo(spacing, within(1e-6));
    }

    @Property
    void withHardStopsTheShortestShaftIsThatWhichPullsOut(
            @ForAll @DoubleRange(min = 200, max = 500) double reach,
            @ForAll @DoubleRange(min = -80, max = 80) double rise,
            @ForAll @DoubleRange(min = 0, max = 40) double outInner,
            @ForAll @DoubleRange(min = 0, max = 40) double outOuter) {
        double slack = number("SLACKOUT", reach, rise, 0, 430, outInner, outOuter);

        assertThat(number("SOFTSLACK", reach, rise, 0, 430, 9, outInner, 9, outOuter))
                .isCloseTo(slack, within(1e-9));
        assertThat(number("SHORTESTSPACING", reach, rise, 0, 9, outInner, 9, outOuter))
                .isCloseTo(430 - slack, within(1e-9));
    }

    /** One race out to its soft stop while the other is pushed fully in. */
    @Property
    void aSoftStopAsksForALongerShaftTheMoreTheOtherRaceMayGoIn(
            @ForAll @DoubleRange(min = 200, max = 500) double reach,
            @ForAll @DoubleRange(min = -80, max = 80) double rise,
            @ForAll @DoubleRange(min = 0, max = 40) double in,
            @ForAll @DoubleRange(min = 0, max = 40) double out,
            @ForAll @DoubleRange(min = -5, max = 5) double camber) {
        assertThat(number("SHORTESTSPACING", reach, rise, 0, 0, out, in, out, 1, 0, camber))
                .isCloseTo(number("PUSHEDSPACING", reach, rise, 0, -out, in, camber), within(1e-9));
        assertThat(number("SHORTESTSPACING", reach, rise, 0, in, out, 0, out, 0, 1, camber))
                .isCloseTo(number("PUSHEDSPACING", reach, rise, 0, in, -out, camber), within(1e-9));
    }

    @Property
    void moreTorqueMeansMoreStressAndLessLife(
            @ForAll @DoubleRange(min = 10, max = 2000) double torque,
            @ForAll @DoubleRange(min = 1.01, max = 3) double more,
            @ForAll @DoubleRange(min = 1, max = 29) double angle) {
        assertThat(number("BARSTRESS", torque * more, 1.2))
                .isGreaterThan(number("BARSTRESS", torque, 1.2));
        assertThat(number("JOINTLIFE", 900, torque * more, angle, 800))
                .isLessThan(number("JOINTLIFE", 900, torque, angle, 800));
        assertThat(number("JOINTFACTOR", angle * more)).isLessThan(number("JOINTFACTOR", angle));
    }

    private static double number(String function, double... arguments) {
        List<Value> given = new ArrayList<>();
        for (double argument : arguments) {
            given.add(Value.of(argument));
        }
        return ((Value.Numeric) Catalogue.find(function).orElseThrow().evaluate(given)).number();
    }
}
