package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Tape readings that can't be, contradict each other or are too few. */
class ReadingsTest {
    @TempDir private Path folder;

    private SmallBook book() {
        return SmallBook.in(folder);
    }

    @Test
    void distanceShorterThanTheHeightDifference() {
        Refusal.of(book().put("distance_first_left", 1, "4"))
                .names(
                        "distance_first_left",
                        1,
                        "\"4\", the distance is shorter than",
                        "a longer distance")
                .only(1);
    }

    @Test
    void oneRowOnly() {
        SmallBook book = book();
        for (int row = 0; row < 9; row++) {
            if (row != 4) {
                clearRow(book, row);
            }
        }
        Refusal.of(book)
                .names(
                        "height_left",
                        0,
                        "readings at one height only",
                        "readings at two heights at the very least")
                .only(1);
    }

    private static void clearRow(SmallBook book, int row) {
        for (String name :
                new String[] {"height", "distance_first", "distance_second", "distance_third"}) {
            book.clear(name + "_left", row);
        }
    }

    @Test
    void twoRowsAtOneHeight() {
        Refusal.of(book().put("height_left", 3, "15 15/16"))
                .names(
                        "height_left",
                        3,
                        "\"15 15/16\", the same height as row 3",
                        "repeat readings")
                .only(1);
    }

    @Test
    void heightWithoutADistance() {
        Refusal.of(book().clear("distance_first_left", 3))
                .names("distance_first_left", 3, "nothing", "a distance beside the height")
                .only(1);
    }

    @Test
    void distanceWithoutAHeight() {
        Refusal.of(book().clear("height_right", 2))
                .names("height_right", 2, "nothing", "a height beside the distance")
                .only(1);
    }

    @Test
    void rideHeightOutsideTheMeasuredHeights() {
        Refusal.of(book().put("ride_height_left", 0, "25"))
                .names(
                        "ride_height_left",
                        0,
                        "\"25\", the ride height lies outside",
                        "a ride height between")
                .only(1);
    }

    @Test
    void missingRideHeight() {
        Refusal.of(book().clear("ride_height_right", 0))
                .names("ride_height_right", 0, "nothing", "a length")
                .only(1);
    }

    @Test
    void fourthDegreeWithSevenHeights() {
        Refusal.of(book().put("fit_degree", 0, "4"))
                .names(
                        "fit_degree",
                        0,
                        "\"4\", but readings at 7 heights",
                        "auto, or readings at nine heights")
                .only(1);
    }

    @Test
    void angleBesideNoReading() {
        SmallBook book = book().put("camber_left", 10, -2.0);

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + book.place("camber_left", 10))
                .contains("\"-2\" without height and distance");
    }

    @Test
    void unitSlipIsAWarningAndResultsAreGiven() {
        SmallBook book = book().put("joint_race_half_width", 0, 13.0);

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("A As measured, 29 in tyre: ")
                .contains("warning: shafts.xlsx: " + book.place("joint_race_half_width", 0))
                .contains(
                        "found 13 (330.2 mm); expected 5 to 40 mm as a rule; is the unit right?\n");
    }

    @Test
    void millimetresAsBareNumbersInAnInchBookAreTooLongForAnyVehicle() {
        Refusal.of(book().put("distance_first_left", 1, 645.0))
                .names("distance_first_left", 1, "645 (16383 mm)", "0.01 to 5000 mm")
                .only(1);
    }

    @Test
    void travelBeyondTheMeasuredHeightsIsAVerdictAndNoError() {
        SmallBook book = book().put("bump_limit", 0, "9");

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Bump of 9.00 in goes beyond the known path, which ends at 5.31 in bump");
    }

    @Test
    void allMistakesAreSaidInOneGo() {
        SmallBook book =
                book().put("ride_height_left", 0, "??")
                        .put("distance_first_right", 1, "4")
                        .put("joint_angle_continuous", 0, 24.0)
                        .put("bench_angle", 3, 8.0)
                        .put("boot_inner", 0, "no such boot")
                        .put("tyre_size", 1, "big")
                        .put("scenario_name", 1, new shaftwright.book.CellValue.Fault("#N/A"));
        Refusal.of(book)
                .names("ride_height_left", 0, "\"??\"", "a length")
                .names("distance_first_right", 1, "\"4\"", "")
                .names("joint_angle_continuous", 0, "\"24\"", "no more than")
                .names("bench_angle", 3, "\"8\"", "each angle")
                .names("boot_inner", 0, "\"no such boot\"", "a name in the boot table")
                .names("tyre_size", 1, "\"big\"", "")
                .names("scenario_name", 1, "#N/A", "a text")
                .only(7);
    }
}
