package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Pick-up points that make no linkage, where a side's path is to come from them. */
class LinkagePointsTest {
    @TempDir private Path folder;

    private SmallBook byLinkage() {
        return SmallBook.in(folder).put("path_source_left", 0, "linkage");
    }

    @Test
    void missingCoordinateNamesItsPoint() {
        Refusal.of(byLinkage().clear("point_out_left", 2))
                .names("point_out_left", 2, "nothing", "a length")
                .says("(upper wishbone, ball joint: from the centreline, left)")
                .only(1);
    }

    @Test
    void pointBeyondTheCentreline() {
        Refusal.of(byLinkage().put("point_out_left", 6, "-13 5/16"))
                .names(
                        "point_out_left",
                        6,
                        "toe link, frame end lies beyond the centreline",
                        "points of one linkage")
                .only(1);
    }

    @Test
    void pointsTypedTwice() {
        SmallBook book = byLinkage();
        book.put("point_ahead_left", 1, "4 3/4");
        book.put("point_out_left", 1, "15 7/16");
        book.put("point_height_left", 1, "21 7/8");

        Refusal.of(book)
                .names(
                        "point_ahead_left",
                        1,
                        "the upper wishbone's front pivot and rear pivot are in the same place",
                        "points of one linkage")
                .only(1);
    }

    @Test
    void moreTravelThanTheLinkageHas() {
        Refusal.of(byLinkage().put("linkage_down", 0, "20"))
                .names(
                        "linkage_down",
                        0,
                        "upper wishbone can't reach at 20.0 in droop, the linkage goes to",
                        "less travel solved")
                .only(1);
    }

    @Test
    void missingTravel() {
        Refusal.of(byLinkage().clear("linkage_up", 0))
                .names("linkage_up", 0, "nothing", "a length")
                .only(1);
    }

    @Test
    void unknownKind() {
        Refusal.of(byLinkage().put("linkage_kind", 0, "swing axle"))
                .names("linkage_kind", 0, "\"swing axle\"", "one of: trailing arm");
    }

    /** While the path is measured, a wrong linkage is only worth a word. */
    @Test
    void wrongPointsAreAWarningWhileThePathIsMeasured() {
        SmallBook book = SmallBook.in(folder).put("point_out_left", 6, "-13 5/16");

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + book.place("point_out_left", 6))
                .contains("toe link, frame end lies beyond the centreline");
    }

    @Test
    void halfTypedLinkageIsNoProblemWhileThePathIsMeasured() {
        SmallBook book = SmallBook.in(folder).clear("point_out_left", 6);

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out()).doesNotContain("toe link");
    }
}
