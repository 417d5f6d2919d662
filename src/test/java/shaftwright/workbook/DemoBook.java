package shaftwright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.demo.DemoInputs;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.template.Template;

/** The demo workbook, typed cells only: no live cell has a value yet. */
public final class DemoBook {
    private DemoBook() {}

    /** Typed cells of the demo by defined name, one entry a cell. */
    public static Map<String, List<String>> typed() {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        DemoInputs.values()
                .forEach(
                        (name, value) -> {
                            List<String> cells = new ArrayList<>();
                            if (value instanceof List<?> list) {
                                list.forEach(each -> cells.add(String.valueOf(each)));
                            } else {
                                cells.add(String.valueOf(value));
                            }
                            typed.put(name, cells);
                        });
        return typed;
    }

    /** Scenario columns that the demo uses. */
    public static int scenarios() {
        return typed().get("scenario_name").size();
    }

    /** Writes the demo in inches with as many scenario columns as it uses. */
    public static Path write(Path file) {
        return write(file, typed(), scenarios());
    }

    /** Writes a changed demo. */
    public static Path write(Path file, Map<String, List<String>> typed, int scenarios) {
        try {
            Template.write(file, LengthUnit.INCH, scenarios, typed);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
