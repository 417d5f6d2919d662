package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether a part ends where its root does is told from its first and last bytes. */
class PartEndsTest {
    private static String missing(String text, int piece) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        PartEnds ends = new PartEnds();
        for (int from = 0; from < bytes.length; from += piece) {
            int count = Math.min(piece, bytes.length - from);
            byte[] some = new byte[count];
            System.arraycopy(bytes, from, some, 0, count);
            ends.add(some, count);
        }
        return ends.missingEndTag();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<a><b/></a>",
                "<?xml version=\"1.0\"?>\r\n<!-- <x> --><x:a y=\"1\"><b/></x:a >\r\n",
                "<a/>",
                "<a b=\"1\"/>\n",
                "<a></a><!-- behind -->",
                "\ufeff<a></a>",
            })
    void wholeTextsMissNothing(String text) {
        assertThat(missing(text, 1)).isEmpty();
        assertThat(missing(text, 5_000)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"<a><b/>", "<a><b></b>", "<a>1", "<a></a", "<a></ab>", "<a "})
    void textsThatWereCutOffMissTheEndTag(String text) {
        assertThat(missing(text, 1)).isEqualTo("</a>");
        assertThat(missing(text, 5_000)).isEqualTo("</a>");
    }

    @Test
    void lengthDoesNotMatter() {
        String rows = "<row r=\"1\"/>".repeat(10_000);
        assertThat(missing("<a>" + rows + "</a>", 4_096)).isEmpty();
        assertThat(missing("<a>" + rows, 4_096)).isEqualTo("</a>");
    }
}
