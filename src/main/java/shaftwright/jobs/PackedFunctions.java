package shaftwright.jobs;

import shaftwright.functions.CellFunction;
import shaftwright.functions.LambdaText;
import shaftwright.functions.WorkbookUnit;
import shaftwright.xlsx.NamedFormulas;
import shaftwright.xlsx.XlsxBook;

/** The functions that travel inside a workbook. */
public final class PackedFunctions {
    private PackedFunctions() {}

    /** What is put into a workbook. */
    public static NamedFormulas of(XlsxBook book) {
        return NamedFormulas.in(
                CellFunction.PREFIX,
                book.names().containsKey(WorkbookUnit.NAME)
                        ? LambdaText.allInWorkbooksUnit()
                        : LambdaText.all());
    }
}
