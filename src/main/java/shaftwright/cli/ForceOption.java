package shaftwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Whether a file that is there may be replaced. */
final class ForceOption {
    @Option(
            names = "--force",
            description = "Replace a file that is there; it is kept as NAME.backup.xlsx.")
    private boolean force;

    /**
     * Lets a file pass that is to be made.
     *
     * @throws UsageException if it is there already, and that it be replaced was not asked for
     */
    void refuseToReplace(Path target) {
        if (Files.exists(target) && !force) {
            throw new UsageException(
                    target.getFileName()
                            + ": exists already; --force replaces it and keeps a backup");
        }
    }
}
