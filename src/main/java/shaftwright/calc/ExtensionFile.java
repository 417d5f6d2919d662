package shaftwright.calc;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes the extension: its classes, the texts that make them known, two empty workbooks. */
public final class ExtensionFile {
    /** What LibreOffice calls the extension. */
    static final String IDENTIFIER = "shaftwright.calc";

    /** Packages for terminal and window; the extension needs all others. */
    private static final Set<String> LEFT_OUT = Set.of("cli", "window");

    /** Beginnings of the names of libraries that it does without. */
    private static final List<String> OTHER_LIBRARIES =
            List.of("picocli", "jackson", "flatlaf", "libreoffice");

    private static final String MANIFEST = "META-INF/MANIFEST.MF";

    /** LibreOffice reads a jar's manifest only where it comes first. */
    private static final Comparator<String> MANIFEST_FIRST =
            Comparator.comparing((String entry) -> !entry.equals(MANIFEST))
                    .thenComparing(Comparator.naturalOrder());

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
        Map<String, Path> libraries = libraries(System.getProperty("java.class.path"));
        parts.put("shaftwright.jar", zip(jar(classes, libraries.keySet())));
        for (Map.Entry<String, Path> library : libraries.entrySet()) {
            parts.put(library.getKey(), Files.readAllBytes(library.getValue()));
        }
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

    /**
     * The extension's own jar by entry, from a folder of compiled classes; libraries lie beside it.
     */
    static Map<String, byte[]> jar(Path classes, Collection<String> libraries) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>(MANIFEST_FIRST);
        Path top = classes.resolve("shaftwright");
        try (Stream<Path> files = Files.walk(top)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".class")).toList()) {
                if (!LEFT_OUT.contains(entry(top, file.getParent()))) {
                    entries.put(entry(classes, file), Files.readAllBytes(file));
                }
            }
        }
        entries.put(MANIFEST, manifest(libraries));
        return entries;
    }

    private static byte[] manifest(Collection<String> libraries) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.CLASS_PATH, String.join(" ", libraries));
        main.putValue("RegistrationClassName", Registration.class.getName());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        manifest.write(out);
        return out.toByteArray();
    }

    /** The libraries' jars, of those on a class path, by the names that they have inside. */
    static Map<String, Path> libraries(String classPath) {
        Map<String, Path> jars = new TreeMap<>();
        for (String each : classPath.split(File.pathSeparator, -1)) {
            String name = String.valueOf(Path.of(each).getFileName());
            if (name.endsWith(".jar") && OTHER_LIBRARIES.stream().noneMatch(name::startsWith)) {
                jars.put("lib/" + name, Path.of(each));
            }
        }
        return jars;
    }

    private static String entry(Path folder, Path inside) {
        return folder.relativize(inside).toString().replace('\\', '/');
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
