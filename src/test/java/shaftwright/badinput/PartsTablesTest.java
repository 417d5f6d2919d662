package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Rows of the parts tables that lack something, contradict or can't be told apart. */
class PartsTablesTest {
    private static final String SMALL = "92 mm six-ball plunging joint";
    private static final String USUAL = "102 mm six-ball plunging joint";
    private static final String BENCHED = "113 mm six-ball plunging joint";

    @TempDir private Path folder;

    private SmallBook book() {
        return SmallBook.in(folder);
    }

    @Test
    void twoJointsOfOneNameWhateverTheCapitals() {
        String name = USUAL.toUpperCase(java.util.Locale.ROOT);
        Refusal.of(book().put("joint_name", 3, name))
                .names(
                        "joint_name",
                        3,
                        "\"" + name + "\", the name of row 1 too",
                        "a name that no other row has")
                .only(1);
    }

    @Test
    void twoBootsOfOneName() {
        Refusal.of(book().put("boot_name", 2, "standard boot"))
                .names("boot_name", 2, "\"standard boot\", the name of row 1 too", "a name")
                .only(1);
    }

    @Test
    void twoBlanksOfOneName() {
        Refusal.of(book().put("blank_name", 4, "31-spline blank 24 5/8 in"))
                .names(
                        "blank_name",
                        4,
                        "\"31-spline blank 24 5/8 in\", the name of row 1",
                        "a name")
                .only(1);
    }

    @Test
    void namesWithWildcards() {
        Refusal.of(book().put("blank_name", 0, "blank 25\"*").put("boot_name", 2, "boot?"))
                .names("blank_name", 0, "\"blank 25\"*\"", "a name without * ? ~")
                .names("boot_name", 2, "\"boot?\"", "a name without * ? ~")
                .only(2);
    }

    @Test
    void jointWhoseRowLacksSizesNamesTheEmptyCells() {
        Refusal.of(book().clear("joint_cup_bottom", 0).clear("joint_angle_max", 0))
                .names("joint_cup_bottom", 0, "nothing", "a length; scenario A has this joint")
                .names("joint_angle_max", 0, "nothing", "an angle; scenario A has this joint")
                .only(2);
    }

    @Test
    void jointThatNoScenarioHasMayLackSizes() {
        assertThat(Run.of("fill", book().clear("joint_cup_bottom", 3).file()).code()).isZero();
    }

    @Test
    void jointWithNeitherPlungeNorBenchRows() {
        Refusal.of(book().clear("joint_plunge", 0))
                .names(
                        "joint_inner",
                        0,
                        "\"" + USUAL + "\", a joint with neither plunge nor bench rows",
                        "a joint whose travel is known")
                .names("joint_outer", 0, "\"" + USUAL, "a joint whose travel is known")
                .only(2);
    }

    @Test
    void runningAngleAboveTheAngleLimit() {
        Refusal.of(book().put("joint_angle_continuous", 0, 24.0))
                .names("joint_angle_continuous", 0, "\"24\"", "no more than the angle limit")
                .only(1);
    }

    @Test
    void lipOfUnknownDepth() {
        Refusal.of(book().put("joint_lip_radius", 0, "36 mm"))
                .names("joint_lip_depth", 0, "nothing", "the depth of the lip, or no lip radius")
                .only(1);
    }

    @Test
    void benchAngleTwice() {
        Refusal.of(book().put("bench_angle", 3, 8.0))
                .names(
                        "bench_angle",
                        3,
                        "\"8\", the angle of row 2 too",
                        "each angle of a joint once")
                .only(1);
    }

    @Test
    void sameBenchAngleOfAnotherJointIsFine() {
        SmallBook book = book().put("bench_joint", 5, USUAL).put("bench_angle", 5, 8.0);
        book.put("bench_inward", 5, "3/4").put("bench_outward", 5, "3/4");
        assertThat(Run.of("fill", book.file()).code()).isZero();
    }

    @Test
    void benchRowThatLacksATravel() {
        Refusal.of(book().clear("bench_outward", 2))
                .names("bench_outward", 2, "nothing", "angle, inward and outward travel")
                .only(1);
    }

    @Test
    void benchRowOfAJointThatIsNotInTheTable() {
        Refusal.of(book().put("bench_joint", 0, "109 mm joint"))
                .names("bench_joint", 0, "\"109 mm joint\"", "a name in the joint table")
                .only(1);
    }

    @Test
    void benchRowWithoutAJoint() {
        Refusal.of(book().clear("bench_joint", 4))
                .names("bench_joint", 4, "nothing", "the name of the joint that was measured")
                .only(1);
    }

    @Test
    void oldGrooveBeyondTheBlank() {
        Refusal.of(book().put("blank_groove_outer", 1, "27"))
                .names(
                        "blank_groove_outer",
                        1,
                        "\"27\"",
                        "a groove on the blank, which is \"25 7/8\"")
                .only(1);
    }

    @Test
    void blankWithoutALengthIsSaidAndLeftOut() {
        SmallBook book = book().clear("blank_length", 0);

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + book.place("blank_length", 0))
                .contains("found nothing; expected a length; this blank is not looked at");
    }

    @Test
    void chosenBlankWithoutALengthLeavesNoBlank() {
        SmallBook book = book().clear("blank_length", 1);

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + book.place("blank_choice", 1))
                .contains("found a blank whose row lacks a size");
    }

    @Test
    void counterboreDeeperThanTheRace() {
        // Race half width 12 mm, so the race is 24 mm wide.
        Refusal.of(book().put("counterbore_outer", 1, "25 mm"))
                .names("counterbore_outer", 1, "\"25 mm\"", "less than the race is wide")
                .says("twice the joint's inner race half width, 0.945 in")
                .only(1);
    }

    @Test
    void partsThatAreNotInTheirTable() {
        Refusal.of(
                        book().put("joint_inner", 1, SMALL + "s")
                                .put("boot_outer", 1, "other boot")
                                .put("blank_choice", 0, "any"))
                .names("joint_inner", 1, "\"" + SMALL + "s\"", "a name in the joint table")
                .names("boot_outer", 1, "\"other boot\"", "a name in the boot table")
                .names("blank_choice", 0, "\"any\"", "a name in the blank table, or auto")
                .only(3);
    }

    @Test
    void sizesWithoutAName() {
        SmallBook book = book().clear("joint_name", 3);

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + book.place("joint_name", 3))
                .contains("found no name beside sizes; expected a name; the row can't be picked.");
    }

    @Test
    void benchedJointNeedsNoPlunge() {
        SmallBook book = book().put("joint_inner", 0, BENCHED).put("joint_outer", 0, BENCHED);
        assertThat(Run.of("fill", book.file()).code()).isZero();
    }
}
