package shaftwright.calc;

import com.sun.star.awt.SystemPointer;
import com.sun.star.awt.XPointer;
import com.sun.star.awt.XVclContainer;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.EventObject;
import com.sun.star.task.XStatusIndicator;
import com.sun.star.task.XStatusIndicatorFactory;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.CloseVetoException;
import com.sun.star.util.XCloseBroadcaster;
import com.sun.star.util.XCloseListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.jobs.Journal;

/**
 * What is being done, in the status bar of a window: from the first step until it rests the pointer
 * is one that waits, and the document can't be closed. Lines that are said are kept.
 *
 * <p>LibreOffice handles what the builder did meanwhile whenever the text changes. The window is
 * not disabled for that: over one that is, no pointer waits.
 */
final class StatusLine implements Journal, XCloseListener {
    /** Steps of the longest job; the bar stays full if there should be more. */
    private static final int STEPS = 8;

    private final XComponentContext context;
    private final Optional<XFrame> frame;
    private final List<String> lines = new ArrayList<>();
    private Optional<XStatusIndicator> bar = Optional.empty();
    private XCloseBroadcaster closing;
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
        // Before the text: with it LibreOffice passes on to the screen what is to be seen there.
        point(SystemPointer.WAIT);
        if (bar.isEmpty()) {
            begin(frame.get(), doing);
        } else {
            bar.get().setText(doing);
        }
        step = Math.min(step + 1, STEPS);
        bar.ifPresent(shown -> shown.setValue(step));
    }

    private void begin(XFrame shown, String doing) {
        closing =
                UnoRuntime.queryInterface(
                        XCloseBroadcaster.class, shown.getController().getModel());
        closing.addCloseListener(this);
        bar =
                Optional.ofNullable(UnoRuntime.queryInterface(XStatusIndicatorFactory.class, shown))
                        .map(XStatusIndicatorFactory::createStatusIndicator);
        bar.ifPresent(begun -> begun.start(doing, STEPS));
    }

    /** Leaves the window as it was, until the next step. */
    void rest() {
        if (bar.isPresent()) {
            bar.get().end();
            point(SystemPointer.ARROW);
            closing.removeCloseListener(this);
        }
        bar = Optional.empty();
    }

    @Override
    public void queryClosing(EventObject event, boolean owned) throws CloseVetoException {
        throw new CloseVetoException("still at work on it");
    }

    @Override
    public void notifyClosing(EventObject event) {
        // It is not closed while this listens.
    }

    @Override
    public void disposing(EventObject event) {
        // The same.
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
            point(frame.orElseThrow().getComponentWindow(), pointer);
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
