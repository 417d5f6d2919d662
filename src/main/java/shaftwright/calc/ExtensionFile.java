package shaftwright.calc;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes the extension: its classes, the texts that make them known, two empty workbooks. */
public final class ExtensionFile {
    /** What LibreOffice calls the extension. */
    static final String IDENTIFIER = "shaftwright.calc";

    /** Packages that the extension needs; the rest is for files and commands. */
    private static final List<String> PACKAGES =
            List.of(
                    "units",
                    "suspension",
                    "joint",
                    "shaft",
                    "travel",
                    "tyre",
                    "strength",
                    "doubt",
                    "study",
                    "functions",
                    "workbook",
                    "workbook/live",
                    "calc");

    private static final FileTime TIME = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));

    private ExtensionFile() {}

    /**
     * Writes it.
     *
     * @param arguments folder of compiled classes, folder of the empty workbooks, version, the
     *     extension to be written
     */
    public static void main(String[] arguments) throws IOException {
        Path classes = Path.of(arguments[0]);
        Path workbooks = Path.of(arguments[1]);
        String version = arguments[2];
        Map<String, byte[]> parts = new TreeMap<>();
        parts.put("shaftwright.jar", zip(jar(classes)));
        parts.put("shaftwright.idl", bytes(AddInText.idl()));
        parts.put("shaftwright.components", bytes(ExtensionText.components()));
        parts.put("CalcAddIns.xcu", bytes(AddInText.configuration()));
        parts.put("Addons.xcu", bytes(ExtensionText.menu()));
        parts.put("ProtocolHandler.xcu", bytes(ExtensionText.protocol()));
        parts.put("description.xml", bytes(ExtensionText.description(version)));
        parts.put(ExtensionText.ABOUT_PART, bytes(ExtensionText.about()));
        parts.put("META-INF/manifest.xml", bytes(ExtensionText.manifest()));
        for (String workbook : List.of("blank-inch.xlsx", "blank-mm.xlsx")) {
            parts.put(workbook, Files.readAllBytes(workbooks.resolve(workbook)));
        }
        try (OutputStream out = Files.newOutputStream(Path.of(arguments[3]))) {
            out.write(zip(parts));
        }
    }

    private static Map<String, byte[]> jar(Path classes) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        for (String name : PACKAGES) {
            Path folder = classes.resolve("shaftwright").resolve(name);
            if (Files.isDirectory(folder)) {
                addClasses(entries, classes, folder);
            }
        }
        entries.put(
                "META-INF/MANIFEST.MF",
                bytes(
                        "Manifest-Version: 1.0\r\nRegistrationClassName: "
                                + Registration.class.getName()
                                + "\r\n\r\n"));
        return entries;
    }

    private static void addClasses(Map<String, byte[]> entries, Path classes, Path folder)
            throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                if (file.toString().endsWith(".class")) {
                    String name = classes.relativize(file).toString().replace('\\', '/');
                    entries.put(name, Files.readAllBytes(file));
                }
            }
        }
    }

    /** The same bytes for the same entries, whenever and wherever it is built. */
    private static byte[] zip(Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : entries.entrySet()) {
                ZipEntry entry = new ZipEntry(part.getKey());
                entry.setLastModifiedTime(TIME);
                zip.putNextEntry(entry);
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
