package shaftwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;

/** Gathers what {@code --inputs} and {@code --set} ask for, the latter last. */
final class Inputs {
    /** Leaves names of a file out that no input has. */
    static final String LENIENT = "--lenient";

    private Inputs() {}

    /** Adds both options' values to what is there. */
    static void gather(Request request, TypedInputs inputs) {
        String file = request.value("--inputs", "");
        if (!file.isEmpty()) {
            for (Map.Entry<String, GivenInput> given : InputsFile.read(path(file)).entrySet()) {
                inputs.given(given.getKey(), given.getValue());
            }
        }
        for (String assignment : request.values("--set")) {
            inputs.assignment(assignment);
        }
    }

    /**
     * A file named on the command line.
     *
     * @throws UsageException if that is no file name
     */
    static Path path(String file) {
        try {
            Path path = Path.of(file);
            if (path.getFileName() != null && !file.isEmpty()) {
                return path;
            }
        } catch (InvalidPathException e) {
            // Said below, as of every other text that is no file name.
        }
        throw new UsageException("\"" + file + "\" is no file name");
    }
}
