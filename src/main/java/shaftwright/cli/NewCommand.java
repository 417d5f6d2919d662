package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import shaftwright.contract.Contract;
import shaftwright.filling.Filling;
import shaftwright.template.Template;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Makes a workbook: lays it out beside its place, fills it, and puts it there when all is well. */
final class NewCommand {
    private static final String DEMO = "/shaftwright/demo/forest-special.json";

    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    NewCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() throws IOException {
        int scenarios = scenarios();
        TypedInputs inputs = TypedInputs.of(request);
        if (request.has("--demo")) {
            Map<String, GivenInput> demo = InputsFile.resource(DEMO);
            boolean metric = request.value("--unit", "inch").equals("mm");
            for (Map.Entry<String, GivenInput> given :
                    (metric ? MetricDemo.of(demo) : demo).entrySet()) {
                inputs.given(given.getKey(), given.getValue());
            }
        }
        Inputs.gather(request, inputs);
        LengthUnit unit = unit(inputs);
        Map<String, List<String>> typed = inputs.forNew(unit, scenarios);
        refuseToReplace();
        return make(unit, scenarios, inputs, typed);
    }

    private int scenarios() {
        String typed = request.value("--scenarios", String.valueOf(Contract.USUAL_SCENARIOS));
        try {
            int scenarios = Integer.parseInt(typed);
            if (scenarios >= 1 && scenarios <= Contract.MOST_SCENARIOS) {
                return scenarios;
            }
        } catch (NumberFormatException e) {
            // Said below, as of every number out of range.
        }
        throw new UsageException(
                "--scenarios: found \""
                        + typed
                        + "\"; expected a whole number from 1 to "
                        + Contract.MOST_SCENARIOS
                        + ".");
    }

    /** Asked for by option, or by the inputs; both may not differ. */
    private LengthUnit unit(TypedInputs inputs) {
        String option = request.value("--unit", "");
        String typed = inputs.text("unit");
        String unit = option.isEmpty() ? (typed.isEmpty() ? "inch" : typed) : option;
        if (!unit.equals("inch") && !unit.equals("mm")) {
            inputs.refuse("unit: found \"" + unit + "\"; expected inch or mm.");
        } else if (!typed.isEmpty() && !typed.equals(unit)) {
            inputs.refuse(
                    "unit: the inputs are in "
                            + typed
                            + ", but --unit "
                            + unit
                            + " was asked for; leave one of them out.");
        }
        return unit.equals("mm") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    }

    private void refuseToReplace() {
        if (Files.exists(request.file()) && !request.has("--force")) {
            throw new UsageException(
                    request.file().getFileName()
                            + ": exists already; --force replaces it and keeps a backup");
        }
    }

    private int make(
            LengthUnit unit, int scenarios, TypedInputs inputs, Map<String, List<String>> typed)
            throws IOException {
        OwnFormulas.quietLogging();
        progress.step("Laying out the workbook");
        Path laid = NewFile.beside(request.file());
        try {
            NewFile.layOut(
                    laid,
                    request.file(),
                    file -> {
                        Template.write(file, unit, scenarios, typed);
                        return file;
                    });
            progress.step("Computing it");
            XlsxBook book = XlsxBook.open(laid);
            Filling.Report report = Filling.fill(book);
            ProblemList problems = new ProblemList(request.file(), report.problems());
            if (report.hasErrors()) {
                problems.print(terminal.err());
                inputs.printLeftOut(terminal.err());
                terminal.err().println(request.file().getFileName() + ": not made.");
                return ExitCode.PROBLEMS;
            }
            SaveReport saved = book.save(request.file());
            new FillSummary(terminal.out(), report).print();
            problems.print(terminal.out());
            inputs.printLeftOut(terminal.out());
            terminal.out()
                    .print(request.file() + ": made, " + report.written() + " cells computed");
            FillSummary.previous(terminal.out(), saved.replaced());
            return ExitCode.SUCCESS;
        } finally {
            Files.deleteIfExists(laid);
        }
    }
}
