package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.functions.LambdaText;

/** Named formulas go into a workbook and out again, and nothing else changes. */
class NamedFormulasTest {
    private static final String PART = "xl/workbook.xml";
    private static final String OWN =
            "<definedNames><definedName name=\"Shaft_own\">Sheet1!$A$1</definedName>"
                    + "<definedName name=\"SHAFT.OWN\" hidden=\"1\">Sheet1!$A$2</definedName>"
                    + "</definedNames>";

    @TempDir private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                OWN,
                "<calcPr calcId=\"1\"/>",
                OWN + "<calcPr calcId=\"1\"/>",
                "<externalReferences/>" + OWN + "<!-- kept -->"
            })
    void partIsAsItWasWhenTheyAreTakenOut(String middle) throws IOException {
        Path file = book(middle);
        Path packed = folder.resolve("packed.xlsx");
        Path unpacked = folder.resolve("unpacked.xlsx");

        XlsxBook.open(file).saveNames(packed, NamedFormulas.in("SHAFT.", LambdaText.all()));
        XlsxBook.open(packed).saveNames(unpacked, NamedFormulas.out("SHAFT."));

        assertThat(PackageDifference.changedParts(file, packed)).containsOnlyKeys(PART);
        assertThat(PackageDifference.text(unpacked, PART))
                .isEqualTo(PackageDifference.text(file, PART));
    }

    /** Some programs write the element without a name in it; a second one is an error to Excel. */
    @ParameterizedTest
    @ValueSource(strings = {"<definedNames/>", "<definedNames />", "<definedNames></definedNames>"})
    void namesGoIntoAnElementThatHeldNone(String empty) throws IOException {
        Path file = book(empty + "<calcPr calcId=\"1\"/>");
        XlsxBook.open(file).saveNames(file, NamedFormulas.in("SHAFT.", LambdaText.all()));

        assertThat(PackageDifference.text(file, PART))
                .containsOnlyOnce("<definedNames")
                .containsPattern("</definedNames><calcPr");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            assertThat(workbook.getAllNames()).hasSize(LambdaText.all().size());
        }
    }

    @Test
    void everyFormulaIsThereAsWritten() throws IOException {
        Path file = book(OWN);
        XlsxBook.open(file).saveNames(file, NamedFormulas.in("SHAFT.", LambdaText.all()));

        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            for (Map.Entry<String, String> formula : LambdaText.all().entrySet()) {
                Name name = workbook.getName(formula.getKey());
                assertThat(name).as(formula.getKey()).isNotNull();
                assertThat(name.getRefersToFormula()).isEqualTo(formula.getValue());
            }
            assertThat(workbook.getAllNames()).hasSize(LambdaText.all().size() + 2);
        }
    }

    @Test
    void olderFormulasAreReplacedAndSameOnesLeft() throws IOException {
        Path file = book("");
        XlsxBook.open(file)
                .saveNames(
                        file, NamedFormulas.in("SHAFT.", Map.of("SHAFT.OLD", "_xlfn.LAMBDA(1)")));
        XlsxBook.open(file).saveNames(file, NamedFormulas.in("SHAFT.", LambdaText.all()));

        assertThat(PackageDifference.text(file, PART)).doesNotContain("SHAFT.OLD");
        assertThat(
                        XlsxBook.open(file)
                                .saveNames(file, NamedFormulas.in("SHAFT.", LambdaText.all())))
                .isEqualTo(Replaced.NOTHING);
    }

    /** As LibreOffice 7.4 and Gnumeric 1.12 save them. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "_xlfn.lambda(_xlpm.distance,1)",
                "ERROR(&quot;_xlfn.LAMBDA(_xlpm.distance,1)&quot;)"
            })
    void formulasThatAProgramSpoiltAreMended(String formula) throws IOException {
        Path file =
                book(
                        "<definedNames><definedName function=\"false\" name=\"SHAFT.REACH\">"
                                + formula
                                + "</definedName></definedNames>");
        XlsxBook.open(file).saveNames(file, NamedFormulas.in("SHAFT.", LambdaText.all()));

        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            assertThat(workbook.getAllNames()).hasSize(LambdaText.all().size());
            assertThat(workbook.getName("SHAFT.REACH").getRefersToFormula())
                    .isEqualTo(LambdaText.all().get("SHAFT.REACH"));
        }
    }

    @Test
    void nameOfTheBuildersOwnIsNotTakenAway() throws IOException {
        Path file =
                book(
                        "<definedNames><definedName"
                                + " name=\"shaft.reach\">Sheet1!$A$1</definedName></definedNames>");
        byte[] before = Files.readAllBytes(file);

        assertThatThrownBy(
                        () ->
                                XlsxBook.open(file)
                                        .saveNames(
                                                file, NamedFormulas.in("SHAFT.", LambdaText.all())))
                .hasMessageContaining("shaft.reach")
                .hasMessageContaining("rename it");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    /** 8,192 characters is Excel's limit of a formula; 253 arguments its limit of a LAMBDA. */
    @Test
    void formulasKeepToExcelsLimits() {
        assertThat(LambdaText.all()).hasSizeGreaterThan(40);
        for (String formula : LambdaText.all().values()) {
            assertThat(formula).hasSizeLessThan(8192);
        }
    }

    private Path book(String middle) throws IOException {
        return PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                .workbook(middle)
                .save(folder.resolve("book.xlsx"));
    }
}
