package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is replaced wholly or not at all. */
class SafeReplaceTest {
    private static final SafeReplace.Check ANYTHING = written -> {};

    @TempDir Path folder;

    private Path old() throws IOException {
        return Files.writeString(folder.resolve("forest.xlsx"), "old");
    }

    private static SafeReplace.Content content(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void previousFileIsKeptAsBackupUntilTheNextTime() throws IOException {
        Path file = old();
        Path backup = folder.resolve("forest.backup.xlsx");
        assertThat(SafeReplace.replace(file, content("new"), ANYTHING).backup()).contains(backup);
        assertThat(file).hasContent("new");
        assertThat(backup).hasContent("old");
        SafeReplace.replace(file, content("newer"), ANYTHING);
        assertThat(backup).hasContent("new");
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("forest.xlsx", "forest.backup.xlsx");
    }

    @Test
    void newFileHasNoBackup() {
        Path file = folder.resolve("new.xlsx");
        assertThat(SafeReplace.replace(file, content("new"), ANYTHING).backup()).isEmpty();
        assertThat(file).hasContent("new");
    }

    @Test
    void failureWhileWritingLeavesTheOldFileAndNoLitter() throws IOException {
        Path file = old();
        assertThatThrownBy(
                        () ->
                                SafeReplace.replace(
                                        file,
                                        out -> {
                                            out.write(new byte[100_000]);
                                            throw new IOException("No space left on device");
                                        },
                                        ANYTHING))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessage("forest.xlsx: not written, the disk is full.");
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).containsExactly("forest.xlsx");
    }

