package shaftwright.template;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
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

    static {
        // Some libraries read a formula inside a CDATA section as none.
        POIXMLTypeLoader.DEFAULT_XML_OPTIONS.setSaveCDataLengthThreshold(Integer.MAX_VALUE);
    }

    private SteadyFile() {}

    static void write(XSSFWorkbook workbook, Path file) throws IOException {
        POIXMLProperties properties = workbook.getProperties();
        properties.getCoreProperties().setCreated(Optional.empty());
        properties.getCoreProperties().setCreator("");
        properties.getExtendedProperties().setApplication("Shaftwright");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
        workbook.write(bytes);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes.toByteArray()));
                OutputStream out = Files.newOutputStream(file);
                ZipOutputStream steady = new ZipOutputStream(out)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry undated = new ZipEntry(entry.getName());
                undated.setTimeLocal(NO_TIME);
                steady.putNextEntry(undated);
                in.transferTo(steady);
                steady.closeEntry();
            }
        }
    }
}
