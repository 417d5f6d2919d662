package shaftwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where a changed workbook goes. */
final class OutOption {
    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to this file and leave the workbook alone.")
    private Optional<Path> out;

    /** Whether another file than the workbook was named. */
    boolean given() {
        return out.isPresent();
    }

    /** The file that was named, or the workbook itself. */
    Path target(Path workbook) {
        return out.orElse(workbook);
    }
}
