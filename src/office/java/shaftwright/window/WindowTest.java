package shaftwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.xlsx.XlsxBook;

/** The window on a screen: what it does is what the commands do, with the same words. */
class WindowTest {
    private static final Path DEMO = Path.of("workbooks/forest-special-inch.xlsx");
    private static final String PROGRAM = "shaftwright: ";

    @TempDir private Path folder;

    private DrivenWindow window;

    @BeforeEach
    void openWindow() {
        window = DrivenWindow.open();
    }

    @AfterEach
    void closeWindow() {
        window.close();
    }

    private Path demo(String name) throws IOException {
        return Files.copy(DEMO, folder.resolve(name));
    }

    /** Types as a builder does in another program, which saves the file. */
    private static void type(Path file, String name, String text) {
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(book.names().get(name).place(0), CellValue.of(text)));
        book.save(file);
    }

    private Path wider(String name) throws IOException {
        Path file = demo(name);
        type(file, "hub_shift", "1/2");
        return file;
    }

    /** All that a command said, but for its name and the steps that took it long. */
    private static String said(Run command) {
        return (command.err() + command.out())
                .lines()
                .filter(line -> !line.endsWith(" …"))
                .map(line -> line.startsWith(PROGRAM) ? line.substring(PROGRAM.length()) : line)
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }

    @Test
    void droppedWorkbookIsLookedAtAndLeftAsItIs() throws IOException {
        Path file = demo("mine.xlsx");
        byte[] before = Files.readAllBytes(file);

        window.drop(file);

        assertThat(window.results())
                .contains("Caution: a sizing aid, not approval")
                .contains("A As measured, 29 in tyre")
                .contains("Fits: left E")
                .contains("B Small joints from the shelf")
                .contains("Does not fit");
        assertThat(file).hasBinaryContent(before);
        assertThat(folder).isDirectoryNotContaining("glob:**.backup.xlsx");
    }

    @Test
    void opensWithTheWorkbooksThatItIsStartedWith() throws IOException {
        try (DrivenWindow started = DrivenWindow.open(demo("mine.xlsx"), demo("yours.xlsx"))) {
            assertThat(started.results()).contains("mine.xlsx").contains("yours.xlsx");
        }
    }

    @Test
    void workbookDraggedOntoItWithTheMouseIsLookedAt() throws IOException {
        window.drag(demo("mine.xlsx"));

        assertThat(window.results()).contains("A As measured, 29 in tyre");
    }

    @Test
    void fillsAsTheCommandDoesAndUndoesIt() throws IOException {
        Path file = wider("mine.xlsx");
        byte[] before = Files.readAllBytes(file);
        Path other =
                Files.copy(file, Files.createDirectory(folder.resolve("c")).resolve("mine.xlsx"));
        Run command = Run.of("fill", other);

        window.drop(file);
        window.press("Fill");

        byte[] filled = Files.readAllBytes(other);
        assertThat(filled).isNotEqualTo(before);
        assertThat(file).hasBinaryContent(filled);
        assertThat(window.messages())
                .isEqualTo(said(command).replace(other.toString(), file.toString()));

        window.press("Undo");
        assertThat(file).hasBinaryContent(before);
        window.press("Undo");
        assertThat(file).hasBinaryContent(filled);
    }

    @Test
    void undoLeavesAloneWhatAnotherProgramHasSavedSince() throws IOException {
        Path file = wider("mine.xlsx");
        window.drop(file);
        window.press("Fill");
        type(file, "hub_shift", "3/4");
        byte[] theirs = Files.readAllBytes(file);

        window.press("Undo");

        assertThat(window.messages()).startsWith("mine.xlsx: not written, ");
        assertThat(file).hasBinaryContent(theirs);
    }

    @Test
    void offersToFillWhatAnotherProgramSavedOnceThatHasClosedIt() throws IOException {
        Path file = demo("mine.xlsx");
        Path lock = folder.resolve(".~lock.mine.xlsx#");
        window.drop(file);

        Files.createFile(lock);
        window.awaitNotice("is open in a spreadsheet program");
        type(copyOver(file), "hub_shift", "1/2");
        window.awaitNotice("was saved and is still open in a spreadsheet program");
        byte[] theirs = Files.readAllBytes(file);
        window.press("Fill");
        assertThat(window.messages()).isEqualTo(said(Run.of("fill", file)));
        assertThat(file).hasBinaryContent(theirs);

        Files.delete(lock);
        window.awaitNotice("mine.xlsx was saved by another program. Fill it now?");
        window.press("Fill");
        assertThat(window.messages()).contains(" of them changed");
        assertThat(window.notice()).isEmpty();
        assertThat(window.results())
                .containsSubsequence("A As measured, 29 in tyre", "Fits", "Before: Fits: left E");
    }

    /** Our own saving heeds the lock file, as another program's does not. */
    private Path copyOver(Path file) throws IOException {
        Path elsewhere = wider("other.xlsx");
        Files.write(file, Files.readAllBytes(elsewhere));
        return elsewhere;
    }

    @Test
    void saysThatTheOpenWorkbookIsGone() throws IOException {
        Path file = demo("mine.xlsx");
        window.drop(file);
        Files.move(file, folder.resolve("renamed.xlsx"));

        window.awaitNotice("mine.xlsx is not there any more");
        window.press("Fill");

        assertThat(window.messages()).isEqualTo(said(Run.of("fill", file)));
    }

    @Test
    void filesThatAreNoWorkbookAreNamedAsTheCommandDoes() throws IOException {
        Path mine = demo("mine.xlsx");
        window.drop(mine);
        Path picture = folder.resolve("picture.png");
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
        Path text = Files.writeString(folder.resolve("notes.xlsx"), "a,b\n");
        Path empty = Files.createFile(folder.resolve("empty.xlsx"));
        Path directory = Files.createDirectory(folder.resolve("shafts"));
        byte[] before = Files.readAllBytes(mine);

        for (Path bad : List.of(picture, text, empty, directory, folder.resolve("no.xlsx"))) {
            window.drop(bad);
            assertThat(window.messages()).isEqualTo(said(Run.of("show", bad)));
        }

        assertThat(window.results()).contains("A As measured, 29 in tyre");
        window.press("Check");
        assertThat(window.messages()).contains("mine.xlsx: no errors");
        assertThat(mine).hasBinaryContent(before);
    }

    @Test
    void fortyFilesAtOnceAreLookedAtAndRefusedForComparing() throws IOException {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            files.add(demo("mine-" + i + ".xlsx"));
        }
        window.drop(files.toArray(Path[]::new));
        assertThat(window.results()).contains("mine-0.xlsx").contains("mine-39.xlsx");

        Path target = folder.resolve("all.xlsx");
        window.on(desk -> desk.compare(target));
        window.awaitMessage("all.xlsx: not made.");

        assertThat(window.messages())
                .contains("error: found 200 scenarios in all; expected at most 24");
        assertThat(target).doesNotExist();
    }

    @Test
    void stoppedJobLeavesNothing() throws IOException {
        window.drop(demo("mine.xlsx"), demo("yours.xlsx"), demo("theirs.xlsx"));
        Path target = folder.resolve("all.xlsx");

        window.on(desk -> desk.compare(target));
        window.press("Stop");

        assertThat(window.messages()).contains("stopped, nothing was written.");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).hasSize(3);
        }
    }

    @Test
    void comparesAsTheCommandDoes() throws IOException {
        Path mine = demo("mine.xlsx");
        Path yours = wider("yours.xlsx");
        Path byCommand = folder.resolve("command.xlsx");
        assertThat(Run.of("compare", mine, yours, "--out", byCommand).code()).isZero();

        window.drop(mine, yours);
        Path target = Files.writeString(folder.resolve("both.xlsx"), "not a workbook");
        window.click("Compare…");
        window.chooseFile(target);
        window.answer("Save");
        window.answer("OK");
        window.awaitMessage("both.xlsx: made, ");

        assertThat(target).hasSameBinaryContentAs(byCommand);
        assertThat(folder.resolve("both.backup.xlsx")).hasContent("not a workbook");
        assertThat(window.results()).contains("Book 1").contains("Book 2");
    }

    @Test
    void dialogCancelledDoesNothing() throws IOException {
        window.drop(demo("mine.xlsx"), demo("yours.xlsx"));

        window.click("Compare…");
        window.answer("Cancel");

        assertThat(window.messages()).isEmpty();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).hasSize(2);
        }
    }

    @Test
    void sheetsTickedInTheDialogAreSeen() throws IOException {
        Path file = demo("mine.xlsx");
        window.drop(file);

        window.click("Sheets…");
        window.tick("Strength");
        window.answer("OK");
        window.awaitMessage("mine.xlsx: ");

        assertThat(XlsxBook.open(file).seenSheets()).containsEntry("Strength", true);
        assertThat(XlsxBook.open(demo("other.xlsx")).seenSheets()).containsEntry("Strength", false);
    }

    @Test
    void takesAVariantAsTheCommandDoes() throws IOException {
        Path mine = demo("mine.xlsx");
        Path friends = wider("friends.xlsx");
        window.drop(mine, friends);

        byte[] before = Files.readAllBytes(mine);
        Run preview = Run.of("take", friends, "C", mine, "--preview");
        Path byCommand = folder.resolve("command.xlsx");
        Run.of("take", friends, "C", mine, "--out", byCommand);
        window.click("Take…");
        window.pick("Take the variant", "friends.xlsx, C");
        window.pick("into an empty column of", "mine.xlsx");
        window.answer("OK");
        window.awaitMessage("nothing was written.");

        assertThat(window.messages()).isEqualTo(said(preview));
        assertThat(mine).hasBinaryContent(before);
        window.answer("OK");
        window.awaitMessage(" cells filled");
        assertThat(mine).hasSameBinaryContentAs(byCommand);
    }

    @Test
    void makesANewWorkbook() {
        Path file = folder.resolve("new.xlsx");

        window.click("New…");
        window.chooseFile(folder.resolve("new"));
        window.tick("mm");
        window.answer("Save");
        window.awaitMessage("new.xlsx: made, ");

        assertThat(window.results()).contains("No scenario has a name yet");
        Run show = Run.of("show", "--json", file);
        assertThat(show.out()).contains("\"mm\"");
    }

    @Test
    void showsLeversAsTheCommandDoes() throws IOException {
        Path file = demo("mine.xlsx");
        window.drop(file);

        window.press("Levers");

        Run command = Run.of("levers", file);
        assertThat(window.messages()).contains(command.out());
    }

    @Test
    void printsTheCards() throws IOException {
        Path file = demo("mine.xlsx");
        window.drop(file);
        Path target = folder.resolve("cards.pdf");

        window.on(desk -> desk.cards(target));
        window.awaitMessage("cards.pdf: Card left, Card right printed.");

        assertThat(Files.readString(target, StandardCharsets.ISO_8859_1))
                .startsWith("%PDF")
                .containsPattern("/Kids\\[[^\\]]*\\]\\s*/Count 2\\b");
    }

    /** Names of workbooks may hold anything, and so may those of variants. */
    @Test
    void markupInNamesIsShownAsItIs() throws IOException {
        Path file = demo("<html><b>mine.xlsx");
        type(file, "scenario_name", "<img src=x> & \u001b[2J");

        window.drop(file);

        assertThat(window.results()).contains("A <img src=x> & \\u001b[2J");
    }

    @Test
    void everyButtonSaysWhatItDoesAndHasAKey() {
        Map<Integer, String> keys = new HashMap<>();
        for (Component each : window.components()) {
            if (each instanceof JButton button && button.getAction() != null) {
                assertThat(button.getAccessibleContext().getAccessibleName()).isNotBlank();
                assertThat(button.getAccessibleContext().getAccessibleDescription()).isNotBlank();
                String other = keys.put(button.getMnemonic(), button.getText());
                assertThat(other).isIn(null, button.getText());
                assertThat(button.getMnemonic()).isNotZero();
            }
        }
        assertThat(keys).hasSizeGreaterThan(10);
    }
}
