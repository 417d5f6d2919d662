package shaftwright.badinput;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;

/** One cell holds what can't be read. */
class TypedCellsTest {
    @TempDir private Path folder;

    private Refusal refused(String name, int offset, String text) {
        return Refusal.of(SmallBook.in(folder).put(name, offset, text));
    }

    private Refusal refused(String name, int offset, double number) {
        return Refusal.of(SmallBook.in(folder).put(name, offset, number));
    }

    private Refusal refused(String name, int offset, CellValue value) {
        return Refusal.of(SmallBook.in(folder).put(name, offset, value));
    }

    @Test
    void wordsInALength() {
        refused("ride_height_left", 0, "about 18")
                .names("ride_height_left", 0, "\"about 18\"", "a length such as 25 3/8")
                .only(1);
    }

    @Test
    void lengthWithADateInsteadOfAFraction() {
        refused("hub_face_offset", 0, "3. Aug")
                .names("hub_face_offset", 0, "\"3. Aug\"", "a length such as")
                .only(1);
    }

    @Test
    void distanceThatCannotBeReadHasNoConsequencesBesides() {
        refused("distance_first_left", 2, "26 5/0")
                .names("distance_first_left", 2, "\"26 5/0\"", "a length such as")
                .only(1);
    }

    @Test
    void rideHeightReadingThatCannotBeReadHasNoConsequencesBesides() {
        refused("height_left", 0, "low")
                .names("height_left", 0, "\"low\"", "a length such as")
                .only(1);
    }

    @Test
    void wordsInAnAngle() {
        refused("joint_angle_max", 0, "22 deg")
                .names("joint_angle_max", 0, "\"22 deg\"", "a number of degrees")
                .only(1);
    }

    @Test
    void wordsInAnAmountOfMoney() {
        refused("other_cost", 1, "46 each")
                .names("other_cost", 1, "\"46 each\"", "a number")
                .only(1);
    }

    @Test
    void halfATooth() {
        refused("joint_splines", 0, 28.5)
                .names("joint_splines", 0, "28.5", "a whole number")
                .only(1);
    }

    @Test
    void wordThatIsNoneOfTheChoices() {
        refused("bump_rule", 0, "tape")
                .names("bump_rule", 0, "\"tape\"", "one of: typed, clearance")
                .only(1);
    }

    @Test
    void emptyUnit() {
        Refusal.of(SmallBook.in(folder).clear("unit", 0))
                .names("unit", 0, "nothing", "one of: inch, mm")
                .only(1);
    }

    @Test
    void otherUnit() {
        refused("unit", 0, "cm").names("unit", 0, "\"cm\"", "one of: inch, mm").only(1);
    }

    @Test
    void errorValueOfABuildersFormula() {
        refused("joint_cup_bottom", 0, new CellValue.Fault("#DIV/0!"))
                .names("joint_cup_bottom", 0, "#DIV/0!", "a length such as")
                .only(1);
    }

    @Test
    void errorValueInTheReadings() {
        refused("camber_left", 0, new CellValue.Fault("#REF!"))
                .names("camber_left", 0, "#REF!", "a number of degrees")
                .only(1);
    }

    @Test
    void truthValueInALength() {
        refused("stub_inner", 0, new CellValue.Truth(true))
                .names("stub_inner", 0, "TRUE", "a length such as")
                .only(1);
    }

    @Test
    void truthValueForAName() {
        refused("scenario_name", 0, new CellValue.Truth(false))
                .names("scenario_name", 0, "FALSE", "a text")
                .only(1);
    }

    @Test
    void blanksForAName() {
        refused("blank_name", 0, "  ")
                .names("blank_name", 0, "blanks only", "a text, or an empty cell")
                .only(1);
    }

    @Test
    void tyreSizeThatIsNone() {
        refused("tyre_size", 0, "235-75")
                .names("tyre_size", 0, "\"235-75\"", "a tyre size such as")
                .only(1);
    }

    @Test
    void negativeDistance() {
        refused("distance_first_left", 1, -26.0)
                .names("distance_first_left", 1, "-26 (-660.4 mm)", "0.01 to 5000 mm")
                .only(1);
    }

    @Test
    void zeroRaceWidth() {
        refused("joint_race_half_width", 0, 0.0)
                .names("joint_race_half_width", 0, "0", "0.01 to 5000 mm")
                .only(1);
    }

    @Test
    void zeroTapeGraduation() {
        refused("tape_graduation", 0, 0.0)
                .names("tape_graduation", 0, "0", "0.01 to 25.4 mm")
                .only(1);
    }

    @Test
    void negativeBlankDiameter() {
        refused("blank_diameter", 0, "-30 mm")
                .names("blank_diameter", 0, "\"-30 mm\"", "0.01 to 5000 mm")
                .only(1);
    }

    @Test
    void droopTypedAsANegativeTravel() {
        refused("droop_limit", 0, "-4 3/4")
                .names("droop_limit", 0, "\"-4 3/4\"", "0.1 to 600 mm")
                .only(1);
    }

    @Test
    void negativeMargin() {
        refused("margin_outward", 1, "-1/8")
                .names("margin_outward", 1, "\"-1/8\"", "0 to 5000 mm")
                .only(1);
    }

    @Test
    void biasBeyondTheLongEnd() {
        refused("length_bias", 0, 25.0).names("length_bias", 0, "25", "0 to 1").only(1);
    }

    @Test
    void angleLimitOfARightAngle() {
        refused("joint_angle_max", 0, 90.0)
                .names("joint_angle_max", 0, "90", "0.1 to 89 deg")
                .only(1);
    }

    @Test
    void jointThatTurnsNoAngleAtAll() {
        refused("joint_angle_max", 0, 0.0)
                .names("joint_angle_max", 0, "0", "0.1 to 89 deg")
                .only(1);
    }
}
