package shaftwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import shaftwright.book.NoSuchCellException;
import shaftwright.xlsx.BookNotWritableException;
import shaftwright.xlsx.UnreadableBookException;

/** One run: reads the command line, does what it says, and turns what went wrong into a message. */
final class Program {
    private static final String TRACE = "--trace";

    private Program() {}

    /** Runs a command line and returns its {@link ExitCode}. */
    static int run(String[] args, Terminal terminal) {
        try {
            Optional<Request> request = new CommandReader(terminal).read(args);
            return request.isEmpty() ? ExitCode.SUCCESS : run(request.get(), terminal);
        } catch (UsageException e) {
            // Its lines are all meant as such, unlike an end of line in a name of something.
            terminal.err().print("shaftwright: " + e.getMessage() + System.lineSeparator());
            return traced(terminal, e, ExitCode.USAGE, args);
        } catch (NoSuchCellException e) {
            return failed(terminal, e, ExitCode.USAGE, args);
        } catch (UnreadableBookException | UnreadableInputException e) {
            return failed(terminal, e, ExitCode.UNREADABLE, args);
        } catch (BookNotWritableException | IOException | UncheckedIOException e) {
            return failed(terminal, e, ExitCode.NOT_WRITTEN, args);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            terminal.err()
                    .println(
                            "shaftwright: unexpected fault: "
                                    + e
                                    + (traced(args) ? "" : "; run it with --trace and report it"));
            return traced(terminal, e, ExitCode.FAULT, args);
        }
    }

    private static int run(Request request, Terminal terminal) throws IOException {
        try (Progress progress = Progress.start(terminal)) {
            return switch (request.command()) {
                case NEW -> new NewCommand(request, terminal, progress).run();
                case FILL -> new FillCommand(request, terminal, progress).run();
                case CHECK -> new CheckCommand(request, terminal, progress).run();
                case SHOW -> new ShowCommand(request, terminal, progress).run();
                case LEVERS -> new LeversCommand(request, terminal, progress).run();
                case SWEEP -> new SweepCommand(request, terminal, progress).run();
                case TRADE_OFFS -> new TradeOffsCommand(request, terminal, progress).run();
                case FUNCTIONS -> new FunctionsCommand(request, terminal).run();
                case CLEAR_AUTHORS -> new ClearAuthorsCommand(request, terminal, progress).run();
                case PACK -> new PackCommand(request, terminal, progress).run();
                case TAKE -> new TakeCommand(request, terminal, progress).run();
                case RENEW -> new RenewCommand(request, terminal, progress).run();
                case COMPARE -> new CompareCommand(request, terminal, progress).run();
            };
        }
    }

    private static int failed(Terminal terminal, Throwable e, int code, String[] args) {
        terminal.err().println("shaftwright: " + e.getMessage());
        return traced(terminal, e, code, args);
    }

    private static int traced(Terminal terminal, Throwable e, int code, String[] args) {
        if (traced(args)) {
            e.printStackTrace(terminal.err());
        }
        return code;
    }

    private static boolean traced(String[] args) {
        return Arrays.asList(args).contains(TRACE);
    }
}
