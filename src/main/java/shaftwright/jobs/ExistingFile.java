package shaftwright.jobs;

import java.nio.file.Path;

/** Whether a file that is there may be replaced by one that is to be made. */
public interface ExistingFile {
    /** Lets a file pass that is to be made, or throws in the asker's own words. */
    void refuseToReplace(Path target);
}
