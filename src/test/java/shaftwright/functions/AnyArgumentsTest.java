package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever cells hold, a function gives a finite number, a text or the right error. */
class AnyArgumentsTest {
    private static final int SETS = 3000;

    static Stream<CellFunction> all() {
        return Catalogue.all().stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void nothingThrowsAndNothingIsInfinite(CellFunction function) {
        RandomArguments random = new RandomArguments(function.name().hashCode());
        for (int i = 0; i < SETS; i++) {
            List<Value> given = random.nasty(function.parameters());
            Value result = function.evaluate(given);
            for (Value cell : cells(result)) {
                if (cell instanceof Value.Numeric number) {
                    assertThat(number.number()).as("%s of %s", function, given).isFinite();
                } else if (cell instanceof Value.Fault fault) {
                    assertThat(fault.code()).isIn("#VALUE!", "#NUM!", "#N/A", "#DIV/0!");
                } else {
                    assertThat(cell).isInstanceOf(Value.Text.class);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void exampleWithOneSpoiltArgumentGivesTheRightError(CellFunction function) {
        List<Value> good = function.example().arguments();
        for (int i = 0; i < good.size(); i++) {
            Parameter parameter = function.parameters().get(i);
            assertThat(with(function, i, new Value.Fault("#REF!")))
                    .isEqualTo(new Value.Fault("#REF!"));
            assertThat(with(function, i, new Value.Fault("#N/A"))).isEqualTo(Value.NO_ANSWER);
            if (parameter.measure().isNumber()) {
                assertThat(with(function, i, Value.of("no number"))).isEqualTo(Value.WRONG_SORT);
                assertThat(with(function, i, Value.of(Double.NaN))).isEqualTo(Value.IMPOSSIBLE);
                assertThat(with(function, i, Value.of(1e300))).isEqualTo(Value.IMPOSSIBLE);
                assertThat(with(function, i, Value.of(Double.NEGATIVE_INFINITY)))
                        .isEqualTo(Value.IMPOSSIBLE);
            }
            if (!parameter.isOptional() && !parameter.isRange()) {
                assertThat(with(function, i, Value.BLANK)).isEqualTo(Value.WRONG_SORT);
                assertThat(with(function, i, Value.of(""))).isEqualTo(Value.WRONG_SORT);
            }
            if (!parameter.isRange()) {
                Value pair = new Value.Block(List.of(List.of(good.get(i), good.get(i))));
                boolean isOne = function.isBlock() || parameter.measure() == Measure.UNIT;
                Value answer = function.evaluate(good);
                assertThat(with(function, i, pair))
                        .isEqualTo(
                                isOne
                                        ? Value.WRONG_SORT
                                        : new Value.Block(List.of(List.of(answer, answer))));
            }
        }
    }

    @Test
    void lengthMayBeTapeText() {
        CellFunction function = Catalogue.find("ENDTOEND").orElseThrow();

        Value whole =
                function.evaluate(List.of(Value.of("25 3/8"), Value.of(0.5), Value.of("12.7 mm")));
        assertThat(((Value.Numeric) whole).number()).isCloseTo(26.375, within(1e-12));
        assertThat(function.evaluate(List.of(Value.of("25 3/0"), Value.of(0.5), Value.of(1))))
                .isEqualTo(Value.WRONG_SORT);
        assertThat(
                        Catalogue.find("LENGTH")
                                .orElseThrow()
                                .evaluate(List.of(Value.of("2\""), Value.of("mm"))))
                .isEqualTo(Value.of(50.8));
    }

    /** 2² + 3² + 6² = 7², 3² + 4² = 5²; a lone number goes with every row. */
    @Test
    void wholeColumnsGiveOneAnswerARow() {
        CellFunction distance = Catalogue.find("DISTANCE").orElseThrow();
        Value reaches = column(Value.of(2), Value.of(3), Value.of("x"), Value.BLANK);
        Value rises = column(Value.of(3), Value.of("4 in"), Value.of(3), Value.of(3));
        Value aft = column(Value.of(6), Value.of(0), Value.of(6), Value.of(6));

        assertThat(distance.evaluate(List.of(reaches, rises, aft)))
                .isEqualTo(column(Value.of(7), Value.of(5), Value.WRONG_SORT, Value.WRONG_SORT));
        assertThat(distance.evaluate(List.of(column(Value.of(3), Value.of(6)), Value.of(4))))
                .isEqualTo(column(Value.of(5), Value.of(Math.sqrt(52))));
        Value across = new Value.Block(List.of(List.of(Value.of(4), Value.of(1e300))));
        assertThat(distance.evaluate(List.of(column(Value.of(3), Value.of(0)), across)))
                .isEqualTo(
                        new Value.Block(
                                List.of(
                                        List.of(Value.of(5), Value.IMPOSSIBLE),
                                        List.of(Value.of(4), Value.IMPOSSIBLE))));
    }

    @Test
    void columnsThatDoNotGoTogetherAreRefused() {
        CellFunction distance = Catalogue.find("DISTANCE").orElseThrow();
        Value two = column(Value.of(1), Value.of(2));
        Value three = column(Value.of(1), Value.of(2), Value.of(3));

        assertThat(distance.evaluate(List.of(two, three))).isEqualTo(Value.WRONG_SORT);
        assertThat(distance.evaluate(List.of(column(Value.of(1), Value.NO_ANSWER), two)))
                .isEqualTo(Value.WRONG_SORT);
        assertThat(distance.evaluate(List.of(two, Value.of(1), Value.of(1), two)))
                .isEqualTo(column(Value.WRONG_SORT, Value.WRONG_SORT));
    }

    @Test
    void unknownUnitIsRefused() {
        CellFunction function = Catalogue.find("INCHES").orElseThrow();

        assertThat(function.evaluate(List.of(Value.of(1), Value.of("cm"))))
                .isEqualTo(Value.WRONG_SORT);
        assertThat(function.evaluate(List.of(Value.of(1), Value.of(25.4))))
                .isEqualTo(Value.WRONG_SORT);
        assertThat(function.evaluate(List.of(Value.of(1), Value.of("INCH"))))
                .isEqualTo(Value.of(1));
    }

    @Test
    void unitOfTheWorkbookCountsWhereNoneIsGiven() {
        CellFunction function = Catalogue.find("MILLIMETRES").orElseThrow();
        List<Value> two = List.of(Value.of(2));

        assertThat(function.evaluate(two)).isEqualTo(Value.of(50.8));
        assertThat(function.evaluate(two, () -> Value.of("mm"))).isEqualTo(Value.of(2));
        assertThat(function.evaluate(two, () -> Value.of("inch"))).isEqualTo(Value.of(50.8));
        assertThat(function.evaluate(two, () -> Value.of("each"))).isEqualTo(Value.WRONG_SORT);
        assertThat(function.evaluate(two, () -> Value.EMPTY_CELL)).isEqualTo(Value.WRONG_SORT);
        assertThat(function.evaluate(List.of(Value.of(2), Value.of("in")), () -> Value.of("mm")))
                .isEqualTo(Value.of(50.8));
        assertThat(function.evaluate(List.of(Value.of(2), Value.EMPTY_CELL), () -> Value.of("mm")))
                .isEqualTo(Value.of(2));
    }

    @Test
    void blankRowsOfColumnsAreLeftOutButNotHalfRows() {
        CellFunction bench = Catalogue.find("BENCHLIMIT").orElseThrow();
        Value angles = column(Value.of(0), Value.BLANK, Value.of(20));

        assertThat(
                        bench.evaluate(
                                List.of(
                                        Value.of(10),
                                        angles,
                                        column(Value.of(22), Value.BLANK, Value.of(12)))))
                .isEqualTo(Value.of(17));
        assertThat(
                        bench.evaluate(
                                List.of(
                                        Value.of(10),
                                        angles,
                                        column(Value.of(22), Value.of(1), Value.of(12)))))
                .isEqualTo(Value.WRONG_SORT);
        assertThat(
                        bench.evaluate(
                                List.of(Value.of(10), angles, column(Value.of(22), Value.of(12)))))
                .isEqualTo(Value.WRONG_SORT);
    }

    @Test
    void emptyWindowHasNoLength() {
        CellFunction choose = Catalogue.find("CHOOSELENGTH").orElseThrow();

        assertThat(choose.evaluate(List.of(Value.of(630), Value.of(620))))
                .isEqualTo(Value.NO_ANSWER);
        assertThat(
                        choose.evaluate(
                                List.of(
                                        Value.of(620.2),
                                        Value.of(620.8),
                                        Value.of(0.5),
                                        Value.of(1))))
                .isEqualTo(Value.NO_ANSWER);
    }

    private static Value with(CellFunction function, int place, Value value) {
        List<Value> arguments = new ArrayList<>(function.example().arguments());
        arguments.set(place, value);
        return function.evaluate(arguments);
    }

    private static Value column(Value... cells) {
        return new Value.Block(Stream.of(cells).map(List::of).toList());
    }

    private static List<Value> cells(Value result) {
        return result instanceof Value.Block block
                ? block.rows().stream().flatMap(List::stream).toList()
                : List.of(result);
    }
}
