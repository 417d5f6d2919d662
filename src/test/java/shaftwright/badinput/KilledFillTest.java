package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** A fill that is killed while it writes leaves a whole file, and the next one tidies up. */
class KilledFillTest {
    private static final int KILLS = 4;

    @TempDir private Path folder;

    @Test
    void fileIsWholeAndNothingStays() throws Exception {
        SmallBook book = SmallBook.in(folder);
        for (int i = 0; i < KILLS; i++) {
            byte[] before = book.bytes();
            String set = "hub_shift[A]=" + (i + 1) + "/64";
            kill(set, book.file(), i * 10L);

            boolean filled = !Arrays.equals(book.bytes(), before);
            assertThat(Run.of("check", book.file()).code()).as("after kill " + i).isZero();
            if (filled) {
                assertThat(folder.resolve("shafts.backup.xlsx")).hasBinaryContent(before);
            }
        }

        Run last = Run.of("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(last.code()).as(last.err()).isZero();
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("shafts.xlsx", "shafts.backup.xlsx");
    }

    /** Starts a fill and kills it so long after it has begun to write. */
    private void kill(String set, Path file, long milliseconds) throws Exception {
        String java = System.getProperty("java.home") + File.separator + "bin/java";
        Process fill =
                new ProcessBuilder(
                                java,
                                "-cp",
                                System.getProperty("java.class.path"),
                                "shaftwright.cli.Main",
                                "fill",
                                "--set",
                                set,
                                file.toString())
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        while (fill.isAlive() && !isWriting(file)) {
            Thread.onSpinWait();
        }
        fill.waitFor(milliseconds, TimeUnit.MILLISECONDS);
        fill.destroyForcibly();
        assertThat(fill.waitFor(60, TimeUnit.SECONDS)).isTrue();
    }

    private static boolean isWriting(Path file) {
        String[] beside = file.getParent().toFile().list();
        return beside != null
                && Arrays.stream(beside)
                        .anyMatch(
                                name -> name.startsWith(".shafts.xlsx.") && !name.contains("lock"));
    }
}
