package shaftwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.joint.SplineForm.Property;

class SplineFormTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** A pitch counts teeth per inch, and an inch is 25.4 mm by definition. */
    @ParameterizedTest
    @CsvSource({"24, 1.0583", "32, 0.79375", "25.4, 1", "12, 2.1167"})
    void modulesAreAnInchByThePitch(double pitch, double module) {
        assertThat(SplineForm.module(pitch)).isCloseTo(module, within(5e-5));
    }

    /** Neighbours of both series, as ISO 4156 and ANSI B92.1 have them (from memory). */
    @ParameterizedTest
    @CsvSource({
        "24, 1, false",
        "32, 0.8, false",
        "20, 1.25, false",
        "16, 1.5, false",
        "10, 2.5, false",
        "24, 1.058, true",
        "48, 0.529, true"
    })
    void pitchAndModuleOfTwoSeriesAreToldApart(double pitch, double module, boolean same) {
        assertThat(SplineForm.sameModule(SplineForm.module(pitch), module)).isEqualTo(same);
    }

    /** Pressure angles of ISO 4156 and ANSI B92.1: 30, 37.5 and 45 degrees (from memory). */
    @ParameterizedTest
    @CsvSource({"30, 30, false", "30, 37.5, true", "37.5, 45, true", "45, 30, true"})
    void standardPressureAnglesDoNotMate(double first, double second, boolean differs) {
        SplineForm one = angled(first);
        assertThat(one.differenceTo(angled(second)).isPresent()).isEqualTo(differs);
    }

    @Test
    void whatIsNotKnownOfBothIsHeldAgainstNothing() {
        SplineForm fillet = new SplineForm("", NONE, NONE, "fillet", "");
        SplineForm module = new SplineForm("ISO", OptionalDouble.of(1), NONE, "", "side");
        assertThat(fillet.differenceTo(module)).isEmpty();
        assertThat(fillet.comparesWith(module)).isFalse();
        assertThat(SplineForm.UNKNOWN.comparesWith(SplineForm.UNKNOWN)).isFalse();
    }

    @Test
    void theFirstDifferenceIsTold() {
        SplineForm one = new SplineForm("ANSI", OptionalDouble.of(1), NONE, "flat", "side");
        SplineForm other = new SplineForm("ansi", OptionalDouble.of(1), NONE, "Flat", "major");
        assertThat(one.differenceTo(other)).contains(Property.FIT);
        assertThat(one.comparesWith(other)).isTrue();
    }

    private static SplineForm angled(double degrees) {
        return new SplineForm("", NONE, OptionalDouble.of(Math.toRadians(degrees)), "", "");
    }
}
