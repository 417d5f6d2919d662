package shaftwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.InputEvent;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.TransferHandler;
import javax.swing.TransferHandler.TransferSupport;
import javax.swing.text.BadLocationException;

/** A window on a screen, with somebody before it who drops files and presses buttons. */
final class DrivenWindow implements AutoCloseable {
    private static final int DRAG_STEPS = 20;

    /** Where the mouse takes hold, from a window's corner, pixels. */
    private static final int GRIP = 10;

    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final MainWindow window;
    private final Robot robot;

    private DrivenWindow(MainWindow window, Robot robot) {
        this.window = window;
        this.robot = robot;
    }

    /** Opens one with these workbooks, as a desktop's menu does. */
    static DrivenWindow open(Path... files) {
        assertThat(GraphicsEnvironment.isHeadless())
                .as("a screen is needed here: src/verify.sh brings one")
                .isFalse();
        try {
            Robot robot = new Robot();
            robot.setAutoWaitForIdle(true);
            MainWindow window = onEventThread(() -> Window.show(List.of(files)));
            DrivenWindow driven = new DrivenWindow(window, robot);
            driven.await(MainWindow::isIdle);
            return driven;
        } catch (AWTException e) {
            throw new AssertionError(e);
        }
    }

    /** Lets files fall on it, as a file manager does, and waits for what comes of it. */
    void drop(Path... files) {
        boolean taken = onEventThread(() -> dropped(List.of(files)));
        assertThat(taken).isTrue();
        await(MainWindow::isIdle);
    }

