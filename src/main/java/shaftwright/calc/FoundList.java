package shaftwright.calc;

import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XTopWindow;
import com.sun.star.awt.XTopWindowListener;
import com.sun.star.awt.XWindow;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XEventListener;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a command found, in a list that stays open beside the workbook: whoever chooses a row reads
 * all of it below and is taken to its cell. A window has one such list.
 */
final class FoundList {
    private static final int WIDTH = 340;
    private static final int ROWS = 96;
    private static final int DETAIL = 56;

    private static final Map<XFrame, FoundList> OPEN = new ConcurrentHashMap<>();

    private final XFrame frame;
    private final List<Found> found;
    private final Form form;
    private final XListBox rows;
    private final XTextComponent detail;

    private FoundList(XComponentContext context, XFrame frame, Answer answer)
            throws com.sun.star.uno.Exception {
        this.frame = frame;
        found = answer.found();
        form = new Form(context, "What was found", WIDTH);
        form.text("answer", answer.text());
        form.label("rows_label", "~Choose a row to go to its cell:");
        rows = form.list("rows", found.stream().map(Found::title).toList(), ROWS);
        form.label("detail_label", "In ~full:");
        detail = form.page("detail", "", DETAIL, Answer.Face.SENTENCES);
        // Escape presses a button of this sort.
        form.buttons(Map.of("~Close", PushButtonType.CANCEL));
    }

    /** Opens it in place of an earlier one. */
    static void open(XComponentContext context, XFrame frame, Answer answer)
            throws com.sun.star.uno.Exception {
        FoundList before = OPEN.get(frame);
        if (before != null) {
            before.close();
        }
        FoundList list = new FoundList(context, frame, answer);
        list.form.open(frame.getContainerWindow(), Form.Stand.LOWER_RIGHT);
        list.listen();
        OPEN.put(frame, list);
        list.form.as(XWindow.class).setVisible(true);
    }

    private void listen() {
        rows.addItemListener(new Choosing());
        form.as(XTopWindow.class).addTopWindowListener(new Closing());
        frame.addEventListener(new WithFrame());
    }

    private void close() {
        if (OPEN.remove(frame, this)) {
            form.close();
        }
    }

    private void choose(int row) {
        if (row >= 0 && row < found.size()) {
            detail.setText(found.get(row).text());
            found.get(row).place().ifPresent(place -> CellView.show(frame.getController(), place));
        }
    }

    /** Goes where the chosen row says. */
    private final class Choosing implements XItemListener {
        @Override
        public void itemStateChanged(ItemEvent event) {
            choose(rows.getSelectedItemPos());
        }

        @Override
        public void disposing(EventObject event) {
            // It goes with the list.
        }
    }

    /** A list without its window's workbook would lead nowhere. */
    private final class WithFrame implements XEventListener {
        @Override
        public void disposing(EventObject event) {
            close();
        }
    }

    /** Closes it when its window is asked to. */
    private final class Closing implements XTopWindowListener {
        @Override
        public void windowClosing(EventObject event) {
            close();
        }

        @Override
        public void windowOpened(EventObject event) {
            // Nothing to do.
        }

        @Override
        public void windowClosed(EventObject event) {
            // Nothing to do.
        }

        @Override
        public void windowMinimized(EventObject event) {
            // Nothing to do.
        }

        @Override
        public void windowNormalized(EventObject event) {
            // Nothing to do.
        }

        @Override
        public void windowActivated(EventObject event) {
            // Nothing to do.
        }

        @Override
        public void windowDeactivated(EventObject event) {
            // Nothing to do.
        }

        @Override
        public void disposing(EventObject event) {
            // It goes with the list.
        }
    }
}
