package shaftwright.oracle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.CellValue;
import shaftwright.book.OpenBook;
import shaftwright.cli.Run;
import shaftwright.workbook.RandomWorkbook;
import shaftwright.xlsx.XlsxBook;

/**
 * Records what this code answers, and empties the list of differences from what was recorded
 * before: {@code src/oracle.sh} runs it.
 *
 * <p>Later runs of {@link OracleTest} need neither that code nor the random workbooks: what is
 * typed is kept as well.
 */
public final class OracleRecorder {
    private static final int FILLED = 120;
    private static final int REFUSED = 14;

    /** Of the random workbooks every so manieth is kept whole, the others summed. */
    private static final int WHOLE_EVERY = 48;

    private final List<Oracle.Book> books = new ArrayList<>();
    private int filled;
    private int refused;

    private OracleRecorder() {}

    /** Commit of this code, folder to write into. */
    public static void main(String[] args) throws IOException {
        OracleRecorder recorder = new OracleRecorder();
        Path folder = Files.createTempDirectory("oracle");
        for (String unit : List.of("inch", "mm")) {
            recorder.made(folder.resolve("blank " + unit), unit);
            recorder.made(folder.resolve("demo " + unit), unit, "--demo");
            recorder.made(
                    folder.resolve("demo by linkage " + unit),
                    unit,
                    "--demo",
                    "--set",
                    "path_source_left=linkage",
                    "--set",
                    "path_source_right=linkage");
        }
        for (int seed = 1; recorder.filled < FILLED; seed++) {
            recorder.random(seed);
        }
        Path target = Path.of(args[1]);
        Oracle.write(
                target.resolve(Oracle.RECORDED),
                List.of(
                        "Answers at commit " + args[0] + ", recorded",
                        "with OracleRecorder: 6 workbooks of the command new; of RandomWorkbook"
                                + " the",
                        "first "
                                + FILLED
                                + " seeds that are filled (whole: every "
                                + WHOLE_EVERY
                                + "th seed), the first "
                                + REFUSED
                                + " refused."),
                recorder.books);
        ReviewedDifferences.empty(target.resolve("differences.txt"));
    }

    private void made(Path file, String unit, String... options) throws IOException {
        List<Object> command = new ArrayList<>(List.of("new", "--unit", unit));
        command.addAll(List.of(options));
        Path written = Path.of(file + ".xlsx");
        command.add(written);
        Run run = Run.of(command.toArray());
        if (run.code() != 0) {
            throw new IOException(run.err());
        }
        XlsxBook book = XlsxBook.open(written);
        books.add(answered(file.getFileName().toString(), book, true));
        Files.delete(written);
    }

    private void random(int seed) {
        RandomWorkbook random = new RandomWorkbook(seed);
        String name = "seed " + seed;
        TypedBook book = TypedBook.blank(name, random.unit(), RandomWorkbook.MOST_SCENARIOS);
        random.typeInto(book);
        Oracle.Book answered = answered(name, book, seed % WHOLE_EVERY == 0);
        if (answered.isFilled()) {
            filled++;
            books.add(answered);
        } else if (refused < REFUSED) {
            refused++;
            books.add(answered);
        }
    }

    private static Oracle.Book answered(String name, OpenBook asked, boolean whole) {
        int scenarios = asked.names().get("scenario_name").size();
        Oracle.Book question = Oracle.question(name, scenarios, TypedBook.typedIn(asked));
        Map<String, Column> lines = new LinkedHashMap<>(question.lines());
        for (Map.Entry<String, List<CellValue>> answer : Answers.to(question).entrySet()) {
            List<CellValue> values = answer.getValue();
            int choice = (name + answer.getKey()).hashCode();
            lines.put(
                    answer.getKey(), whole ? Column.whole(values) : Column.summed(values, choice));
        }
        return new Oracle.Book(name, lines);
    }
}
