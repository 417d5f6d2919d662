package shaftwright.jobs;

import java.nio.file.Path;
import shaftwright.xlsx.Backup;

/**
 * Puts the version of a workbook back that was there before the last save.
 *
 * @param file the workbook
 * @param backup what the save kept
 */
public record UndoJob(Path file, Backup backup) {
    /** Does it; the backup by which that is undone in turn. */
    public Backup run(Journal journal) {
        journal.step("Putting the previous file back");
        Backup undone = backup.putBack();
        journal.say(
                file
                        + ": is the previous file again; what it was until now is the backup, and"
                        + " undoing once more brings it back.");
        return undone;
    }
}
