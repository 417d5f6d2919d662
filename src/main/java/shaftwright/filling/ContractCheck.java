package shaftwright.filling;

import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.reading.InputReader;

/** Whether a workbook is one of ours, and of a contract that this version knows. */
public final class ContractCheck {
    private final List<Problem> problems;

    ContractCheck(List<Problem> problems) {
        this.problems = problems;
    }

    void names(Map<String, Area> names) {
        if (names.get(Contract.COMPARISON_NAME) != null) {
            problems.add(
                    Problem.error(
                            "the workbook",
                            "a comparison of several",
                            "a single sizing workbook, such as one that was compared in it"));
        } else if (names.get(Contract.VERSION_NAME) == null) {
            problems.add(
                    Problem.error(
                            "the workbook",
                            "no cell named " + Contract.VERSION_NAME,
                            "a sizing workbook; make one with the command new"));
        }
    }

    /** The workbook's version, {@link Contract#VERSION} at most; when there is none, it is said. */
    int version(Area area, Cells cells) {
        CellPlace place = area.place(0);
        CellValue value = cells.at(place).value();
        for (int version = 1; version <= Contract.VERSION; version++) {
            if (value instanceof CellValue.Numeric number && number.value() == version) {
                return version;
            }
        }
        boolean newer =
                value instanceof CellValue.Numeric number && number.value() > Contract.VERSION;
        problems.add(
                Problem.error(
                        place,
                        "contract version",
                        value instanceof CellValue.Blank ? "nothing" : InputReader.shown(value),
                        "version "
                                + Contract.VERSION
                                + (newer
                                        ? " or lower; the workbook was made by a newer program,"
                                                + " use that"
                                        : " or lower, as the workbook was made with; bring the"
                                                + " number back")));
        return Contract.VERSION;
    }
}
