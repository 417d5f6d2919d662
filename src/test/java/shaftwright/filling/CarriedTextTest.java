package shaftwright.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shaftwright.units.LengthUnit.INCH;
import static shaftwright.units.LengthUnit.MILLIMETRE;

import org.junit.jupiter.api.Test;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;

/** A pound-foot is 1.355817948 N·m: NIST SP 811, appendix B.8. */
class CarriedTextTest {
    private static final Input TORQUE =
            Contract.inputs().stream()
                    .filter(input -> input.kind() == InputKind.TORQUE)
                    .findFirst()
                    .orElseThrow();
    private static final Input LENGTH = Contract.input("transaxle_up");

    @Test
    void torqueIsConvertedHoweverItWasTyped() {
        for (CellValue typed : new CellValue[] {CellValue.of(100), CellValue.of("100")}) {
            assertThat(Double.parseDouble(CarriedText.of(TORQUE, typed, INCH, MILLIMETRE)))
                    .isCloseTo(135.58, within(0.01));
            CellValue exactly = CarriedText.exactly(TORQUE, typed, INCH, MILLIMETRE);
            assertThat(((CellValue.Numeric) exactly).value()).isCloseTo(135.5817948, within(1e-7));
        }
        assertThat(CarriedText.of(TORQUE, CellValue.of("100"), INCH, INCH)).isEqualTo("100");
    }

    @Test
    void lengthsAreMarkedWhereTheyNeedItAndNotConverted() {
        assertThat(CarriedText.of(LENGTH, CellValue.of("3.5"), INCH, MILLIMETRE))
                .isEqualTo("3.5 in");
        // A fraction is of an inch everywhere.
        assertThat(CarriedText.of(LENGTH, CellValue.of("3 3/8"), INCH, MILLIMETRE))
                .isEqualTo("3 3/8");
        assertThat(CarriedText.of(LENGTH, CellValue.of("12 mm"), INCH, MILLIMETRE))
                .isEqualTo("12 mm");
        assertThat(CarriedText.exactly(LENGTH, CellValue.of(12), MILLIMETRE, INCH))
                .isEqualTo(CellValue.of("12 mm"));
    }

    @Test
    void emptyAndUnreadableCellsStayAsTheyAre() {
        assertThat(CarriedText.of(TORQUE, CellValue.BLANK, INCH, MILLIMETRE)).isEmpty();
        assertThat(CarriedText.of(TORQUE, CellValue.of("much"), INCH, MILLIMETRE))
                .isEqualTo("much");
    }
}
