package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** No text of a workbook can do more in a terminal than be read. */
class PrinterTest {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Printer printer = new Printer(bytes, StandardCharsets.UTF_8);

    private String printed() {
        printer.flush();
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void controlCharactersAreShownAsEscapes() {
        printer.println("A\u001b[31mred\u0007 \u009b2J\u007f\r");
        assertThat(printed())
                .isEqualTo(
                        "A\\u001b[31mred\\u0007 \\u009b2J\\u007f\\u000d" + System.lineSeparator());
    }

    @Test
    void endOfLineInANameMakesNoLineOfItsOwn() {
        printer.println((Object) "A\nerror: all lost\u2028");
        assertThat(printed()).isEqualTo("A\\nerror: all lost\\u2028" + System.lineSeparator());
    }

    @Test
    void turnsOfTheDirectionOfWritingAreShown() {
        printer.print("a\u202eb\u2066c");
        assertThat(printed()).isEqualTo("a\\u202eb\\u2066c");
    }

    @Test
    void formattedTextIsPrintedInTheSameWay() {
        printer.printf("%s|", "\u001b");
        printer.append("\u0008");
        assertThat(printed()).isEqualTo("\\u001b|\\u0008");
    }

    @Test
    void otherTextIsLeftAsItIs() {
        printer.println("Käfer 25 3/8\" ±0.5° 半 😀\tB");
        assertThat(printed()).isEqualTo("Käfer 25 3/8\" ±0.5° 半 😀\tB" + System.lineSeparator());
    }
}
