package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Loads that come back, and blanks' heat treatment, typed wrongly. */
class LoadsTest {
    @TempDir private Path folder;

    private SmallBook book() {
        return SmallBook.in(folder);
    }

    @Test
    void figuresOutOfTheirRange() {
        Refusal.of(
                        book().put("kts_runout", 0, 0.9)
                                .put("notch_sensitivity", 0, 1.2)
                                .put("reverse_gear", 1, -3.5)
                                .put("share_bump", 0, 120.0)
                                .put("fatigue_wanted", 0, 0.0)
                                .put("rated_speed_angle", 0, "fast")
                                .put("blank_treatment", 1, "hard")
                                .put("duty_cycle", 0, "often"))
                .names("kts_runout", 0, "0.9", "1 to 20")
                .names("notch_sensitivity", 0, "1.2", "0 to 1")
                .names("reverse_gear", 1, "-3.5", "0.1 to 500")
                .names("share_bump", 0, "120", "0 to 100")
                .names("fatigue_wanted", 0, "0", "0.1 to 20")
                .names("rated_speed_angle", 0, "\"fast\"", "a number")
                .names("blank_treatment", 1, "\"hard\"", "one of: case-hardened")
                .names("duty_cycle", 0, "\"often\"", "one of: repeated")
                .only(8);
    }

    @Test
    void sharesThatDoNotAddUpAndATensileStrengthBelowYield() {
        Refusal.of(book().put("share_ride", 0, 60.0).put("material_tensile", 0, 150.0))
                .names("share_bump", 0, "shares that add up to 90.00 %", "100 % in all")
                .names(
                        "material_tensile",
                        0,
                        "\"150\"",
                        "no less than the yield strength beside it")
                .only(2);
    }

    @Test
    void sharesTypedAsFractionsAreAskedForInPerCent() {
        Refusal.of(
                        book().put("share_bump", 0, 0.6)
                                .put("share_ride", 0, 0.6)
                                .put("share_droop", 0, 0.6))
                .names(
                        "share_bump",
                        0,
                        "shares that add up to 1.80 %",
                        "100 % in all, or nothing for all of it at ride. Shares are in per cent: 60,"
                                + " not 0.6 or 60%")
                .only(1);
    }

    @Test
    void whatCountsForNothingIsSaid() {
        Run run =
                Run.of(
                        "check",
                        book().put("brake_torque", 0, 800.0)
                                .put("radius_shoulder", 0, "0.05 mm")
                                .file());

        assertThat(run.out() + run.err())
                .contains("(Brakes inboard): found not yes, beside figures of an inboard brake")
                .contains("(Radius of that shoulder): found \"0.05 mm\"; expected at least 0.00")
                .contains("that notch is not judged");
    }
}
