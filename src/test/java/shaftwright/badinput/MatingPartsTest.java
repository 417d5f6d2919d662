package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Splines, flanges and boots of which the figures contradict each other. */
class MatingPartsTest {
    @TempDir private Path folder;

    private SmallBook book() {
        return SmallBook.in(folder);
    }

    @Test
    void splinesThatContradictEachOther() {
        Refusal.of(book().put("spline_angle", 0, 12).put("spline_module", 1, 1))
                .names("spline_angle", 0, "12", "14.5 to 45 deg")
                .names("spline_pitch", 1, "\"28\" beside a module of 1", "module or diametral")
                .only(2);
    }

    @Test
    void splineOfAJointThatIsNotThereCountsForNothing() {
        Run run = Run.of("check", book().put("spline_joint", 3, "no such joint").file());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("found \"no such joint\"; expected a name in the table of joints;");
    }

    @Test
    void twoRowsForTheSplineOfOneBlank() {
        String blank = "31-spline blank 26 9/16 in";
        Refusal.of(book().put("spline_blank", 2, blank))
                .names(
                        "spline_blank",
                        2,
                        "\"" + blank + "\", which row 2 is about too",
                        "one row for each spline")
                .only(1);
    }

    @Test
    void bootWhoseShortestIsLongerThanItsLongest() {
        Refusal.of(book().put("boot_shortest", 0, "100 mm"))
                .names("boot_shortest", 0, "\"100 mm\"", "no more than the longest beside it")
                .only(1);
    }

    @Test
    void seatOfABootThatLacksItsOtherMeasures() {
        Refusal.of(book().clear("boot_shaft_seat", 1).clear("boot_cup_diameter", 1))
                .names("boot_shaft_seat", 1, "nothing", "both seats and both diameters")
                .names("boot_cup_diameter", 1, "nothing", "both seats and both diameters")
                .only(2);
    }

    @Test
    void pilotsOutsideTheirBoltCircle() {
        Refusal.of(
                        book().put("flange_inner_circle", 0, "80 mm")
                                .put("flange_inner_pilot", 0, "90 mm")
                                .put("bolt_pilot", 0, "95 mm"))
                .names("flange_inner_pilot", 0, "\"90 mm\"", "less than the bolt circle")
                .names("bolt_pilot", 0, "\"95 mm\"", "less than the bolt circle, \"87 mm\"")
                .only(2);
    }
}
