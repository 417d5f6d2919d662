package shaftwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What is to be typed into input cells. */
final class InputOptions {
    /** Leaves names of a file out that no input has. */
    static final String LENIENT = "--lenient";

    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description =
                    "Type a value into an input cell. NAME is the cell's defined name; NAME[3]"
                            + " is the third row of a table, NAME[B] scenario B. Nothing after ="
                            + " empties the cell. May be given several times.")
    private List<String> assignments = new ArrayList<>();

    @Option(
            names = "--inputs",
            paramLabel = "FILE",
            description =
                    "Type values from a JSON file: one object, name to text, number or list;"
                            + " a list is all that a table or scenario row has.")
    private Optional<Path> file;

    @Option(
            names = LENIENT,
            description =
                    "Leave out what --inputs has under names that no input has, such as those"
                            + " of a later version, and say so.")
    private boolean lenient;

    /** Whether anything is to be typed. */
    boolean given() {
        return file.isPresent() || !assignments.isEmpty();
    }

    /** Nothing typed yet; names of files that no input has are refused, unless told otherwise. */
    TypedInputs start() {
        return new TypedInputs(lenient);
    }

    /** Adds what the file has, then the single assignments. */
    void gather(TypedInputs inputs) {
        file.ifPresent(named -> InputsFile.read(named).forEach(inputs::given));
        assignments.forEach(inputs::assignment);
    }
}
