package shaftwright.oracle;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import shaftwright.book.CellValue;
import shaftwright.units.LengthUnit;

/**
 * What an earlier version answered to some workbooks, kept as a zipped text: lines on how it was
 * made behind {@code #}; the workbooks' names; then, key by key, a line for each workbook: its
 * {@link Column}, {@code =} for the same as the workbook before, {@code -} for none.
 */
final class Oracle {
    /** Of the last commit whose answers were recorded. */
    static final String RECORDED = "answers.txt.gz";

    /** Of version 0.1.0. */
    static final String FIRST_VERSION = "answers-0.1.0.txt.gz";

    /** Begins the key of what is typed into an input, by defined name. */
    private static final String TYPED = "typed.";

    private static final String SCENARIOS = "scenarios";
    private static final String SAME = "=";
    private static final String NONE = "-";

    /** One workbook: what is typed into it and what was answered, by key. */
    record Book(String name, Map<String, Column> lines) {
        /** Scenario columns. */
        int scenarios() {
            return ((Double) ((CellValue.Numeric) lines.get(SCENARIOS).values().get(0)).value())
                    .intValue();
        }

        LengthUnit unit() {
            return typed().get("unit").contains(CellValue.of("mm"))
                    ? LengthUnit.MILLIMETRE
                    : LengthUnit.INCH;
        }

        /** Whether it was filled, not refused. */
        boolean isFilled() {
            return lines.get(Answers.FILLED).values().contains(CellValue.of(Answers.FILLED));
        }

        Map<String, List<CellValue>> typed() {
            Map<String, List<CellValue>> typed = new LinkedHashMap<>();
            lines.forEach(
                    (key, column) -> {
                        if (key.startsWith(TYPED)) {
                            typed.put(key.substring(TYPED.length()), column.values());
                        }
                    });
            return typed;
        }

        Map<String, Column> answers() {
            Map<String, Column> answers = new LinkedHashMap<>(lines);
            answers.keySet().removeIf(key -> key.startsWith(TYPED) || key.equals(SCENARIOS));
            return answers;
        }
    }

    private Oracle() {}

    /** A workbook that was not answered to yet. */
    static Book question(String name, int scenarios, Map<String, List<CellValue>> typed) {
        Map<String, Column> lines = new LinkedHashMap<>();
        lines.put(SCENARIOS, Column.whole(List.of(CellValue.of(scenarios))));
        typed.forEach((input, values) -> lines.put(TYPED + input, Column.whole(values)));
        return new Book(name, lines);
    }

    /** All that a resource keeps. */
    static List<Book> read(String resource) {
        try (InputStream packed = Oracle.class.getResourceAsStream(resource);
                BufferedReader in =
                        new BufferedReader(
                                new InputStreamReader(
                                        new GZIPInputStream(packed), StandardCharsets.UTF_8))) {
            String line = in.readLine();
            while (line.startsWith("#")) {
                line = in.readLine();
            }
            List<Book> books = new ArrayList<>();
            for (String name : line.split("\t", -1)) {
                books.add(new Book(name, new LinkedHashMap<>()));
            }
            for (String key = in.readLine(); key != null; key = in.readLine()) {
                Column last = null;
                for (Book book : books) {
                    String kept = in.readLine();
                    if (!kept.equals(NONE)) {
                        last = kept.equals(SAME) ? last : Column.parse(kept);
                        book.lines().put(key, last);
                    }
                }
            }
            return books;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes what {@link #read} reads. */
    static void write(Path file, List<String> header, List<Book> books) throws IOException {
        Map<String, List<String>> keys = new TreeMap<>();
        books.forEach(book -> book.lines().keySet().forEach(key -> keys.put(key, List.of())));
        try (Writer out =
                new OutputStreamWriter(
                        new GZIPOutputStream(Files.newOutputStream(file)) {
                            {
                                def.setLevel(9);
                            }
                        },
                        StandardCharsets.UTF_8)) {
            for (String line : header) {
                out.write("# " + line + "\n");
            }
            out.write(String.join("\t", books.stream().map(Book::name).toList()) + "\n");
            for (String key : keys.keySet()) {
                out.write(key + "\n");
                String last = null;
                for (Book book : books) {
                    Column column = book.lines().get(key);
                    String kept = column == null ? NONE : column.toString();
                    out.write((kept.equals(last) ? SAME : kept) + "\n");
                    last = column == null ? last : kept;
                }
            }
        }
    }
}
