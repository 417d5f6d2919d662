package shaftwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program by itself; what it declares here holds for every command. */
@Command(
        name = "shaftwright",
        description = "Sizes half shafts in your own workbook, from tape measurements.",
        synopsisSubcommandLabel = "COMMAND",
        versionProvider = Version.class,
        scope = ScopeType.INHERIT,
        sortOptions = false,
        usageHelpWidth = 98,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            " "
                    + ExitCode.SUCCESS
                    + ":done; a scenario that does not fit is a result, not an error",
            " " + ExitCode.PROBLEMS + ":problems found in the workbook; nothing was written",
            " " + ExitCode.USAGE + ":the command line is wrong",
            " " + ExitCode.UNREADABLE + ":a file can't be read",
            " " + ExitCode.NOT_WRITTEN + ":a file could not be written; the original is unchanged",
            " " + ExitCode.FAULT + ":a fault of the program itself"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  shaftwright new --demo forest-special.xlsx",
            "  shaftwright fill shafts.xlsx",
            "  shaftwright show --scenario A shafts.xlsx",
            "  shaftwright levers shafts.xlsx",
            "  shaftwright compare mine.xlsx friend.xlsx --out both.xlsx"
        })
@SuppressWarnings("UnusedVariable") // The library itself acts on its options.
final class ShaftwrightCommand implements Callable<Integer> {
    /** What has the place where an unexpected fault arose shown. */
    static final String TRACE = "--trace";

    @Spec private CommandSpec spec;

    @Option(
            names = TRACE,
            scope = ScopeType.INHERIT,
            description = "Show where in the program an unexpected fault arose.")
    private boolean trace;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Show this help.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Show the program's version.")
    private boolean version;

    /** Without a command there is nothing to do but to tell which there are. */
    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return ExitCode.SUCCESS;
    }
}