    @Test
    void failedCheckLeavesTheOldFileAndNoLitter() throws IOException {
        Path file = old();
        assertThatThrownBy(
                        () ->
                                SafeReplace.replace(
                                        file,
                                        content("wrong"),
                                        written -> {
                                            assertThat(written).hasContent("wrong");
                                            throw new BookNotWritableException(file, "no good");
                                        }))
                .isInstanceOf(BookNotWritableException.class);
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).containsExactly("forest.xlsx");
    }

    /** A real full disk: a memory file system of 64 kB, which only root may mount. */
    @Test
    void fullDiskLeavesTheOldFileWhole() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Process mount =
                new ProcessBuilder("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", "" + disk)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        assumeTrue(mount.waitFor() == 0, "may not mount");
        try {
            Path file = Files.write(disk.resolve("forest.xlsx"), new byte[20_000]);
            assertThatThrownBy(
                            () ->
                                    SafeReplace.replace(
                                            file, out -> out.write(new byte[200_000]), ANYTHING))
                    .hasMessage("forest.xlsx: not written, the disk is full.");
            // The new file fits, the backup does not.
            assertThatThrownBy(
                            () ->
                                    SafeReplace.replace(
                                            file, out -> out.write(new byte[36_000]), ANYTHING))
                    .hasMessage("forest.xlsx: not written, the disk is full.");
            assertThat(file).hasSize(20_000);
            assertThat(disk.toFile().list()).containsExactly("forest.xlsx");
        } finally {
            new ProcessBuilder("umount", "" + disk).start().waitFor();
        }
    }

    @Test
    void lockFileOfASpreadsheetProgramIsRespected() throws IOException {
        Path file = old();
        for (String name : new String[] {".~lock.forest.xlsx#", "~$forest.xlsx"}) {
            Path lock = Files.writeString(folder.resolve(name), "someone");
            assertThatThrownBy(() -> SafeReplace.replace(file, content("new"), ANYTHING))
                    .isInstanceOf(BookNotWritableException.class)
                    .hasMessageContaining("open in a spreadsheet program")
                    .hasMessageContaining(name);
            Files.delete(lock);
        }
        assertThat(file).hasContent("old");
    }

    @Test
    void missingFolderIsNamed() {
        assertThatThrownBy(
                        () ->
                                SafeReplace.replace(
                                        folder.resolve("no/such.xlsx"), content("x"), ANYTHING))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("there is no folder");
    }

    @Test
    void readOnlyFileAndFolderAreRefused() throws IOException {
        Path file = old();
        assumeTrue(file.toFile().setReadOnly() && !Files.isWritable(file), "root writes anything");
        assertThatThrownBy(() -> SafeReplace.replace(file, content("new"), ANYTHING))
                .hasMessageContaining("read-only");
        assumeTrue(file.toFile().setWritable(true) && folder.toFile().setReadOnly());
        try {
            assertThatThrownBy(() -> SafeReplace.replace(file, content("new"), ANYTHING))
                    .hasMessageContaining("its folder is not writable");
        } finally {
            assertThat(folder.toFile().setWritable(true)).isTrue();
        }
    }

    @Test
    void permissionsAndLinksStay() throws IOException {
        Path file = old();
        assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), file);
        SafeReplace.replace(link, content("new"), ANYTHING);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(file).hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
    }

    @Test
    void fileThatAnotherProgramSavesMeanwhileStays() throws IOException {
        Path file = old();
        SafeReplace.replace(file, content("older"), ANYTHING);
        FileState read = FileState.read(file);
        assertThatThrownBy(
                        () ->
                                SafeReplace.replace(
                                        file,
                                        read,
                                        content("new"),
                                        written -> {
                                            Path other = folder.resolve("other.tmp");
                                            write(other, "saved");
                                            assertThat(other.toFile().renameTo(file.toFile()))
                                                    .isTrue();
                                        }))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("another program has changed it");
        assertThat(file).hasContent("saved");
        assertThat(folder.resolve("forest.backup.xlsx")).hasContent("old");
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("forest.xlsx", "forest.backup.xlsx");
    }

    @Test
    void fileThatAnotherProgramMakesMeanwhileStays() {
        Path file = folder.resolve("forest.xlsx");
        assertThatThrownBy(
                        () ->
                                SafeReplace.replace(
                                        file, content("new"), written -> write(file, "saved")))
                .isInstanceOf(BookNotWritableException.class);
        assertThat(file).hasContent("saved");
        assertThat(folder.toFile().list()).containsExactly("forest.xlsx");
    }

    @Test
    void fileThatIsOpenedMeanwhileStays() throws IOException {
        Path file = old();
        Path lock = folder.resolve(".~lock.forest.xlsx#");
        assertThatThrownBy(
                        () ->
                                SafeReplace.replace(
                                        file, content("new"), written -> write(lock, "someone")))
                .hasMessageContaining("open in a spreadsheet program");
        assertThat(file).hasContent("old");
    }

    @Test
    void secondRunAtTheSameTimeIsRefused() throws IOException {
        Path file = old();
        SafeReplace.replace(
                file,
                content("new"),
                written ->
                        assertThatThrownBy(
                                        () ->
                                                SafeReplace.replace(
                                                        file, content("second"), ANYTHING))
                                .isInstanceOf(BookNotWritableException.class)
                                .hasMessageContaining("another run of this program"));
        assertThat(file).hasContent("new");
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("forest.xlsx", "forest.backup.xlsx");
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void lockFileBesideTheRealFileIsSeenThroughALink() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real"));
        Path file = Files.writeString(real.resolve("forest.xlsx"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), file);
        for (String lock :
                new String[] {"real/.~lock.forest.xlsx#", "real/~$forest.xlsx", "~$link.xlsx"}) {
            Path beside = Files.writeString(folder.resolve(lock), "someone");
            assertThatThrownBy(() -> SafeReplace.replace(link, content("new"), ANYTHING))
                    .hasMessageContaining("open in a spreadsheet program");
            Files.delete(beside);
        }
        assertThat(file).hasContent("old");
    }

    @Test
    void linkToAFileThatIsNotThereYetIsWrittenThrough() throws IOException {
        Files.createDirectory(folder.resolve("real"));
        Path link =
                Files.createSymbolicLink(folder.resolve("link.xlsx"), Path.of("real/forest.xlsx"));
        SafeReplace.replace(link, content("new"), ANYTHING);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(folder.resolve("real/forest.xlsx")).hasContent("new");
    }

    @Test
    void linkThatLeadsBackToItselfIsRefused() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), Path.of("other.xlsx"));
        Files.createSymbolicLink(folder.resolve("other.xlsx"), Path.of("link.xlsx"));
        assertThatThrownBy(() -> SafeReplace.replace(link, content("new"), ANYTHING))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("a link that leads back to itself");
        assertThat(Files.isSymbolicLink(link)).isTrue();
    }

    @Test
    void otherNamesOfTheFileAreCounted() throws IOException {
        Path file = old();
        Path second = Files.createLink(folder.resolve("second.xlsx"), file);
        assertThat(SafeReplace.replace(file, content("new"), ANYTHING).otherNames()).isOne();
        assertThat(file).hasContent("new");
        assertThat(second).hasContent("old");
    }

    @Test
    void ownerAndGroupStay() throws IOException {
        Path file = old();
        assumeTrue(owned(file, 12_345, 23_456), "only root may give files away");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        SafeReplace.replace(file, content("new"), ANYTHING);
        for (Path each : new Path[] {file, folder.resolve("forest.backup.xlsx")}) {
            assertThat(Files.readAttributes(each, "unix:uid,gid"))
                    .containsEntry("uid", 12_345)
                    .containsEntry("gid", 23_456);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(each)))
                    .isEqualTo("rw-rw----");
        }
    }

    private static boolean owned(Path file, int user, int group) {
        try {
            Files.setAttribute(file, "unix:gid", group);
            Files.setAttribute(file, "unix:uid", user);
            return true;
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
            return false;
        }
    }

    @Test
    void leftoversOfAKilledRunGoEvenWhenNothingIsToBeWritten() throws IOException {
        Path file = old();
        Files.writeString(folder.resolve(".forest.xlsx.999999999.filling"), "half");
        Files.writeString(folder.resolve(".forest.xlsx.999999999.backup.filling"), "ol");
        Files.writeString(folder.resolve(".forest.xlsx.lock.filling"), "");
        SafeReplace.tidy(file);
        assertThat(folder.toFile().list()).containsExactly("forest.xlsx");
    }

    /** Dies between writing and moving, as if the power failed. */
    static final class DyingWriter {
        private DyingWriter() {}

        public static void main(String[] arguments) {
            SafeReplace.replace(
                    Path.of(arguments[0]),
                    out -> out.write(1),
                    written -> Runtime.getRuntime().halt(9));
        }
    }

    private static Path location(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    @Test
    void killInTheMiddleLeavesTheOldFileAndTheNextRunTidiesUp() throws Exception {
        Path file = old();
        String java = System.getProperty("java.home") + File.separator + "bin/java";
        Process child =
                new ProcessBuilder(
                                java,
                                "-cp",
                                location(SafeReplace.class)
                                        + File.pathSeparator
                                        + location(DyingWriter.class),
                                DyingWriter.class.getName(),
                                file.toString())
                        .inheritIO()
                        .start();
        assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(child.exitValue()).isEqualTo(9);
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).as("file, new file, lock").hasSize(3);
        SafeReplace.replace(file, content("new"), ANYTHING);
        assertThat(file).hasContent("new");
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("forest.xlsx", "forest.backup.xlsx");
    }
}
