package shaftwright.template;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ooxml.POIXMLTypeLoader;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes a workbook without a trace of when it was written: the same inputs give the same bytes, so
 * that a workbook kept beside the source can be compared with what would be written today.
 */
final class SteadyFile {
    /** As early as a zip archive can say without a second time stamp that goes by the time zone. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0, 2);

    private static final String NO_CELLS = "<sheetData/>";

    static {
        // Some libraries read a formula inside a CDATA section as none.
        POIXMLTypeLoader.DEFAULT_XML_OPTIONS.setSaveCDataLengthThreshold(Integer.MAX_VALUE);
    }

    private SteadyFile() {}

    static void write(LaidSheets laid, Path file) throws IOException {
        XSSFWorkbook workbook = laid.workbook();
        POIXMLProperties properties = workbook.getProperties();
        properties.getCoreProperties().setCreated(Optional.empty());
        properties.getCoreProperties().setCreator("");
        properties.getExtendedProperties().setApplication("Shaftwright");
        Map<String, PlainCells> plain = new HashMap<>();
        for (PlainCells cells : laid.plain()) {
            cells.measure();
            plain.put(cells.part(), cells);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
        try (ZipArchiveOutputStream dated = new ZipArchiveOutputStream(bytes)) {
            dated.setLevel(Deflater.BEST_SPEED);
            workbook.write(dated);
        }
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes.toByteArray()));
                OutputStream out = Files.newOutputStream(file);
                ZipOutputStream steady = new ZipOutputStream(out)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry undated = new ZipEntry(entry.getName());
                undated.setTimeLocal(NO_TIME);
                steady.putNextEntry(undated);
                PlainCells cells = plain.get(entry.getName());
                if (cells == null) {
                    in.transferTo(steady);
                } else {
                    withCells(new String(in.readAllBytes(), StandardCharsets.UTF_8), cells, steady);
                }
                steady.closeEntry();
            }
        }
    }

    /** A sheet in which the library knows of no cells, with its cells. */
    private static void withCells(String sheet, PlainCells cells, OutputStream out)
            throws IOException {
        int at = sheet.indexOf(NO_CELLS);
        if (at < 0) {
            throw new IllegalStateException(cells.part() + ": cells laid in two ways");
        }
        text(sheet.substring(0, at) + "<sheetData>", out);
        cells.write(out);
        text("</sheetData>" + sheet.substring(at + NO_CELLS.length()), out);
    }

    private static void text(String text, OutputStream out) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
