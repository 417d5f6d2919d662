package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shaftwright.suspension.CrossCheck;
import shaftwright.suspension.NextReading;
import shaftwright.units.LengthUnit;

class ReadingWordingTest {
    private static final NextReading NEXT = new NextReading(406.4, 3.048, 2.032);

    private static String words(CrossCheck check, double graduation, LengthUnit unit) {
        return ReadingWording.next(NEXT, check, graduation, unit);
    }

    @Test
    void readingThatTellsMoreIsAskedForByItsHeight() {
        assertThat(words(CrossCheck.NAMES_THE_ROW, 1, LengthUnit.INCH))
                .isEqualTo(
                        "The largest doubt of the distance is 0.12 in; one more reading with the"
                                + " outer datum near 16 in would bring it to 0.08 in.");
        assertThat(words(CrossCheck.NONE, 1, LengthUnit.MILLIMETRE))
                .isEqualTo(
                        "The largest doubt of the distance is 3.0 mm; one more reading with the"
                                + " outer datum near 406 mm would bring it to 2.0 mm.");
    }

    @Test
    void enoughIsEnoughOnlyWhereAWrongReadingWouldBeNamed() {
        assertThat(words(CrossCheck.NAMES_THE_ROW, 3, LengthUnit.INCH))
                .isEqualTo(
                        "The largest doubt of the distance is 0.12 in; one more reading would lower"
                                + " it by less than half a graduation.");
        assertThat(words(CrossCheck.SHOWS_A_CONTRADICTION, 3, LengthUnit.INCH))
                .isEqualTo(words(CrossCheck.NONE, 3, LengthUnit.INCH))
                .endsWith(
                        ", if no reading is wrong; so few can't tell which one is: one more reading"
                                + " with the outer datum near 16 in helps most.");
    }
}
