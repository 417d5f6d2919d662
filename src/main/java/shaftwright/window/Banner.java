package shaftwright.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** One sentence about the open workbook that needs the builder, and what to press for it. */
final class Banner extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int GAP = 8;

    private final JLabel words = new JLabel();
    private final JButton button = new JButton();

    Banner() {
        super(new BorderLayout(UIScale.scale(GAP), 0));
        int gap = UIScale.scale(GAP);
        setBorder(
                BorderFactory.createCompoundBorder(
                        BorderFactory.createLineBorder(
                                UIManager.getColor("Component.focusColor"), UIScale.scale(2)),
                        BorderFactory.createEmptyBorder(gap / 2, gap, gap / 2, gap)));
        words.putClientProperty("html.disable", true);
        words.setName("Notice");
        add(words, BorderLayout.CENTER);
        add(button, BorderLayout.EAST);
        setVisible(false);
    }

    /** Says something with a button. */
    void offer(String sentence, Action action) {
        button.setAction(action);
        button.setVisible(true);
        say(sentence);
    }

    /** Says something that nothing can be done about here. */
    void tell(String sentence) {
        button.setVisible(false);
        say(sentence);
    }

    private void say(String sentence) {
        words.setText(sentence);
        words.getAccessibleContext().setAccessibleName(sentence);
        setVisible(true);
        revalidate();
    }

    void clear() {
        setVisible(false);
    }

    String text() {
        return isVisible() ? words.getText() : "";
    }
}