    /**
     * Drags files onto it with the mouse, out of another window, and waits for what comes of it.
     */
    void drag(Path... files) {
        JFrame folder = onEventThread(() -> folder(List.of(files)));
        robot.waitForIdle();
        Point from = onEventThread(folder.getContentPane()::getLocationOnScreen);
        Point to = onEventThread(window.frame().getContentPane()::getLocationOnScreen);
        robot.mouseMove(from.x + GRIP, from.y + GRIP);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        Point target = new Point(to.x + window.frame().getWidth() / 2, to.y + 4 * GRIP);
        for (int step = 1; step <= DRAG_STEPS; step++) {
            robot.mouseMove(
                    from.x + GRIP + (target.x - from.x - GRIP) * step / DRAG_STEPS,
                    from.y + GRIP + (target.y - from.y - GRIP) * step / DRAG_STEPS);
            robot.delay(20);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        String name = files[0].getFileName().toString();
        await(any -> any.isIdle() && any.frame().getTitle().startsWith(name));
        onEventThread(
                () -> {
                    folder.dispose();
                    return null;
                });
    }

    /** A window of a file manager, below the driven one. */
    private JFrame folder(List<Path> files) {
        JList<Path> list = new JList<>(files.toArray(Path[]::new));
        list.setDragEnabled(true);
        list.setSelectionInterval(0, files.size() - 1);
        list.setTransferHandler(
                new TransferHandler() {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public int getSourceActions(JComponent source) {
                        return COPY;
                    }

                    @Override
                    protected Transferable createTransferable(JComponent source) {
                        return new DroppedFiles(files);
                    }
                });
        JFrame folder = new JFrame("folder");
        folder.add(list);
        Rectangle below = window.frame().getBounds();
        folder.setBounds(below.x, below.y + below.height, below.width, 80);
        folder.setVisible(true);
        return folder;
    }

    private boolean dropped(List<Path> files) {
        JComponent root = (JComponent) window.frame().getContentPane();
        return root.getTransferHandler()
                .importData(new TransferSupport(root, new DroppedFiles(files)));
    }

    /** Presses a button with the mouse and waits for what comes of it. */
    void press(String name) {
        click(name);
        await(MainWindow::isIdle);
    }

    /** Presses a button with the mouse. */
    void click(String name) {
        JButton button = onEventThread(() -> button(name));
        await(any -> button.isEnabled() && button.isShowing());
        Point at = onEventThread(button::getLocationOnScreen);
        robot.mouseMove(at.x + button.getWidth() / 2, at.y + button.getHeight() / 2);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    /** Presses a button of the dialog that is open, and waits for what comes of it. */
    void answer(String name) {
        await(any -> dialogButton(name).isPresent());
        JButton button = onEventThread(() -> dialogButton(name).orElseThrow());
        onEventThread(
                () -> {
                    button.doClick();
                    return null;
                });
        await(MainWindow::isIdle);
    }

    /** Types into the dialog that is open: the name of a file into its chooser. */
    void chooseFile(Path file) {
        await(any -> inDialog(JFileChooser.class).isPresent());
        onEventThread(
                () -> {
                    inDialog(JFileChooser.class).orElseThrow().setSelectedFile(file.toFile());
                    return null;
                });
    }

    /** Ticks or unticks a box of the dialog that is open. */
    void tick(String box) {
        await(any -> inDialog(AbstractButton.class, box).isPresent());
        onEventThread(
                () -> {
                    inDialog(AbstractButton.class, box).orElseThrow().doClick();
                    return null;
                });
    }

    /**
     * In the dialog that is open picks, from the list with this label, the line with these words.
     */
    void pick(String label, String words) {
        await(any -> labelled(label).isPresent());
        onEventThread(
                () -> {
                    JComboBox<?> box = (JComboBox<?>) labelled(label).orElseThrow();
                    for (int i = 0; i < box.getItemCount(); i++) {
                        if (box.getItemAt(i).toString().contains(words)) {
                            box.setSelectedIndex(i);
                            return null;
                        }
                    }
                    throw new AssertionError("the list offers no " + words);
                });
    }

    private Optional<Component> labelled(String text) {
        return dialogParts().stream()
                .filter(JLabel.class::isInstance)
                .map(JLabel.class::cast)
                .filter(label -> text.equals(label.getText()))
                .map(JLabel::getLabelFor)
                .findFirst();
    }

    private List<Component> dialogParts() {
        return Stream.of(window.frame().getOwnedWindows())
                .filter(Component::isShowing)
                .flatMap(dialog -> all(dialog).stream())
                .toList();
    }

    private <T extends Component> Optional<T> inDialog(Class<T> kind) {
        return dialogParts().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private <T extends AbstractButton> Optional<T> inDialog(Class<T> kind, String text) {
        return dialogParts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(each -> text.equals(each.getText()))
                .findFirst();
    }

    private Optional<JButton> dialogButton(String name) {
        return inDialog(JButton.class, name);
    }

    /** What a dialog would ask for is given at once. */
    void on(Consumer<Desk> what) {
        onEventThread(
                () -> {
                    what.accept(window.desk());
                    return null;
                });
    }

    private JButton button(String name) {
        return all(window.frame()).stream()
                .filter(JButton.class::isInstance)
                .map(JButton.class::cast)
                .filter(button -> name.equals(button.getText()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button is called " + name));
    }

    /** Everything that is in the window. */
    List<Component> components() {
        return onEventThread(() -> all(window.frame()));
    }

    private static List<Component> all(Container container) {
        List<Component> all = new ArrayList<>();
        for (Component each : container.getComponents()) {
            all.add(each);
            if (each instanceof Container inner) {
                all.addAll(all(inner));
            }
        }
        return all;
    }

    String messages() {
        return onEventThread(window::messages);
    }

    String notice() {
        return onEventThread(() -> window.banner().text());
    }

    /** Verdicts and findings as plain text. */
    String results() {
        return onEventThread(
                () -> {
                    for (Component each : all(window.frame())) {
                        if (each instanceof JEditorPane pane) {
                            return plain(pane);
                        }
                    }
                    throw new AssertionError("no results");
                });
    }

    private static String plain(JEditorPane pane) throws BadLocationException {
        return pane.getDocument().getText(0, pane.getDocument().getLength());
    }

    void awaitNotice(String part) {
        await(any -> any.banner().text().contains(part));
    }

    void awaitMessage(String part) {
        await(any -> any.messages().contains(part));
    }

    /** Waits until something holds. */
    private void await(Predicate<MainWindow> condition) {
        Instant end = Instant.now().plus(PATIENCE);
        while (!onEventThread(() -> condition.test(window))) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError(
                        "it never came; notice: " + notice() + "; messages: " + messages());
            }
            robot.delay(50);
        }
    }

    private static <T> T onEventThread(Callable<T> what) {
        FutureTask<T> task = new FutureTask<>(what);
        try {
            EventQueue.invokeAndWait(task);
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        } catch (InvocationTargetException | ExecutionException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        onEventThread(
                () -> {
                    window.close();
                    return null;
                });
    }

    /** What a file manager hands over. */
    private record DroppedFiles(List<Path> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!isDataFlavorSupported(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return files.stream().map(Path::toFile).toList();
        }
    }
}
