package shaftwright.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;

/** What is being done, and the button that stops it. */
final class StatusBar extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int GAP = 8;

    private final JLabel step = new JLabel(" ");
    private final JProgressBar progress = new JProgressBar();
    private final JButton stop;

    StatusBar(Action stopping) {
        super(new BorderLayout(UIScale.scale(GAP), 0));
        int gap = UIScale.scale(GAP);
        setBorder(BorderFactory.createEmptyBorder(gap / 2, gap, gap / 2, gap));
        stop = Actions.button(stopping);
        step.putClientProperty("html.disable", true);
        step.setName("Step");
        step.getAccessibleContext().setAccessibleName("What is being done");
        progress.setIndeterminate(true);
        progress.getAccessibleContext().setAccessibleName("Working");
        JPanel right = new JPanel(new BorderLayout(gap, 0));
        right.add(progress, BorderLayout.CENTER);
        right.add(stop, BorderLayout.EAST);
        add(step, BorderLayout.CENTER);
        add(right, BorderLayout.EAST);
        end();
    }

    void step(String doing) {
        step.setText(doing + " …");
        progress.setVisible(true);
        stop.setVisible(true);
    }

    void end() {
        step.setText(" ");
        progress.setVisible(false);
        stop.setVisible(false);
    }
}
