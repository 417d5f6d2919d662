package shaftwright.cli;

import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import shaftwright.jobs.Failure;
import shaftwright.jobs.JobRefusedException;
import shaftwright.jobs.Journal;

/** One run: has the command line read and carried out, and turns what went wrong into a message. */
final class Program {
    private Program() {}

    /** Runs a command line and returns its {@link ExitCode}. */
    static int run(String[] args, Terminal terminal) {
        List<String> words = Arrays.asList(args);
        try (Progress progress = Progress.start(terminal)) {
            CommandLine commands = commands(terminal, progress);
            commands.setParameterExceptionHandler((e, line) -> failed(terminal, e, words));
            commands.setExecutionExceptionHandler((e, command, line) -> failed(terminal, e, words));
            return commands.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            return failed(terminal, e, words);
        }
    }

    /** All commands, as they are declared in their classes. */
    static CommandLine commands(Terminal terminal, Progress progress) {
        Journal journal = new TerminalJournal(terminal, progress);
        CommandLine commands = new CommandLine(new ShaftwrightCommand());
        commands.addSubcommand(new NewCommand(journal));
        commands.addSubcommand(new FillCommand(journal));
        commands.addSubcommand(new CheckCommand(journal));
        commands.addSubcommand(new ShowCommand(terminal, journal));
        commands.addSubcommand(new LeversCommand(journal));
        commands.addSubcommand(new SweepCommand(terminal, journal));
        commands.addSubcommand(new TradeOffsCommand(terminal, journal));
        commands.addSubcommand(new TakeCommand(terminal, journal));
        commands.addSubcommand(new CompareCommand(journal));
        commands.addSubcommand(new RenewCommand(journal));
        commands.addSubcommand(new SheetsCommand(journal));
        commands.addSubcommand(new ClearAuthorsCommand(terminal, journal));
        commands.addSubcommand(new FunctionsCommand(terminal));
        commands.addSubcommand(new PackCommand(journal));
        commands.addSubcommand(new CompletionCommand(terminal));
        commands.addSubcommand(new ManualCommand(terminal));
        TypedWords.register(commands);
        commands.setExpandAtFiles(false);
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        commands.setOut(terminal.writer());
        return commands.setExitCodeExceptionMapper(ExitCode::of);
    }

    private static int failed(Terminal terminal, Throwable e, List<String> words) {
        int code = ExitCode.of(e);
        boolean traced = words.contains(ShaftwrightCommand.TRACE);
        if (e instanceof ParameterException unreadable) {
            misused(terminal, UsageMessage.of(unreadable, words));
        } else if (e instanceof UsageException || e instanceof JobRefusedException) {
            misused(terminal, e.getMessage());
        } else if (code == ExitCode.FAULT) {
            terminal.err()
                    .println(
                            "shaftwright: "
                                    + Failure.message(e)
                                    + (traced ? "" : "; run it with --trace and report it"));
        } else {
            terminal.err().println("shaftwright: " + e.getMessage());
        }
        if (traced) {
            e.printStackTrace(terminal.err());
        }
        return code;
    }

    /** Its lines are all meant as such, unlike an end of line in a name of something. */
    private static void misused(Terminal terminal, String message) {
        terminal.err().print("shaftwright: " + message + System.lineSeparator());
    }
}
