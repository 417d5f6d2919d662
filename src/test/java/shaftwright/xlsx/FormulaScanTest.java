package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

/** Finding out that a sheet has no formula must be cheap, and never wrong the other way round. */
class FormulaScanTest {
    private static final String PART = "xl/worksheets/sheet1.xml";

    private static boolean scan(byte[] zip) {
        ZipSnapshot snapshot = ZipSnapshot.of("book.xlsx", zip);
        return FormulaScan.hasFormula("book.xlsx", snapshot, snapshot.find(PART));
    }

    private static boolean scan(String sheet) {
        return scan(PackageBuilder.withSheet(sheet).bytes());
    }

    @Test
    void formulaInAnyFormIsSeen() {
        for (String formula : new String[] {"<f>A1</f>", "<f\nt='shared' si='0'/>", "<f/>"}) {
            assertThat(scan("<worksheet><c>" + formula + "</c></worksheet>")).isTrue();
            String prefixed = formula.replace("<f", "<x:f").replace("</f", "</x:f");
            assertThat(scan("<!-- c --><x:worksheet><x:c>" + prefixed + "</x:c></x:worksheet>"))
                    .isTrue();
        }
    }

    @Test
    void otherElementsAreNotFormulas() {
        assertThat(
                        scan(
                                "<worksheet><c><v>&lt;f></v></c><formula>1</formula><xm:f>A1</xm:f>"
                                        + "<extLst><x14:f>A1</x14:f></extLst><font/></worksheet>"))
                .isFalse();
    }

    @Test
    void formulaAcrossBuffersIsSeen() {
        StringBuilder rows = new StringBuilder("<worksheet>");
        for (int i = 0; i < 40_000; i++) {
            rows.append("<c><v>").append(i * 7919L).append("</v></c>");
        }
        String plain = rows.toString();
        assertThat(scan(plain + "</worksheet>")).isFalse();
        for (int shift = 0; shift < 4; shift++) {
            assertThat(scan(plain + " ".repeat(shift) + "<f>1</f></worksheet>")).isTrue();
        }
    }

    @Test
    void sheetInTwoByteCharactersCountsAsHavingOne() {
        byte[] wide = "\uFEFF<worksheet/>".getBytes(StandardCharsets.UTF_16LE);
        assertThat(scan(PackageBuilder.withSheet("").part(PART, wide).bytes())).isTrue();
    }

    @Test
    void storedSheetIsScannedToo() throws IOException {
        byte[] sheet = "<worksheet><f>1</f></worksheet>".getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            ZipEntry entry = new ZipEntry(PART);
            CRC32 crc = new CRC32();
            crc.update(sheet);
            entry.setMethod(ZipEntry.STORED);
            entry.setSize(sheet.length);
            entry.setCrc(crc.getValue());
            zip.putNextEntry(entry);
            zip.write(sheet);
        }
        assertThat(scan(bytes.toByteArray())).isTrue();
    }
}
