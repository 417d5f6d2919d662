package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every declaration must have, and that every function gives its worked example's result. */
class CatalogueTest {
    static Stream<CellFunction> all() {
        return Catalogue.all().stream();
    }

    /** The expected numbers come from where each example says. */
    @ParameterizedTest
    @MethodSource("all")
    void workedExampleComesOut(CellFunction function) {
        workedExampleComesOut(function, WorkbookUnit.NONE);
    }

    /** Whoever tries an example may sit before a workbook in either unit. */
    @ParameterizedTest
    @MethodSource("all")
    void workedExampleComesOutInMetricWorkbooks(CellFunction function) {
        workedExampleComesOut(function, () -> Value.of("mm"));
    }

    private static void workedExampleComesOut(CellFunction function, WorkbookUnit unit) {
        Example example = function.example();
        List<Value> row = new ArrayList<>();
        Value result = function.evaluate(example.arguments(), unit);
        row.addAll(result instanceof Value.Block block ? block.rows().get(0) : List.of(result));

        for (int i = 0; i < example.expected().size(); i++) {
            if (example.expected().get(i) instanceof Value.Numeric expected) {
                assertThat(row.get(i)).isInstanceOf(Value.Numeric.class);
                assertThat(((Value.Numeric) row.get(i)).number())
                        .isCloseTo(
                                expected.number(),
                                within(0.5000001 * Math.pow(10, -example.decimals())));
            } else {
                assertThat(row.get(i)).isEqualTo(example.expected().get(i));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void declarationIsWhole(CellFunction function) {
        // Letters only: what looks like a cell's address can't be a name, an underscore fails in
        // files that LibreOffice reads.
        assertThat(function.shortName()).matches("[A-Z]{4,}");
        assertThat(function.meaning()).endsWith(".");
        assertThat(function.source()).isNotBlank();
        assertThat(function.example().from()).isNotBlank();
        Set<String> names = new HashSet<>();
        boolean optional = false;
        for (Parameter parameter : function.parameters()) {
            assertThat(parameter.name()).matches("[a-z]{3,}");
            assertThat(names.add(parameter.name())).as(parameter.name()).isTrue();
            assertThat(optional && !parameter.isOptional()).as("required after optional").isFalse();
            optional = parameter.isOptional();
        }
    }

    @Test
    void namesDiffer() {
        assertThat(Catalogue.all()).extracting(CellFunction::name).doesNotHaveDuplicates();
    }

    @Test
    void functionIsFoundByEitherName() {
        assertThat(Catalogue.find("shaft.reach")).isEqualTo(Catalogue.find("REACH"));
        assertThat(Catalogue.find("reach")).isPresent();
        assertThat(Catalogue.find("reaches")).isEmpty();
    }
}
