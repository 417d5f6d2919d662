package shaftwright.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** LibreOffice with the extension installed, in a profile that is thrown away. */
public final class CalcWithExtension implements AutoCloseable {
    private static final Path EXTENSION = Path.of("target/shaftwright.oxt").toAbsolutePath();

    private final Path folder;
    private final List<String> profile;

    private CalcWithExtension(Path folder) {
        this.folder = folder;
        this.profile =
                List.of(
                        "-env:UserInstallation=" + uri("lo"),
                        "-env:UNO_SHARED_PACKAGES_CACHE=" + uri("shared"));
    }

    private String uri(String name) {
        String uri = folder.resolve(name).toUri().toString();
        return uri.endsWith("/") ? uri.substring(0, uri.length() - 1) : uri;
    }

    /** Installs the extension that the build made. */
    public static CalcWithExtension installed() throws IOException {
        if (!Files.isRegularFile(EXTENSION)) {
            throw new AssertionError(EXTENSION + " is missing; the build makes it");
        }
        CalcWithExtension calc = new CalcWithExtension(Files.createTempDirectory("calc-extension"));
        Path user = Files.createDirectories(calc.folder.resolve("lo/user"));
        Files.writeString(
                user.resolve("registrymodifications.xcu"), SpreadsheetPrograms.settings("en-US"));
        List<String> add = new ArrayList<>(List.of("unopkg", "add", "-s", "--shared"));
        add.addAll(calc.profile);
        add.add(EXTENSION.toString());
        String said = SpreadsheetPrograms.run(calc.folder, add);
        if (said.contains("ERROR")) {
            throw new AssertionError("the extension was not installed: " + said);
        }
        return calc;
    }

    /** Has every formula computed anew and saves as .xlsx, into a new folder. */
    public List<Path> recalculated(List<Path> books) throws IOException {
        Path out = Files.createTempDirectory(folder, "saved");
        List<String> command = new ArrayList<>(List.of("soffice"));
        command.addAll(profile);
        command.addAll(List.of("--headless", "--convert-to", "xlsx", "--outdir"));
        command.add(out.toString());
        books.forEach(book -> command.add(book.toString()));
        String said = SpreadsheetPrograms.run(folder, command);
        List<Path> all = new ArrayList<>();
        for (Path book : books) {
            String name = book.getFileName().toString();
            Path saved = out.resolve(name.substring(0, name.lastIndexOf('.')) + ".xlsx");
            if (!Files.isRegularFile(saved)) {
                throw new AssertionError(book + " was not saved; the program said: " + said);
            }
            all.add(saved);
        }
        return all;
    }

    /** Runs a Python script of {@code src/office/python} with the profile's two settings first. */
    public String script(String name, String... arguments) throws IOException {
        List<String> command =
                new ArrayList<>(List.of("/usr/bin/python3", "src/office/python/" + name));
        command.addAll(profile);
        command.addAll(List.of(arguments));
        return SpreadsheetPrograms.run(folder, command);
    }

    @Override
    public void close() throws IOException {
        SpreadsheetPrograms.delete(folder);
    }
}
