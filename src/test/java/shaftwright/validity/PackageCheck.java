package shaftwright.validity;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Everything about a workbook file that no schema holds and that Excel would not take as it is. */
public final class PackageCheck {
    private PackageCheck() {}

    /** What is wrong in a file whose cells use no function that Excel 2010 lacks. */
    public static List<Finding> of(Path path) {
        return of(path, FormulaRules.OLDEST);
    }

    /**
     * What is wrong in a file.
     *
     * @param newest version of Excel whose functions cells may use
     */
    public static List<Finding> of(Path path, int newest) {
        List<Finding> findings = new ArrayList<>();
        PackageFile file = PackageFile.open(path);
        new PackageRules(file, findings::add).check();
        for (String workbook : file.related("", "officeDocument")) {
            check(file, workbook, newest, findings::add);
        }
        return findings;
    }

    private static void check(
            PackageFile file, String part, int newest, Consumer<Finding> findings) {
        WorkbookRules workbook = new WorkbookRules(file, part, findings);
        workbook.check();
        int strings = 0;
        for (String each : file.related(part, "sharedStrings")) {
            SharedStringsRules rules = new SharedStringsRules(file, each, findings);
            rules.check();
            strings = rules.count();
        }
        int formats = 1;
        int conditions = 0;
        for (String each : file.related(part, "styles")) {
            StyleRules rules = new StyleRules(file, each, findings);
            rules.check();
            formats = rules.cellFormats();
            conditions = rules.differentialFormats();
        }
        SheetRules.Surroundings around =
                new SheetRules.Surroundings(
                        workbook.formulas(), strings, formats, conditions, newest);
        for (Map.Entry<String, String> sheet : workbook.sheets().entrySet()) {
            if (file.parts().containsKey(sheet.getValue())) {
                new SheetRules(file, sheet.getValue(), around, findings).check();
            }
        }
        ChartRules charts = new ChartRules(file, workbook, findings);
        for (String each : file.parts().keySet()) {
            if (each.matches(".*charts/chart\\d*\\.xml")) {
                charts.check(each);
            }
        }
    }
}
