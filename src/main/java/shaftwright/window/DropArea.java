package shaftwright.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.RenderingHints;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** The first thing to be seen: where a workbook goes, and what else one may begin with. */
final class DropArea extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int CORNER = 24;
    private static final int MARGIN = 20;
    private static final float DASH = 8;

    /** With the buttons that stand in it, the most usual first. */
    DropArea(List<JButton> buttons) {
        super(new GridBagLayout());
        getAccessibleContext().setAccessibleName("Drop a workbook here");
        GridBagConstraints place = new GridBagConstraints();
        place.gridx = 0;
        place.insets = new Insets(UIScale.scale(6), 0, UIScale.scale(6), 0);
        JLabel title = new JLabel("Drop a workbook here, or choose one");
        title.putClientProperty("FlatLaf.styleClass", "h1");
        add(title, place);
        add(
                new JLabel("Two or more: compare them, or take a variant from one into another"),
                place);
        place.ipadx = UIScale.scale(40);
        place.ipady = UIScale.scale(8);
        place.fill = GridBagConstraints.HORIZONTAL;
        buttons.forEach(button -> add(button, place));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(UIManager.getColor("Component.focusColor"));
        float dash = UIScale.scale(DASH);
        pen.setStroke(
                new BasicStroke(
                        UIScale.scale(2f),
                        BasicStroke.CAP_ROUND,
                        BasicStroke.JOIN_ROUND,
                        1,
                        new float[] {dash, dash},
                        0));
        int margin = UIScale.scale(MARGIN);
        Dimension size = getSize();
        pen.drawRoundRect(
                margin,
                margin,
                size.width - 2 * margin,
                size.height - 2 * margin,
                UIScale.scale(CORNER),
                UIScale.scale(CORNER));
        pen.dispose();
    }
}
