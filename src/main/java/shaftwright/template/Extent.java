package shaftwright.template;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How much of an earlier workbook is opened to copy from: less where POI can't read more. */
enum Extent {
    /** All but pictures and embedded files, which don't come along and may be of any size. */
    WHOLE(".*\\.(xml|rels|vml)"),

    /** Cells and notes, without charts, drawings, tables and the like. */
    CELLS("([^/]+|(.*/)?_rels/.*|(xl|xl/worksheets|xl/theme|xl/comments)/[^/]+)\\.(xml|rels)"),

    /** What the sheets are called. */
    NAMES("");

    /** Parts by their names; all programs that write workbooks use the same folders. */
    private final Pattern parts;

    Extent(String parts) {
        this.parts = Pattern.compile(parts);
    }

    /** Opens so much of a workbook; empty where it can't be read. */
    Optional<XSSFWorkbook> open(Renewal.Source source) {
        if (this == NAMES) {
            return Optional.of(withSheets(source.sheets()));
        }
        try (InputStream in = new ByteArrayInputStream(copy(source))) {
            return Optional.of(new XSSFWorkbook(in));
        } catch (IOException | RuntimeException e) {
            // POI says in many ways that it can't read a part.
            return Optional.empty();
        }
    }

    private static XSSFWorkbook withSheets(List<String> names) {
        XSSFWorkbook workbook = new XSSFWorkbook();
        names.forEach(workbook::createSheet);
        return workbook;
    }

    /** The package without the other parts, not compressed: POI refuses what compresses well. */
    private byte[] copy(Renewal.Source source) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
        try (ZipFile zip = new ZipFile(source.file().toFile());
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.setLevel(Deflater.NO_COMPRESSION);
            Enumeration<? extends ZipEntry> entries = zip.entries();
            while (entries.hasMoreElements()) {
                ZipEntry entry = entries.nextElement();
                if (parts.matcher(entry.getName().toLowerCase(Locale.ROOT)).matches()) {
                    out.putNextEntry(new ZipEntry(entry.getName()));
                    try (InputStream in = zip.getInputStream(entry)) {
                        in.transferTo(out);
                    }
                    out.closeEntry();
                }
            }
        }
        return bytes.toByteArray();
    }
}
