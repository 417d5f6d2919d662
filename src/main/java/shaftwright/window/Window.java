package shaftwright.window;

import java.awt.AWTError;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.List;

/** Opens the window. */
public final class Window {
    private Window() {}

    /** Opens it with these workbooks where there is a screen; whether it did. */
    public static boolean open(List<Path> workbooks) {
        if (!hasScreen()) {
            return false;
        }
        EventQueue.invokeLater(
                () -> {
                    MainWindow unused = show(workbooks);
                });
        return true;
    }

    /** Shows one on the event thread. */
    static MainWindow show(List<Path> workbooks) {
        setLook();
        MainWindow window = MainWindow.create();
        window.show();
        if (!workbooks.isEmpty()) {
            window.desk().open(workbooks);
        }
        return window;
    }

    /** A display may be named that nobody can be reached at, or a Java be without its libraries. */
    private static boolean hasScreen() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length
                            > 0;
        } catch (AWTError | LinkageError | HeadlessException e) {
            return false;
        }
    }

    private static void setLook() {
        System.setProperty("apple.laf.useScreenMenuBar", "true");
        System.setProperty("apple.awt.application.name", MainWindow.TITLE);
        Appearance.begin();
    }
}
