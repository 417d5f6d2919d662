package shaftwright.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;

/** Makes what a button does, with its key and what is said of it. */
final class Actions {
    private Actions() {}

    /**
     * An action.
     *
     * @param name the button's words
     * @param mnemonic letter among them that presses it together with Alt
     * @param hint one sentence, also for screen readers
     */
    static Action of(String name, char mnemonic, String hint, Runnable what) {
        Action action =
                new AbstractAction(name) {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public void actionPerformed(ActionEvent event) {
                        what.run();
                    }
                };
        action.putValue(Action.MNEMONIC_KEY, (int) Character.toUpperCase(mnemonic));
        action.putValue(Action.SHORT_DESCRIPTION, hint);
        return action;
    }

    /** Its button, named so that tests and screen readers find it. */
    static JButton button(Action action) {
        JButton button = new JButton(action);
        button.setName(String.valueOf(action.getValue(Action.NAME)));
        button.getAccessibleContext()
                .setAccessibleDescription(
                        String.valueOf(action.getValue(Action.SHORT_DESCRIPTION)));
        return button;
    }
}
