package shaftwright.window;

import java.awt.AWTError;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;

/** Opens the window. */
public final class Window {
    private Window() {}

    /** Opens it where there is a screen; whether it did. */
    public static boolean open() {
        if (!hasScreen()) {
            return false;
        }
        EventQueue.invokeLater(
                () -> {
                    setLook();
                    MainWindow.create().show();
                });
        return true;
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

    static void setLook() {
        System.setProperty("apple.laf.useScreenMenuBar", "true");
        System.setProperty("apple.awt.application.name", MainWindow.TITLE);
        Appearance.begin();
    }
}
