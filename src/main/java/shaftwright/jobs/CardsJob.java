package shaftwright.jobs;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import shaftwright.book.Area;
import shaftwright.xlsx.XlsxBook;

/**
 * Has an installed LibreOffice print a workbook's shop cards into a PDF.
 *
 * @param file the workbook, which is left alone
 * @param target the PDF, which is replaced if it is there
 */
public record CardsJob(Path file, Path target) {
    /** A name that every card has. */
    private static final String ON_A_CARD = "card_verdict";

    private static final List<String> USUAL_PLACES =
            List.of(
                    "/Applications/LibreOffice.app/Contents/MacOS/soffice",
                    "C:\\Program Files\\LibreOffice\\program\\soffice.exe",
                    "/usr/bin/soffice",
                    "/usr/local/bin/soffice",
                    "/opt/libreoffice/program/soffice");

    private static final String PRINTING = "Printing the cards (LibreOffice takes a few seconds)";

    private static final int BETWEEN_LOOKS_MS = 200;

    /**
     * Does it.
     *
     * @throws JobRefusedException if there is no such program, or the workbook has no cards
     * @throws IOException if a file can't be written
     */
    public void run(Journal journal) throws IOException {
        Path program =
                program()
                        .orElseThrow(
                                () ->
                                        new JobRefusedException(
                                                "found no LibreOffice, which makes the PDF; print"
                                                        + " the sheets Card left and Card right"
                                                        + " from your spreadsheet program"));
        journal.step("Reading " + file.getFileName());
        XlsxBook book = XlsxBook.open(file);
        List<String> cards = cards(book);
        Path folder = Files.createTempDirectory("shaftwright-cards");
        try {
            Path only = folder.resolve("cards.xlsx");
            List<String> others = new ArrayList<>(book.sheetNames());
            others.removeAll(cards);
            Path seen = folder.resolve("seen.xlsx");
            book.saveSeenSheets(seen, cards, others);
            XlsxBook.open(seen).saveWithoutPrintAreas(only);
            journal.step(PRINTING);
            print(program, folder, only, journal);
            Path printed = folder.resolve("cards.pdf");
            if (!Files.isRegularFile(printed)) {
                throw new JobRefusedException(
                        file.getFileName() + ": LibreOffice made no PDF of the cards");
            }
            Files.move(printed, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            delete(folder);
        }
        journal.say(target + ": " + String.join(", ", cards) + " printed.");
    }

    private List<String> cards(XlsxBook book) {
        Set<String> cards = new LinkedHashSet<>();
        book.names()
                .forEach(
                        (String name, Area area) -> {
                            if (name.contains(ON_A_CARD)) {
                                cards.add(area.sheet());
                            }
                        });
        if (cards.isEmpty()) {
            throw new JobRefusedException(
                    file.getFileName() + ": found no shop card; expected a sizing workbook");
        }
        return book.sheetNames().stream().filter(cards::contains).toList();
    }

    /** Where LibreOffice is, if it is installed. */
    public static Optional<Path> program() {
        String name =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("win")
                        ? "soffice.exe"
                        : "soffice";
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.concat(
                        Stream.of(path.split(File.pathSeparator))
                                .filter(folder -> !folder.isEmpty())
                                .map(folder -> Path.of(folder, name)),
                        USUAL_PLACES.stream().map(Path::of))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** With settings of its own: one that is open already would not print. */
    private static void print(Path program, Path folder, Path book, Journal journal)
            throws IOException {
        Process process =
                new ProcessBuilder(
                                program.toString(),
                                "-env:UserInstallation=" + folder.resolve("settings").toUri(),
                                "--headless",
                                "--convert-to",
                                "pdf",
                                "--outdir",
                                folder.toString(),
                                book.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        try {
            while (!process.waitFor(BETWEEN_LOOKS_MS, TimeUnit.MILLISECONDS)) {
                journal.step(PRINTING);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new JobStoppedException();
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path each : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}
