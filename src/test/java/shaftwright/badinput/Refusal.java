package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shaftwright.book.CellPlace;
import shaftwright.cli.Run;

/** What a fill says that refuses a workbook; the workbook is as it was and nothing lies beside. */
final class Refusal {
    private final SmallBook book;
    private final List<String> errors;

    private Refusal(SmallBook book, List<String> errors) {
        this.book = book;
        this.errors = errors;
    }

    /** Fills the book in place and asserts that it is refused for problems in its cells. */
    static Refusal of(SmallBook book) {
        byte[] before = book.bytes();
        List<Path> beside = files(book);
        Run run = Run.of("fill", book.file());
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .endsWith("shafts.xlsx: not filled, nothing was written.\n")
                .doesNotContain("Exception", "NaN", "null");
        assertThat(book.file()).hasBinaryContent(before);
        assertThat(files(book)).isEqualTo(beside);
        return new Refusal(
                book, run.err().lines().filter(line -> line.startsWith("error: ")).toList());
    }

    private static List<Path> files(SmallBook book) {
        try (var list = Files.list(book.file().getParent())) {
            return list.sorted().toList();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Asserts that one line names file, sheet, cell, what was found and what is expected. */
    Refusal names(String name, int offset, String found, String expected) {
        CellPlace place = book.place(name, offset);
        String start =
                "error: shafts.xlsx: sheet \""
                        + place.sheet()
                        + "\", cell "
                        + place.address()
                        + " (";
        assertThat(errors)
                .anySatisfy(
                        line ->
                                assertThat(line)
                                        .startsWith(start)
                                        .contains("): found " + found, "; expected " + expected)
                                        .endsWith("."));
        return this;
    }

    /** Asserts that some line has these words. */
    Refusal says(String... words) {
        assertThat(errors).anySatisfy(line -> assertThat(line).contains(words));
        return this;
    }

    /** Asserts that nothing else is said: no consequence of the same mistake. */
    void only(int lines) {
        assertThat(errors).hasSize(lines);
    }
}
