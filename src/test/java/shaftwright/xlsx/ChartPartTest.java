package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/** Cached points follow the cells; elements as in ECMA-376 part 1, 21.2.2. */
class ChartPartTest {
    private static final String CHART = "xl/charts/chart1.xml";
    private static final String TYPE =
            "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

    @TempDir Path folder;

    private static CellPlace at(int row, int column) {
        return new CellPlace("Sheet1", row, column);
    }

    /** The chart's text after writing numbers 10, #N/A and a text to A1:A3 and "new" to B1. */
    private String after(String chart, String type) throws IOException {
        Path file =
                PackageBuilder.withRows("")
                        .workbook(
                                "<definedNames><definedName"
                                        + " name=\"curve\">Sheet1!$A$1:$A$4</definedName></definedNames>")
                        .swap(
                                "[Content_Types].xml",
                                "</Types>",
                                "<Override PartName=\"/"
                                        + CHART
                                        + "\" ContentType=\""
                                        + type
                                        + "\"/></Types>")
                        .part(CHART, chart)
                        .save(folder.resolve("book.xlsx"));
        Path before =
                Files.copy(
                        file,
                        folder.resolve("before.xlsx"),
                        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        XlsxBook book = XlsxBook.open(file);
        book.write(
                Map.of(
                        at(0, 0), CellValue.of(10),
                        at(1, 0), CellValue.NOT_AVAILABLE,
                        at(2, 0), CellValue.of(0.5),
                        at(0, 1), CellValue.of("new <1>")));
        book.save(file);
        return PackageDifference.changedParts(before, file).getOrDefault(CHART, chart);
    }

    private static String chart(String reference) {
        return "<c:chartSpace xmlns:c=\"urn:c\"><!--x--><c:plotArea><c:ser>"
                + reference
                + "</c:ser></c:plotArea></c:chartSpace>";
    }

    private static String numbers(String reference, String points) {
        return chart(
                "<c:val><c:numRef><c:f>"
                        + reference
                        + "</c:f><c:numCache><c:formatCode>0.0</c:formatCode><c:ptCount val=\"4\"/>"
                        + points
                        + "</c:numCache></c:numRef></c:val>");
    }

    @Test
    void pointsAreReplacedInsertedAndTakenOut() throws IOException {
        assertThat(
                        after(
                                numbers(
                                        "Sheet1!$A$1:$A$4",
                                        "<c:pt idx=\"0\" formatCode=\"0\"><c:v>1</c:v></c:pt><c:pt"
                                                + " idx=\"1\"><c:v>2</c:v></c:pt><c:pt"
                                                + " idx=\"3\"><c:v>4</c:v></c:pt>"),
                                TYPE))
                .isEqualTo(
                        numbers(
                                "Sheet1!$A$1:$A$4",
                                "<c:pt idx=\"0\" formatCode=\"0\"><c:v>10</c:v></c:pt><c:pt"
                                        + " idx=\"2\"><c:v>0.5</c:v></c:pt><c:pt"
                                        + " idx=\"3\"><c:v>4</c:v></c:pt>"));
    }

    @Test
    void emptyCacheIsFilledAlsoThroughAName() throws IOException {
        for (String reference : new String[] {"'Sheet1'!$A$1:$A$4", "[0]!curve", "Sheet1!curve"}) {
            assertThat(after(numbers(reference, ""), TYPE))
                    .isEqualTo(
                            numbers(
                                    reference,
                                    "<c:pt idx=\"0\"><c:v>10</c:v></c:pt><c:pt"
                                            + " idx=\"2\"><c:v>0.5</c:v></c:pt>"));
        }
    }

    @Test
    void titlesFollowTexts() throws IOException {
        String title =
                "<c:tx><c:strRef><c:f>Sheet1!$B$1</c:f><c:strCache><c:ptCount val=\"1\"/><c:pt"
                        + " idx=\"0\"><c:v>%s</c:v></c:pt></c:strCache></c:strRef></c:tx>";
        assertThat(after(chart(title.formatted("old")), TYPE))
                .isEqualTo(chart(title.formatted("new &lt;1&gt;")));
    }

    @Test
    void textGoesInsideAnElementThatClosedItself() throws IOException {
        String title =
                "<c:tx><c:strRef><c:f>Sheet1!$B$1</c:f><c:strCache><c:ptCount"
                        + " val=\"1\"/>%s</c:strCache></c:strRef></c:tx>";
        String filled = "<c:pt idx=\"0\"><c:v>new &lt;1&gt;</c:v></c:pt>";
        for (String empty :
                new String[] {
                    "<c:pt idx=\"0\"><c:v/></c:pt>",
                    "<c:pt idx=\"0\"><c:v /></c:pt>",
                    "<c:pt idx=\"0\"><c:v></c:v></c:pt>",
                    "<c:pt idx=\"0\"></c:pt>",
                    "<c:pt idx=\"0\"/>"
                }) {
            assertThat(after(chart(title.formatted(empty)), TYPE))
                    .isEqualTo(chart(title.formatted(filled)));
        }
        String extended =
                "<cx:chartSpace xmlns:cx=\"urn:cx\"><cx:strDim"
                        + " type=\"cat\"><cx:f>Sheet1!$B$1</cx:f><cx:lvl"
                        + " ptCount=\"1\">%s</cx:lvl></cx:strDim></cx:chartSpace>";
        assertThat(
                        after(
                                extended.formatted("<cx:pt idx=\"0\"/>"),
                                "application/vnd.ms-office.chartex+xml"))
                .isEqualTo(extended.formatted("<cx:pt idx=\"0\">new &lt;1&gt;</cx:pt>"));
    }

    @Test
    void otherReferencesStayAsTheyAre() throws IOException {
        String[] references = {
            "Sheet1!$C$1:$C$4", "(Sheet1!$A$1,Sheet1!$A$2)", "Nowhere!$A$1:$A$4", "unknown_name"
        };
        for (String reference : references) {
            String chart = numbers(reference, "<c:pt idx=\"0\"><c:v>1</c:v></c:pt>");
            assertThat(after(chart, TYPE)).isEqualTo(chart);
        }
    }

    @Test
    void cacheOfOtherLengthIsRemovedRatherThanLeftStale() throws IOException {
        String chart = numbers("Sheet1!$A$1:$A$9", "<c:pt idx=\"0\"><c:v>1</c:v></c:pt>");
        assertThat(after(chart, TYPE))
                .isEqualTo(
                        chart("<c:val><c:numRef><c:f>Sheet1!$A$1:$A$9</c:f></c:numRef></c:val>"));
    }

    @Test
    void extendedChartsFollowToo() throws IOException {
        String extended =
                "<cx:chartSpace xmlns:cx=\"urn:cx\"><cx:chartData><cx:data id=\"0\"><cx:numDim"
                        + " type=\"val\"><cx:f dir=\"row\">Sheet1!$A$1:$A$4</cx:f><cx:lvl ptCount=\"4\""
                        + " formatCode=\"General\">%s</cx:lvl></cx:numDim></cx:data></cx:chartData></cx:chartSpace>";
        assertThat(
                        after(
                                extended.formatted(
                                        "<cx:pt idx=\"0\">1</cx:pt><cx:pt idx=\"3\">4</cx:pt>"),
                                "application/vnd.ms-office.chartex+xml"))
                .isEqualTo(
                        extended.formatted(
                                "<cx:pt idx=\"0\">10</cx:pt><cx:pt idx=\"2\">0.5</cx:pt><cx:pt"
                                        + " idx=\"3\">4</cx:pt>"));
    }
}
