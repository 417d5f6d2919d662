package shaftwright.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.GridLayout;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import javax.swing.UIManager;
import javax.swing.WindowConstants;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.PlainText;

/** The window itself: where things stand in it, and what it shows. */
final class MainWindow {
    static final String TITLE = "Shaftwright";

    private static final int GAP = 8;
    private static final int WIDTH = 980;
    private static final int HEIGHT = 680;
    private static final String START = "start";
    private static final String BOOK = "book";

    private final JFrame frame = new JFrame(TITLE);
    private final CardLayout cards = new CardLayout();
    private final JPanel centre = new JPanel(cards);
    private final JLabel file = new JLabel(" ");
    private final Banner banner = new Banner();
    private final JEditorPane results = new JEditorPane("text/html", "");
    private final JTextArea messages = new JTextArea();
    private final StatusBar status;
    private final Desk desk;

    private MainWindow() {
        desk = new Desk(this);
        status = new StatusBar(Actions.of("Stop", 'p', "Stops what is being done", desk::stop));
    }

    /** One that is not shown yet; on the event thread. */
    static MainWindow create() {
        MainWindow window = new MainWindow();
        window.layOut();
        return window;
    }

    void show() {
        frame.setVisible(true);
    }

    void close() {
        desk.close();
        frame.dispose();
    }

    JFrame frame() {
        return frame;
    }

    Desk desk() {
        return desk;
    }

    private void layOut() {
        Consumer<List<Path>> open = desk::open;
        FileDrop drop = new FileDrop(open);
        Action choose = Actions.of("Choose…", 'h', "Opens workbooks that you choose", desk::choose);
        Action make = Actions.of("New…", 'n', "Makes a new workbook", desk::make);
        DropArea area = new DropArea(List.of(Actions.button(choose), Actions.button(make)));
        centre.add(area, START);
        centre.add(book(), BOOK);
        JPanel root = new JPanel(new BorderLayout());
        root.add(column(), BorderLayout.WEST);
        root.add(centre, BorderLayout.CENTER);
        root.add(status, BorderLayout.SOUTH);
        root.setTransferHandler(drop);
        area.setTransferHandler(drop);
        for (JComponent each : List.of(results, messages)) {
            // Their own would take texts only, and keep files from the root's.
            each.setDropTarget(null);
        }
        keys(root, choose);
        frame.setContentPane(root);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowActivated(WindowEvent event) {
                        Appearance.follow();
                    }

                    @Override
                    public void windowClosing(WindowEvent event) {
                        close();
                    }
                });
        frame.setMinimumSize(onScreen(new Dimension(WIDTH / 2, HEIGHT / 2)));
        frame.setSize(onScreen(new Dimension(WIDTH, HEIGHT)));
        frame.setLocationByPlatform(true);
        enable();
    }

    /** A size in the display's scale, no larger than the display. */
    private static Dimension onScreen(Dimension size) {
        Dimension scaled = UIScale.scale(size);
        Rectangle screen =
                GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        return new Dimension(
                Math.min(scaled.width, screen.width), Math.min(scaled.height, screen.height));
    }

    private static void keys(JComponent root, Action choose) {
        int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                .put(KeyStroke.getKeyStroke('O', menu), "choose");
        root.getActionMap().put("choose", choose);
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                .put(KeyStroke.getKeyStroke('V', menu), "paste");
        root.getActionMap().put("paste", TransferHandler.getPasteAction());
    }

    /** Everything that can be done, one button below the other. */
    private JComponent column() {
        JPanel column = new JPanel(new GridLayout(0, 1, 0, UIScale.scale(GAP)));
        int gap = UIScale.scale(GAP);
        for (Action action : desk.actions()) {
            column.add(Actions.button(action));
        }
        JPanel top = new JPanel(new BorderLayout());
        top.setBorder(BorderFactory.createEmptyBorder(gap, gap, gap, gap));
        top.add(column, BorderLayout.NORTH);
        JScrollPane scroll =
                new JScrollPane(
                        top,
                        JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED,
                        JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        return scroll;
    }

    private JComponent book() {
        int gap = UIScale.scale(GAP);
        file.putClientProperty("FlatLaf.styleClass", "h2");
        file.putClientProperty("html.disable", true);
        file.setName("File");
        results.setName("Results");
        results.setEditable(false);
        results.putClientProperty(JEditorPane.HONOR_DISPLAY_PROPERTIES, true);
        results.setFont(UIManager.getFont("Label.font"));
        results.getAccessibleContext().setAccessibleName("Verdicts and findings");
        messages.setName("Messages");
        messages.setEditable(false);
        messages.setLineWrap(true);
        messages.setWrapStyleWord(true);
        messages.setFont(
                new Font(Font.MONOSPACED, Font.PLAIN, UIManager.getFont("Label.font").getSize()));
        messages.getAccessibleContext().setAccessibleName("Messages");
        JSplitPane split =
                new JSplitPane(
                        JSplitPane.VERTICAL_SPLIT,
                        new JScrollPane(results),
                        new JScrollPane(messages));
        split.setResizeWeight(0.7);
        JPanel head = new JPanel(new BorderLayout(gap, gap));
        head.setBorder(BorderFactory.createEmptyBorder(gap, gap, gap, gap));
        head.add(file, BorderLayout.NORTH);
        head.add(banner, BorderLayout.SOUTH);
        JPanel book = new JPanel(new BorderLayout());
        book.add(head, BorderLayout.NORTH);
        book.add(split, BorderLayout.CENTER);
        return book;
    }

    /** Greys out what can't be done just now. */
    void enable() {
        desk.enable();
    }

    void showFiles(List<Path> files) {
        if (files.size() == 1) {
            Path one = files.get(0);
            file.setText(PlainText.shown(one.getFileName().toString(), false));
            file.setToolTipText(PlainText.shown(one.toAbsolutePath().toString(), false));
        } else {
            file.setText(files.size() + " workbooks");
            file.setToolTipText(null);
        }
        frame.setTitle(file.getText() + " - " + TITLE);
        cards.show(centre, BOOK);
    }

    void showResults(List<BookVariants> books, List<BookVariants> before) {
        results.setText(ResultPage.of(books, before));
        results.setCaretPosition(0);
    }

    void clearMessages() {
        messages.setText("");
        cards.show(centre, BOOK);
    }

    void addMessage(String line) {
        messages.append(PlainText.shown(line, false) + "\n");
    }

    /** Whether nothing is being done. */
    boolean isIdle() {
        return desk.isIdle();
    }

    Banner banner() {
        return banner;
    }

    StatusBar status() {
        return status;
    }

    String messages() {
        return messages.getText();
    }
}
