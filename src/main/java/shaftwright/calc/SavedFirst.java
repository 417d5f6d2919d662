package shaftwright.calc;

import java.util.List;

/** Asks to save the open document before a command that works on its file. */
final class SavedFirst {
    private SavedFirst() {}

    /**
     * Whether the file is what the document shows, or is now.
     *
     * @param command what works on the file
     * @param before what else is to be known before it goes on; asked in any case, unless empty
     */
    static boolean isSaved(Desk desk, DocumentFile file, String command, String before)
            throws com.sun.star.uno.Exception {
        String saving =
                file.isModified()
                        ? "The command "
                                + command
                                + " works on files, and "
                                + desk.title()
                                + " has changes that are not saved. They are saved first. "
                        : "";
        if (saving.isEmpty() && before.isEmpty()) {
            return true;
        }
        if (!desk.questions().agrees(before + saving + "Go on?", List.of())) {
            return false;
        }
        if (file.isModified()) {
            desk.journal().step("Saving " + desk.title());
            file.save();
        }
        return true;
    }
}
