package shaftwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.Variant;
import shaftwright.study.Cautions;
import shaftwright.study.Severity;

class ResultPageTest {
    private static String page(Variant... variants) {
        return ResultPage.of(List.of(new BookVariants("", List.of(variants))), List.of());
    }

    @Test
    void cautionStandsWhereverAVerdictStands() {
        assertThat(page(new Variant(0, "A As measured", Severity.FITS, "Fits: E 732", List.of())))
                .containsOnlyOnce(Cautions.LINE)
                .contains("Fits: E 732");
        assertThat(page()).doesNotContain("Caution");
    }

    @Test
    void markupAndControlCharactersAreShownAsTheyAre() {
        assertThat(
                        page(
                                new Variant(
                                        0,
                                        "A <b>\u202e",
                                        Severity.DOES_NOT_FIT,
                                        "Does not fit:",
                                        List.of("Left: \"<i>\" & more"))))
                .contains("A &lt;b&gt;\\u202e")
                .contains("Left: &quot;&lt;i&gt;&quot; &amp; more");
    }

    @Test
    void whatIsNotSaidAnyMoreStandsBelowWhatIs() {
        Variant before =
                new Variant(
                        1,
                        "B Wide",
                        Severity.DOES_NOT_FIT,
                        "Does not fit:",
                        List.of("Left: no room", "Bolts: too tight"));
        Variant now =
                new Variant(
                        1, "B Wide", Severity.FITS_BUT, "Fits, but:", List.of("Bolts: too tight"));
        Variant other = new Variant(0, "A Narrow", Severity.FITS, "Fits: E 732", List.of());

        String page =
                ResultPage.of(
                        List.of(new BookVariants("", List.of(other, now))),
                        List.of(new BookVariants("", List.of(other, before))));

        assertThat(page)
                .containsOnlyOnce("Before: ")
                .containsSubsequence("Fits, but:", "Before: Does not fit:", "Left: no room")
                .containsOnlyOnce("Bolts: too tight");
    }
}
