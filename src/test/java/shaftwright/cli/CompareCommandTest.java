package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.comparison.ComparisonAgreement;
import shaftwright.workbook.PoiRecalculation;
import shaftwright.xlsx.XlsxBook;

/** Several workbooks side by side in a new one. */
class CompareCommandTest {
    private static final int SCENARIOS = 5;

    @TempDir private static Path shared;
    @TempDir private Path folder;

    private static Path inches;

    /** One scenario in use, for what does not depend on how many there are. */
    private static Path small;

    private static Path millimetres;
    private static Path both;

    @BeforeAll
    static void compareTheDemoWithItself() {
        inches = Demo.inches(shared);
        millimetres = Demo.millimetres(shared);
        small = shared.resolve("small.xlsx");
        Run smaller =
                Run.of(
                        "fill",
                        inches,
                        "--out",
                        small,
                        "--set",
                        "scenario_name[B]=",
                        "--set",
                        "scenario_name[C]=",
                        "--set",
                        "scenario_name[D]=",
                        "--set",
                        "scenario_name[E]=");
        assertThat(smaller.code()).as(smaller.err()).isEqualTo(ExitCode.SUCCESS);
        both = shared.resolve("both.xlsx");
        Run run = Run.of("compare", inches, millimetres, "--out", both);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.SUCCESS);
    }

    @Test
    void everyScenarioOfEachFileHasAColumn() {
        assertThat(row(both, "comparison_key"))
                .extracting(CompareCommandTest::text)
                .containsExactly("1A", "1B", "1C", "1D", "1E", "2A", "2B", "2C", "2D", "2E");
        assertThat(row(both, "compare_name").subList(0, SCENARIOS))
                .isEqualTo(row(inches, "scenario_name").subList(0, SCENARIOS));
    }

    @Test
    void resultsAreThoseOfTheFilesInTheUnitOfTheComparison() {
        for (String name : List.of("result_e_left", "result_slack_out_right", "result_track")) {
            List<CellValue> compared = row(both, "compare_" + name);
            List<CellValue> first = row(inches, name);
            List<CellValue> second = row(millimetres, name);
            for (int scenario = 0; scenario < SCENARIOS; scenario++) {
                assertThat(number(compared.get(scenario)))
                        .as("%s, scenario %s", name, scenario)
                        .isEqualTo(number(first.get(scenario)), within(1e-9));
                assertThat(number(compared.get(SCENARIOS + scenario)))
                        .as("%s, scenario %s in mm", name, scenario)
                        .isEqualTo(number(second.get(scenario)) / 25.4, within(1e-9));
            }
        }
    }

    @Test
    void costsAnglesAndFactorsAreTakenAsTheyAre() {
        for (String name : List.of("cost_total", "result_inner_droop_left", "result_factor")) {
            List<CellValue> compared = row(both, "compare_" + name);
            assertThat(compared.subList(0, SCENARIOS))
                    .isEqualTo(row(inches, name).subList(0, SCENARIOS));
            List<CellValue> second = row(millimetres, name);
            for (int scenario = 0; scenario < SCENARIOS; scenario++) {
                assertThat(number(compared.get(SCENARIOS + scenario)))
                        .as("%s, scenario %s", name, scenario)
                        .isEqualTo(number(second.get(scenario)), within(1e-9));
            }
        }
    }

    @Test
    void sentencesOfABookInAnotherUnitAreInTheUnitOfTheComparison() {
        assertThat(row(both, "compare_verdict").subList(0, SCENARIOS))
                .isEqualTo(row(inches, "verdict").subList(0, SCENARIOS));
        for (String name :
                List.of(
                        "compare_verdict",
                        "compare_result_verdict_left",
                        "book2_result_put_in_left")) {
            assertThat(row(both, name))
                    .extracting(CompareCommandTest::text)
                    .as(name)
                    .noneMatch(sentence -> sentence.contains(" mm"))
                    .anyMatch(sentence -> sentence.contains(" in "));
        }
    }

    @Test
    void whatIsTypedInAnotherUnitKeepsItsMeaning() {
        assertThat(text(row(both, "book2_unit").get(0))).isEqualTo("inch");
        CellValue ride = row(millimetres, "ride_height_left").get(0);
        assertThat(text(row(both, "book2_ride_height_left").get(0))).isEqualTo(text(ride) + " mm");
        // 1 lb·ft is 0.3048 m times 4.4482216152605 N, the pound and foot of 1959.
        assertThat(number(row(both, "book2_engine_torque").get(0)) * 0.3048 * 4.4482216152605)
                .isEqualTo(number(row(millimetres, "engine_torque").get(0)), within(1e-9));
    }

    /** What differs is printed; the rest of a long list is folded. */
    @Test
    void inputsThatAreTheSameInAllAreFolded() throws IOException {
        String sheet = parts(both, "xl/worksheets/sheet2.xml").get("xl/worksheets/sheet2.xml");
        XlsxBook book = XlsxBook.open(both);
        for (String name : List.of("compare_width_limit", "compare_clearance_ride")) {
            assertThat(rowTag(sheet, book.names().get(name))).as(name).contains("hidden=\"true\"");
        }
        assertThat(rowTag(sheet, book.names().get("compare_tyre_size"))).doesNotContain("hidden");
    }

    private static String rowTag(String sheet, Area area) {
        int at = sheet.indexOf("<row r=\"" + (area.firstRow() + 1) + "\"");
        return sheet.substring(at, sheet.indexOf('>', at));
    }

    /** The metric demo's readings are rounded to 0.5 mm, its other lengths to 0.1 mm. */
    @Test
    void theSameVehicleInBothUnitsGivesTheSameShaftsWithinTheRounding() {
        List<CellValue> lengths = row(both, "compare_result_e_high_left");
        for (int scenario = 0; scenario < SCENARIOS; scenario++) {
            double inch = number(lengths.get(scenario));
            assertThat(number(lengths.get(SCENARIOS + scenario)) * 25.4)
                    .isEqualTo(inch * 25.4, within(1.5));
        }
    }

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws IOException {
        try (PoiRecalculation poi = PoiRecalculation.of(both)) {
            ComparisonAgreement agreement = ComparisonAgreement.of(both, poi::value);
            assertThat(agreement.differences()).isEmpty();
            assertThat(agreement.pageCells()).isGreaterThan(4_000);
            assertThat(agreement.bookCells()).isGreaterThan(40_000);
        }
    }

    @Test
    void inputsThatDifferAreListedAndMarked() {
        Path wider = copy(small, "wider.xlsx");
        Demo.type(wider, "hub_shift", 0, CellValue.of("1 1/2"));
        Path out = folder.resolve("out.xlsx");

        assertThat(Run.of("compare", small, wider, "--out", out).code()).isZero();

        List<CellValue> shifts = row(out, "compare_hub_shift");
        assertThat(number(shifts.get(0))).isZero();
        assertThat(number(shifts.get(1))).isEqualTo(1.5, within(1e-9));
        assertThat(row(out, "comparison_listed"))
                .contains(CellValue.of("Hub moved outward, each side, in"))
                .doesNotContain(CellValue.of("Ground clearance at ride, in"));
    }

    @Test
    void aReadingCorrectedInTheComparisonMovesOnlyItsOwnBook() {
        Path out = copy(both, "corrected.xlsx");
        List<CellValue> before = row(out, "compare_result_e_high_left");
        XlsxBook book = XlsxBook.open(out);
        for (String reading : List.of("first", "second", "third")) {
            Area area = book.names().get("book2_distance_" + reading + "_left");
            for (var cell : book.read(List.of(area)).filled().entrySet()) {
                if (area.contains(cell.getKey())) {
                    String typed = text(cell.getValue().value()).replace(" mm", "");
                    String longer = Double.parseDouble(typed) + 10 + " mm";
                    book.write(Map.of(cell.getKey(), CellValue.of(longer)));
                }
            }
        }
        book.save(out);

        Run run = Run.of("fill", out);

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.SUCCESS);
        List<CellValue> after = row(out, "compare_result_e_high_left");
        assertThat(after.subList(0, SCENARIOS)).isEqualTo(before.subList(0, SCENARIOS));
        for (int scenario = SCENARIOS; scenario < 2 * SCENARIOS; scenario++) {
            assertThat(number(after.get(scenario)))
                    .isGreaterThan(number(before.get(scenario)) + 0.2);
        }
    }

    @Test
    void fillingAComparisonAgainChangesNothing() throws IOException {
        Path out = copy(both, "again.xlsx");
        byte[] before = Files.readAllBytes(out);

        Run run = Run.of("fill", out);

        assertThat(run.out()).contains("none of them changed").doesNotContain("your own formulas");
        assertThat(out).hasBinaryContent(before);
    }

    @Test
    void checkAcceptsANewComparisonAndNamesAnOverwrittenCell() {
        assertThat(Run.of("check", both).out())
                .contains(
                        "finding: both.xlsx: book 2, scenario B, left: Does not fit: no length works")
                .endsWith(
                        "both.xlsx: no errors, no warnings, no overwritten or edited formulas. 16"
                                + " findings on its scenarios."
                                + System.lineSeparator());
        Path spoilt = folder.resolve("spoilt.xlsx");
        EditedBook.replace(both, spoilt, "compare_result_e_left", 1, null);

        Run run = Run.of("check", spoilt);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.out())
                .contains("sheet \"Side by side\", cell C")
                .contains("a value in place of a formula");
    }

    @Test
    void showPrintsEachBookAndOneJsonObject() throws IOException {
        assertThat(Run.of("show", both).out()).contains("both.xlsx, book 1:", "both.xlsx, book 2:");

        String json = Run.of("show", both, "--json").out();

        List<JsonToken> tokens = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                tokens.add(token);
            }
        }
        assertThat(tokens).startsWith(JsonToken.START_OBJECT).endsWith(JsonToken.END_OBJECT);
        String alone = Run.of("show", inches, "--json").out();
        assertThat(closeUp(json))
                .contains(
                        closeUp(alone).replace("\"forest.xlsx\"", "\"both.xlsx,book1\""),
                        "\"both.xlsx,book2\",\"unit\":\"inch\"");
    }

    private static String closeUp(String json) {
        return json.replaceAll("\\s", "");
    }

    @Test
    void aComparisonCanBeComparedAgain() {
        Path out = folder.resolve("more.xlsx");

        Run run = Run.of("compare", both, small, "--out", out, "--unit", "mm");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(row(out, "comparison_key")).hasSize(2 * SCENARIOS + 1);
        double inch = number(row(both, "compare_result_e_left").get(0));
        assertThat(number(row(out, "compare_result_e_left").get(2 * SCENARIOS)))
                .isEqualTo(inch * 25.4, within(1e-9));
    }

    @Test
    void commandsForOneWorkbookSayThatThisIsAComparison() {
        Run run = Run.of("take", both, "A", inches);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err()).contains("found a comparison of several");
        assertThat(Run.of("fill", both, "--set", "hub_shift[A]=1").code())
                .isEqualTo(ExitCode.USAGE);
    }

    @Test
    void errorsAreNamedWithTheirFileAndNothingIsWritten() {
        Path wrong = copy(inches, "wrong.xlsx");
        Demo.type(wrong, "height_left", 0, CellValue.of("13 7/0"));
        Path out = folder.resolve("out.xlsx");

        Run run = Run.of("compare", inches, wrong, "--out", out);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err())
                .contains("error: wrong.xlsx: sheet \"Measure\"", "out.xlsx: not made");
        assertThat(out).doesNotExist();
    }

    @Test
    void whatIsThereIsNotReplacedUnasked() throws IOException {
        Path out = Files.writeString(folder.resolve("out.xlsx"), "precious");

        assertThat(Run.of("compare", inches, millimetres, "--out", out).code())
                .isEqualTo(ExitCode.USAGE);
        assertThat(out).hasContent("precious");
        assertThat(Run.of("compare", inches, millimetres, "--out", inches, "--force").err())
                .contains("is one of the workbooks to be compared");
        assertThat(Run.of("compare", inches, millimetres).err()).contains("--out is missing");
    }

    @Test
    void moreScenariosThanColumnsAreRefused() {
        Path out = folder.resolve("out.xlsx");

        Run run = Run.of("compare", both, both, both, "--out", out);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err()).contains("found 30 scenarios in all; expected at most 24");
    }

    @Test
    void textsOfOthersStayTexts() throws IOException {
        Path hostile = copy(small, "=1+1&A1.xlsx");
        String command = "=HYPERLINK(\"http://example.com\",\"x\")";
        Demo.type(hostile, "vehicle_name", 0, CellValue.of(command));
        Demo.type(hostile, "scenario_name", 0, CellValue.of("@SUM(1)<b>&\u0007_x0041_'!A1"));
        Path out = folder.resolve("out.xlsx");

        Run run = Run.of("compare", hostile, small, "--out", out);

        assertThat(run.code()).as(run.err()).isZero();
        CellContent vehicle = Demo.cell(out, "book1_vehicle_name", 0);
        assertThat(vehicle).isEqualTo(CellContent.of(CellValue.of(command), ""));
        assertThat(row(out, "compare_vehicle").get(0)).isEqualTo(CellValue.of(command));
        assertThat(row(out, "compare_name").get(0))
                .isEqualTo(CellValue.of("@SUM(1)<b>&\u0007_x0041_'!A1"));
        for (String sheet : parts(out, "xl/worksheets/").values()) {
            assertThat(sheet).doesNotContain("<f>HYPERLINK", "<hyperlink");
        }
        try (PoiRecalculation poi = PoiRecalculation.of(out)) {
            assertThat(ComparisonAgreement.of(out, poi::value).differences()).isEmpty();
        }
    }

    @Test
    void linksAndMacrosOfOthersAreNamedAndLeftOut() throws IOException {
        Path linked = folder.resolve("linked.xlsx");
        withParts(
                small,
                linked,
                Map.of(
                        "xl/externalLinks/externalLink1.xml", "<externalLink/>",
                        "xl/vbaProject.bin", "macros",
                        "xl/worksheets/secret.xml", "<worksheet/>"));
        Path out = folder.resolve("out.xlsx");

        Run run = Run.of("compare", linked, small, "--out", out);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains(
                        "warning: linked.xlsx: macros left out.",
                        "warning: linked.xlsx: a link to another file left out.");
        assertThat(parts(out, "").keySet())
                .noneMatch(name -> name.contains("external") || name.contains("vba"))
                .doesNotContain("xl/worksheets/secret.xml");
    }

    @Test
    void nobodyIsNamedWhenThatIsAskedFor() throws IOException {
        Path mine = copy(small, "a-friends-name.xlsx");
        Demo.type(mine, "vehicle_name", 0, CellValue.of("crawler of somebody"));
        Path out = folder.resolve("out.xlsx");

        assertThat(Run.of("compare", mine, small, "--out", out, "--anonymous").code()).isZero();

        for (String part : parts(out, "").values()) {
            assertThat(part).doesNotContain("a-friends-name", "crawler of somebody");
        }
        assertThat(parts(out, "docProps/core").values())
                .allSatisfy(core -> assertThat(core).doesNotContain("creator", "lastModifiedBy"));
    }

    private Path copy(Path file, String name) {
        try {
            return Files.copy(file, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<CellValue> row(Path file, String name) {
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get(name);
        Cells cells = book.read(List.of(area));
        CellValue[] values = new CellValue[area.size()];
        for (int offset = 0; offset < values.length; offset++) {
            values[offset] = cells.at(area.place(offset)).value();
        }
        return List.of(values);
    }

    private static double number(CellValue value) {
        return ((CellValue.Numeric) value).value();
    }

    private static String text(CellValue value) {
        return ((CellValue.Text) value).value();
    }

    /** Parts whose names begin so, as text. */
    private static Map<String, String> parts(Path file, String prefix) throws IOException {
        Map<String, String> parts = new HashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (entry.getName().startsWith(prefix)) {
                    byte[] bytes = zip.getInputStream(entry).readAllBytes();
                    parts.put(entry.getName(), new String(bytes, StandardCharsets.UTF_8));
                }
            }
        }
        return parts;
    }

    private static void withParts(Path file, Path target, Map<String, String> more)
            throws IOException {
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(file));
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(target))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                in.transferTo(out);
            }
            for (Map.Entry<String, String> part : more.entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
    }
}
