package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** What programs leave out when they save a workbook; see what they do in OtherWritersTest. */
class LostPartsTest {
    private static final String TYPES = "[Content_Types].xml";

    @TempDir static Path shared;
    @TempDir Path folder;

    private static Path whole;

    @BeforeAll
    static void makeOne() {
        whole = shared.resolve("whole.xlsx");
        assertThat(Run.of("new", "--scenarios", "1", whole).code()).isZero();
    }

    @Test
    void aNewWorkbookHasLostNothing() {
        assertThat(Run.of("check", whole).out()).contains("no warnings");
    }

    @Test
    void chartsThatAreGoneAreNamedByCheckAndFill() {
        FileParts parts = FileParts.of(whole);
        parts.replace(TYPES, "drawingml.chart+xml", "drawingml.chart-gone+xml");
        Path file = parts.write(folder.resolve("no-charts.xlsx"));

        assertThat(Run.of("check", file).out())
                .containsOnlyOnce("warning: no-charts.xlsx: the workbook: found no charts; ")
                .contains("no errors, 1 warning,");
        assertThat(Run.of("fill", file).out()).containsOnlyOnce("found no charts; ");
    }

    @Test
    void rulesInCellsThatAreGoneAreNamed() {
        FileParts parts = FileParts.of(whole);
        for (String part : parts.parts().keySet().toArray(new String[0])) {
            if (part.startsWith("xl/worksheets/sheet")) {
                parts.put(
                        part,
                        parts.text(part)
                                .replaceAll("(?s)<dataValidations.*</dataValidations>", "")
                                .getBytes(StandardCharsets.UTF_8));
            }
        }
        Path file = parts.write(folder.resolve("no-rules.xlsx"));

        assertThat(Run.of("check", file).out()).contains("found no drop-down lists; ");
    }

    /** Else exceljs takes their text for none. */
    @Test
    void noFormulaStandsInACdataSection() {
        FileParts.of(whole)
                .parts()
                .forEach(
                        (part, bytes) ->
                                assertThat(new String(bytes, StandardCharsets.UTF_8))
                                        .as(part)
                                        .doesNotContain("<![CDATA["));
    }
}
