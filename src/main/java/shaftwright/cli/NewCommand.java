package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.contract.Contract;
import shaftwright.jobs.Journal;
import shaftwright.jobs.NewJob;
import shaftwright.units.LengthUnit;

/** Makes a workbook: lays it out beside its place, fills it, and puts it there when all is well. */
@Command(
        name = "new",
        description = "Makes a new workbook.",
        footer = {
            "  shaftwright new shafts.xlsx",
            "  shaftwright new --unit mm --scenarios 4 shafts.xlsx",
            "  shaftwright new --demo forest-special.xlsx",
            "  shaftwright new --set vehicle_name=Two-seater --set height_left[1]=13-7/16 shafts.xlsx"
        })
final class NewCommand implements Callable<Integer> {
    private static final String DEMO = "/shaftwright/demo/forest-special.json";

    @Parameters(paramLabel = "FILE", description = "the workbook to be made")
    private Path file;

    @Option(
            names = "--unit",
            paramLabel = "inch|mm",
            description = "Unit of bare numbers and results. Default: inch.")
    private Optional<LengthUnit> unit;

    @Option(
            names = "--scenarios",
            paramLabel = "COUNT",
            converter = ScenarioCount.class,
            description = "Number of scenario columns, 1 to 24. Default: 8.")
    private int scenarios = Contract.USUAL_SCENARIOS;

    @Mixin private InputOptions typed;

    @Option(
            names = "--demo",
            description = "Fill in the demo vehicle. All its figures are invented.")
    private boolean demo;

    @Mixin private ForceOption force;

    private final Journal journal;

    NewCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() throws IOException {
        TypedInputs inputs = typed.start();
        if (demo) {
            demo().forEach(inputs::given);
        }
        typed.gather(inputs);
        LengthUnit chosen = unit(inputs);
        Map<String, List<String>> texts = inputs.forNew(chosen, scenarios);
        force.refuseToReplace(file);
        NewJob job = new NewJob(file, chosen, scenarios, texts, inputs.leftOut());
        return job.run(journal).isPresent() ? ExitCode.SUCCESS : ExitCode.PROBLEMS;
    }

    private Map<String, GivenInput> demo() {
        Map<String, GivenInput> inches = InputsFile.resource(DEMO);
        return unit.equals(Optional.of(LengthUnit.MILLIMETRE)) ? MetricDemo.of(inches) : inches;
    }

    /** Asked for by option, or by the inputs; both may not differ. */
    private LengthUnit unit(TypedInputs inputs) {
        String given = inputs.text("unit");
        if (given.isEmpty()) {
            return unit.orElse(LengthUnit.INCH);
        }
        LengthUnit meant = given.equals("mm") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        if (!given.equals("inch") && !given.equals("mm")) {
            inputs.refuse("unit: found \"" + given + "\"; expected inch or mm.");
        } else if (unit.isPresent() && unit.get() != meant) {
            inputs.refuse(
                    "unit: the inputs are in "
                            + given
                            + ", but --unit "
                            + (given.equals("mm") ? "inch" : "mm")
                            + " was asked for; leave one of them out.");
        }
        return meant;
    }

    /** Reads a number of scenario columns. */
    private static final class ScenarioCount implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String typed) {
            try {
                int count = Integer.parseInt(typed);
                if (count >= 1 && count <= Contract.MOST_SCENARIOS) {
                    return count;
                }
            } catch (NumberFormatException e) {
                // Said below, as of every number out of range.
            }
            throw TypedWords.refused(typed, "a whole number from 1 to " + Contract.MOST_SCENARIOS);
        }
    }
}
