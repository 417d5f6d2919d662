package shaftwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import shaftwright.build.Side;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;

/** What {@code show --json} prints of a workbook that was computed already. */
public final class ShownReport {
    private ShownReport() {}

    /** The JSON text, all sides and all scenarios that are used. */
    public static String json(String title, Filling.Report report) {
        List<ScenarioOutcome> used =
                report.sizing().orElseThrow().scenarios().stream()
                        .filter(ScenarioOutcome::used)
                        .toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new JsonReport(title, report, List.of(Side.values()), used).print(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }
}
