package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.Locale;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.study.Verdict;

/**
 * One finding's sentence on one side of each scenario, empty where it does not hold.
 *
 * @param finding which
 */
record FindingLines(Finding finding) implements LiveLine.Formula, LiveLine.Core {
    static void declare(LiveLines lines) {
        for (Finding finding : Finding.values()) {
            FindingLines line = new FindingLines(finding);
            lines.add(
                    new LiveLine(
                            name(finding),
                            Section.SIDE_WORK,
                            SCENARIO_SIDE,
                            "Finding: " + finding.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                            Quantity.TEXT,
                            line,
                            line));
        }
    }

    static String name(Finding finding) {
        return "find_" + finding.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public int since() {
        return 2;
    }

    @Override
    public int revised() {
        return switch (finding) {
            case NO_BLANK -> 5;
            case TOO_WEAK -> 4;
            case READINGS_CONTRADICT, THIN_LAND, GROOVES_MEET -> 3;
            default -> since();
        };
    }

    @Override
    public String at(Index index) {
        String sentence = Phrases.sentence(finding.sentence(), FindingPlaces::place);
        return "IF(" + FindingPlaces.holds(finding) + "," + sentence + ",\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Verdict verdict = sizing.verdict(index).orElse(null);
        return CellValue.of(
                verdict != null && verdict.findings().contains(finding)
                        ? verdict.sentence(finding, sizing.unit())
                        : "");
    }
}
