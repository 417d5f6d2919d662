package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.Locale;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;

/** Each finding's sentence on one side of each scenario, empty where it does not hold. */
final class FindingLines {
    private FindingLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        for (Finding finding : Finding.values()) {
            String word = finding.name().toLowerCase(Locale.ROOT);
            set.since(since(finding))
                    .revised(revised(finding))
                    .ofAny(Sizing::verdict)
                    .when(FindingPlaces.holds(finding))
                    .text(name(finding), "Finding: " + word.replace('_', ' '))
                    .inUnit(
                            Phrases.sentence(finding.sentence(), FindingPlaces::place),
                            (verdict, unit) ->
                                    verdict.findings().contains(finding)
                                            ? verdict.sentence(finding, unit)
                                            : "");
        }
    }

    static String name(Finding finding) {
        return "find_" + finding.name().toLowerCase(Locale.ROOT);
    }

    private static int since(Finding finding) {
        return switch (finding) {
            case STATES_OUT_OF_DATE,
                    MOCK_UP_CONTRADICTS,
                    BLANK_UNMATED,
                    INNER_FLANGE_UNMATED,
                    OUTER_FLANGE_UNMATED,
                    INNER_BOOT_STRAINED,
                    OUTER_BOOT_STRAINED,
                    TOO_TIRED,
                    CUTS_CASE,
                    INNER_RUNS_HOT,
                    OUTER_RUNS_HOT ->
                    6;
            default -> 2;
        };
    }

    private static int revised(Finding finding) {
        return switch (finding) {
            case MOCK_UP_CONTRADICTS, NO_BLANK, ANGLES_UNREAD -> 7;
            case NO_WINDOW,
                    INNER_ANGLE,
                    OUTER_ANGLE,
                    TOUCHES_CUP,
                    INNER_RUNS_STEEP,
                    OUTER_RUNS_STEEP ->
                    6;
            case TOO_WEAK -> 4;
            case READINGS_CONTRADICT, THIN_LAND, GROOVES_MEET -> 3;
            default -> since(finding);
        };
    }
}
