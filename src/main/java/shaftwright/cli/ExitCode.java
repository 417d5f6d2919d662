package shaftwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the process ends with, for scripts. */
final class ExitCode {
    static final int SUCCESS = 0;
    static final int PROBLEMS = 1;
    static final int USAGE = 2;
    static final int UNREADABLE = 3;
    static final int NOT_WRITTEN = 4;
    static final int FAULT = 5;

    private ExitCode() {}

    /** As the help lists them. */
    static Map<String, String> meanings() {
        Map<String, String> meanings = new LinkedHashMap<>();
        meanings.put(" " + SUCCESS, "done; a scenario that does not fit is a result, not an error");
        meanings.put(" " + PROBLEMS, "problems found in the workbook; nothing was written");
        meanings.put(" " + USAGE, "the command line is wrong");
        meanings.put(" " + UNREADABLE, "a file can't be read");
        meanings.put(" " + NOT_WRITTEN, "a file could not be written; the old one is whole");
        meanings.put(" " + FAULT, "a fault of the program itself");
        return meanings;
    }
}
