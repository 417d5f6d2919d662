package shaftwright.office;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Workbooks opened, computed anew and saved by real spreadsheet programs. A missing program is a
 * failure, never a skipped test.
 */
public final class SpreadsheetPrograms {
    private static final long PATIENCE_SECONDS = 240;

    /** One start of LibreOffice computes so many workbooks well inside that time. */
    private static final int AT_ONCE = 25;

    private SpreadsheetPrograms() {}

    /**
     * Has LibreOffice compute every formula of these .xlsx files anew, many in one start.
     *
     * @return the saved .xlsx files in the same order, in a new folder inside {@code folder}
     */
    public static List<Path> recalculatedByLibreOffice(Path folder, List<Path> books) {
        return recalculatedByLibreOffice(folder, books, "en-US");
    }

    /** The same with the program set to another language's number signs, such as {@code de-DE}. */
    public static List<Path> recalculatedByLibreOffice(
            Path folder, List<Path> books, String locale) {
        return converted(folder, books, locale, "xlsx");
    }

    /** Prints all sheets of a workbook that are seen into a PDF file. */
    public static Path printedByLibreOffice(Path folder, Path book) {
        return converted(folder, List.of(book), "en-US", "pdf").get(0);
    }

    private static List<Path> converted(
            Path folder, List<Path> books, String locale, String format) {
        try {
            Path profile = Files.createTempDirectory("calc-profile");
            try {
                Files.createDirectories(profile.resolve("user"));
                Files.writeString(
                        profile.resolve("user/registrymodifications.xcu"), settings(locale));
                Path out = Files.createTempDirectory(folder, "libreoffice");
                List<String> command =
                        List.of(
                                "soffice",
                                "-env:UserInstallation=" + profile.toUri(),
                                "--headless",
                                "--convert-to",
                                format,
                                "--outdir",
                                out.toString());
                List<Path> saved = new ArrayList<>();
                for (int from = 0; from < books.size(); from += AT_ONCE) {
                    List<Path> some = books.subList(from, Math.min(books.size(), from + AT_ONCE));
                    List<String> start = new ArrayList<>(command);
                    some.forEach(book -> start.add(book.toString()));
                    String said = run(folder, start);
                    some.forEach(book -> saved.add(saved(out, named(book, format), said)));
                }
                return saved;
            } finally {
                delete(profile);
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /**
     * Edits workbooks in LibreOffice by {@code src/office/python/edit_in_calc.py}.
     *
     * @param edits an edit's name, the file and the file to save it as; and so on
     */
    public static void editedInLibreOffice(Path folder, List<String> edits) {
        try {
            Path profile = Files.createTempDirectory("calc-profile");
            try {
                // The distribution's own Python is the one that knows LibreOffice.
                List<String> command =
                        new ArrayList<>(
                                List.of(
                                        "/usr/bin/python3",
                                        "src/office/python/edit_in_calc.py",
                                        profile.toUri().toString()));
                command.addAll(edits);
                String said = run(folder, command);
                for (int i = 2; i < edits.size(); i += 3) {
                    Path target = Path.of(edits.get(i));
                    saved(target.getParent(), target, said);
                }
            } finally {
                delete(profile);
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /**
     * Has Gnumeric compute every formula of an .xlsx file anew.
     *
     * @return the saved .xlsx file, in a new folder inside {@code folder}
     */
    public static Path recalculatedByGnumeric(Path folder, Path book) {
        try {
            Path out = Files.createTempDirectory(folder, "gnumeric");
            Path target = out.resolve(book.getFileName());
            String said =
                    run(
                            folder,
                            List.of(
                                    "ssconvert",
                                    "--recalc",
                                    "--export-type=Gnumeric_Excel:xlsx2",
                                    book.toString(),
                                    target.toString()));
            return saved(out, book, said);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Path named(Path book, String format) {
        String name = book.getFileName().toString();
        return book.resolveSibling(name.substring(0, name.lastIndexOf('.') + 1) + format);
    }

    private static Path saved(Path folder, Path book, String said) {
        Path target = folder.resolve(book.getFileName());
        if (!Files.isRegularFile(target)) {
            throw new AssertionError(book + " was not saved; the program said: " + said);
        }
        return target;
    }

    /** Runs a program and gives what it said. */
    public static String run(Path folder, List<String> command) throws IOException {
        Path log = Files.createTempFile(folder, "said", ".txt");
        Process process;
        try {
            process =
                    new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(log.toFile())
                            .start();
        } catch (IOException missing) {
            throw new AssertionError(
                    "the program \"" + command.get(0) + "\" is needed here and is missing",
                    missing);
        }
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new AssertionError(command + " did not end; said: " + Files.readString(log));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("stopped while waiting for " + command.get(0), stopped);
        } finally {
            // The program itself is often a child of a script that starts it.
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        return Files.readString(log);
    }

    /** Formulas are computed on load, not trusted; no first-start dialogue. */
    static String settings(String locale) {
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
                <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
                <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="ODFRecalcMode" oor:op="fuse"><value>0</value></prop></item>
                <item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>%s</value></prop></item>
                </oor:items>
                """
                .formatted(locale);
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path each : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
