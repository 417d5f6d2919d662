package shaftwright.cli;

import java.io.PrintStream;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.functions.Measure;
import shaftwright.functions.Parameter;
import shaftwright.functions.Topic;

/** Lists the cell functions, or tells all about one. */
final class FunctionsCommand {
    private final Request request;
    private final PrintStream out;

    FunctionsCommand(Request request, Terminal terminal) {
        this.request = request;
        this.out = terminal.out();
    }

    int run() {
        if (request.words().isEmpty()) {
            list();
        } else {
            String name = request.words().get(0);
            tell(
                    Catalogue.find(name)
                            .orElseThrow(
                                    () ->
                                            new UsageException(
                                                    "no function is called \""
                                                            + name
                                                            + "\"; the command functions lists"
                                                            + " all")));
        }
        return ExitCode.SUCCESS;
    }

    private void list() {
        for (Topic topic : Topic.values()) {
            out.println(topic.title());
            for (CellFunction function : Catalogue.all()) {
                if (function.topic() == topic) {
                    out.println("  " + function.signature());
                    out.println("      " + function.meaning());
                }
            }
        }
    }

    private void tell(CellFunction function) {
        out.println(function.signature());
        out.println(function.meaning());
        out.println();
        for (Parameter parameter : function.parameters()) {
            out.println("  " + parameter.name() + ": " + parameter.description());
        }
        out.println();
        out.println("Gives: " + gives(function));
        out.println("Source: " + function.source());
        out.println(
                "Example: ="
                        + function.example().formula(function.name())
                        + " gives "
                        + function.exampleResult()
                        + " ("
                        + function.example().from()
                        + ")");
        if (function.expression().isPresent()) {
            out.println("Closed form: " + function.expression().get().guarded());
        }
        out.println(
                "Errors: #VALUE! for a text where a number belongs or blocks that do not go together; #NUM! for"
                        + " numbers that cannot be; #N/A when there is no answer.");
    }

    private static String gives(CellFunction function) {
        Measure measure = function.columns().get(0);
        String what = measure.unit().isEmpty() ? "a number" : measure.unit();
        return function.isBlock()
                ? "a block of cells, " + what + "; enter it as an array formula"
                : what + "; for columns of cells, as an array formula, one answer a row";
    }
}
