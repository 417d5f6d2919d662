package shaftwright.calc;

import com.sun.star.awt.SystemPointer;
import com.sun.star.awt.XPointer;
import com.sun.star.awt.XVclContainer;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XFrame;
import com.sun.star.task.XStatusIndicator;
import com.sun.star.task.XStatusIndicatorFactory;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.jobs.Journal;

/**
 * What is being done, in the status bar of a window: from the first step until it rests the pointer
 * is one that waits, and the window takes no other commands. Lines that are said are kept.
 */
final class StatusLine implements Journal {
    /** Steps of the longest job; the bar stays full if there should be more. */
    private static final int STEPS = 8;

    private final XComponentContext context;
    private final Optional<XFrame> frame;
    private final List<String> lines = new ArrayList<>();
    private Optional<XStatusIndicator> bar = Optional.empty();
    private int step;

    /** In a window that is seen; nothing is shown where there is none. */
    StatusLine(XComponentContext context, Optional<XFrame> frame) {
        this.context = context;
        this.frame = frame;
    }

    @Override
    public void step(String doing) {
        if (frame.isEmpty()) {
            return;
        }
        if (bar.isEmpty()) {
            begin(frame.get(), doing);
        } else {
            bar.get().setText(doing);
        }
        step = Math.min(step + 1, STEPS);
        bar.ifPresent(shown -> shown.setValue(step));
    }

    private void begin(XFrame shown, String doing) {
        bar =
                Optional.ofNullable(UnoRuntime.queryInterface(XStatusIndicatorFactory.class, shown))
                        .map(XStatusIndicatorFactory::createStatusIndicator);
        point(SystemPointer.WAIT);
        bar.ifPresent(begun -> begun.start(doing, STEPS));
        shown.getContainerWindow().setEnable(false);
    }

    /** Leaves the window as it was, until the next step. */
    void rest() {
        bar.ifPresent(
                shown -> {
                    shown.end();
                    point(SystemPointer.ARROW);
                    XFrame window = frame.orElseThrow();
                    window.getContainerWindow().setEnable(true);
                    window.getComponentWindow().setFocus();
                });
        bar = Optional.empty();
    }

    /** What was said since the last time. */
    List<String> lines() {
        List<String> said = List.copyOf(lines);
        lines.clear();
        return said;
    }

    @Override
    public void say(String line) {
        lines.add(line);
    }

    @Override
    public void complain(String line) {
        lines.add(line);
    }

    private void point(int type) {
        try {
            XPointer pointer =
                    UnoRuntime.queryInterface(
                            XPointer.class,
                            context.getServiceManager()
                                    .createInstanceWithContext(
                                            "com.sun.star.awt.Pointer", context));
            pointer.setType(type);
            point(frame.orElseThrow().getContainerWindow(), pointer);
        } catch (com.sun.star.uno.Exception e) {
            // The work goes on under whatever pointer there is.
            return;
        }
    }

    /** Each window has its own; cells and text fields choose theirs anew when it next moves. */
    private static void point(XWindow window, XPointer pointer) {
        XWindowPeer peer = UnoRuntime.queryInterface(XWindowPeer.class, window);
        if (peer != null) {
            peer.setPointer(pointer);
        }
        XVclContainer inside = UnoRuntime.queryInterface(XVclContainer.class, window);
        if (inside != null) {
            for (XWindow each : inside.getWindows()) {
                point(each, pointer);
            }
        }
    }
}
