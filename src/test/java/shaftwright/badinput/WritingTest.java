package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Files that can't be written: exit code 4, and whatever was there is whole. */
class WritingTest {
    private static final String SET = "hub_shift[A]=1/2";

    @TempDir private Path folder;

    @Test
    void workbookOpenInASpreadsheetProgram() throws IOException {
        for (String lock : new String[] {".~lock.shafts.xlsx#", "~$shafts.xlsx"}) {
            SmallBook book = SmallBook.in(folder);
            byte[] before = book.bytes();
            Path file = Files.writeString(folder.resolve(lock), "someone");

            Run run = Run.of("fill", "--set", SET, book.file());

            assertThat(run.code()).isEqualTo(4);
            assertThat(run.err())
                    .contains(
                            "shafts.xlsx: not written, it is open in a spreadsheet program", lock);
            assertThat(book.file()).hasBinaryContent(before);
            assertThat(folder.resolve("shafts.backup.xlsx")).doesNotExist();
            Files.delete(file);
        }
    }

    @Test
    void otherTargetOpenInASpreadsheetProgram() throws IOException {
        SmallBook book = SmallBook.in(folder);
        Path target = Files.writeString(folder.resolve("other.xlsx"), "kept");
        Files.writeString(folder.resolve(".~lock.other.xlsx#"), "someone");

        Run run = Run.of("fill", "--out", target, book.file());

        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).contains("other.xlsx: not written, it is open");
        assertThat(target).hasContent("kept");
    }

    @Test
    void newWorkbookDoesNotReplaceOneThatIsOpen() throws IOException {
        SmallBook book = SmallBook.in(folder);
        byte[] before = book.bytes();
        Files.writeString(folder.resolve(".~lock.shafts.xlsx#"), "someone");

        Run run = Run.of("new", "--force", "--scenarios", "1", book.file());

        assertThat(run.code()).isEqualTo(4);
        assertThat(book.file()).hasBinaryContent(before);
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("shafts.xlsx", ".~lock.shafts.xlsx#");
    }

    @Test
    void targetWithoutAName() {
        SmallBook book = SmallBook.in(folder);
        byte[] before = book.bytes();
        Object[][] lines = {
            {"fill", "--out", "", "--set", SET, book.file()},
            {"fill", "--out=", "--set", SET, book.file()},
            {"pack", "--out", "", book.file()},
            {"clear-authors", "--out", "", book.file()},
            {"take", book.file(), "A", book.file(), "--out", ""},
            {"compare", book.file(), book.file(), "--out", ""},
            {"fill", "--inputs", "", book.file()},
        };
        for (Object[] line : lines) {
            Run run = Run.of(line);

            assertThat(run.code()).as(line[0] + run.out() + run.err()).isEqualTo(2);
            assertThat(run.err()).contains(": found nothing after it; expected FILE");
            assertThat(book.file()).hasBinaryContent(before);
        }
        assertThat(folder.toFile().list()).containsExactly("shafts.xlsx");
    }

    @Test
    void otherNamesOfTheFileAreSaid() throws IOException {
        SmallBook book = SmallBook.in(folder);
        byte[] before = book.bytes();
        Path second = Files.createLink(folder.resolve("second.xlsx"), book.file());

        Run run = Run.of("fill", "--set", SET, book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: the file had one other name (a hard link), which still holds");
        assertThat(second).hasBinaryContent(before);
    }

    @Test
    void targetThatIsAFolder() throws IOException {
        SmallBook book = SmallBook.in(folder);
        Path target = Files.createDirectory(folder.resolve("other"));

        Run run = Run.of("fill", "--out", target, book.file());

        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).contains("other: not written, it is a folder.");
    }

    @Test
    void folderThatIsNotThere() {
        SmallBook book = SmallBook.in(folder);

        Run run = Run.of("fill", "--out", folder.resolve("none/shafts.xlsx"), book.file());

        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).contains("shafts.xlsx: not written, there is no folder");
    }

    @Test
    void folderThatMayNotBeWritten() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        mount(disk, "size=8m");
        try {
            SmallBook book = SmallBook.at(disk.resolve("shafts.xlsx"));
            byte[] before = book.bytes();
            assumeTrue(run("mount", "-o", "remount,ro", disk.toString()), "may not remount");

            Run fill = Run.of("fill", "--set", SET, book.file());
            Run made = Run.of("new", "--scenarios", "1", disk.resolve("new.xlsx"));

            assertThat(fill.code()).isEqualTo(4);
            assertThat(fill.err()).contains("shafts.xlsx: not written, its folder is not writable");
            assertThat(book.file()).hasBinaryContent(before);
            assertThat(made.code()).isEqualTo(4);
            assertThat(made.err()).contains("nothing may be written into this folder");
            assertThat(disk.toFile().list()).containsExactly("shafts.xlsx");
        } finally {
            run("umount", disk.toString());
        }
    }

    @Test
    void fullDisk() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        byte[] book = SmallBook.in(folder).bytes();
        // Room for the workbook and half another.
        mount(disk, "size=" + book.length * 3 / 2);
        try {
            Path file = Files.write(disk.resolve("shafts.xlsx"), book);

            Run run = Run.of("fill", "--set", SET, file);

            assertThat(run.code()).isEqualTo(4);
            assertThat(run.err()).contains("shafts.xlsx: not written, the disk is full.");
            assertThat(file).hasBinaryContent(book);
            assertThat(disk.toFile().list()).containsExactly("shafts.xlsx");
        } finally {
            run("umount", disk.toString());
        }
    }

    @Test
    void fullDiskForANewWorkbook() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        mount(disk, "size=16k");
        try {
            Run run = Run.of("new", "--scenarios", "1", disk.resolve("new.xlsx"));

            assertThat(run.code()).isEqualTo(4);
            assertThat(run.err()).contains("the disk is full");
            assertThat(disk.toFile().list()).isEmpty();
        } finally {
            run("umount", disk.toString());
        }
    }

    /** A memory file system, which only root may mount: elsewhere the test is skipped. */
    private static void mount(Path disk, String options) throws Exception {
        assumeTrue(
                run("mount", "-t", "tmpfs", "-o", options, "tmpfs", disk.toString()),
                "only root may mount a small disk");
    }

    private static boolean run(String... command) throws Exception {
        return new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
    }
}
