package shaftwright.cli;

import java.io.PrintStream;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.functions.Measure;
import shaftwright.functions.Parameter;
import shaftwright.functions.Topic;

/** Lists the cell functions, or tells all about one. */
@Command(
        name = "functions",
        description = "Lists the cell functions of the pack, or tells all about one.",
        footer = {"  shaftwright functions", "  shaftwright functions reach"})
final class FunctionsCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "NAME", description = "a function, such as REACH")
    private Optional<CellFunction> function;

    private final PrintStream out;

    FunctionsCommand(Terminal terminal) {
        this.out = terminal.out();
    }

    @Override
    public Integer call() {
        function.ifPresentOrElse(this::tell, this::list);
        return ExitCode.SUCCESS;
    }

    private void list() {
        for (Topic topic : Topic.values()) {
            out.println(topic.title());
            for (CellFunction each : Catalogue.all()) {
                if (each.topic() == topic) {
                    out.println("  " + each.signature());
                    out.println("      " + each.meaning());
                }
            }
        }
    }

    private void tell(CellFunction told) {
        out.println(told.signature());
        out.println(told.meaning());
        out.println();
        for (Parameter parameter : told.parameters()) {
            out.println("  " + parameter.name() + ": " + parameter.description());
        }
        out.println();
        out.println("Gives: " + gives(told));
        out.println("Source: " + told.source());
        out.println(
                "Example: ="
                        + told.example().formula(told.name())
                        + " gives "
                        + told.exampleResult()
                        + " ("
                        + told.example().from()
                        + ")");
        if (told.expression().isPresent()) {
            out.println("Closed form: " + told.expression().get().guarded());
        }
        out.println(
                "Errors: #VALUE! for a text where a number belongs or blocks that do not go together; #NUM! for"
                        + " numbers that cannot be; #N/A when there is no answer.");
    }

    private static String gives(CellFunction told) {
        Measure measure = told.columns().get(0);
        String what = measure.unit().isEmpty() ? "a number" : measure.unit();
        return told.isBlock()
                ? "a block of cells, " + what + "; enter it as an array formula"
                : what + "; for columns of cells, as an array formula, one answer per row";
    }
}
