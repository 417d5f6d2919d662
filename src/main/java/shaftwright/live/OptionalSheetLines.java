package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.IntStream;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;

/**
 * Whether a verdict rests on a sheet that may be hidden, beside the first sheet's list of those:
 * whether a scenario has a finding that the sheet has more of.
 */
enum OptionalSheetLines {
    DAMPERS(
            "on_dampers",
            Finding.BUMP_ENDS_EARLY,
            Finding.DROOP_ENDS_EARLY,
            Finding.INNER_BOOT_TOUCHES,
            Finding.OUTER_BOOT_TOUCHES),
    MATING(
            "on_mating",
            Finding.BLANK_UNMATED,
            Finding.INNER_FLANGE_UNMATED,
            Finding.OUTER_FLANGE_UNMATED,
            Finding.INNER_BOOT_STRAINED,
            Finding.OUTER_BOOT_STRAINED),
    LEVERS("on_levers", Finding.NO_WINDOW),
    BLANKS(
            "on_blanks",
            Finding.THIN_LAND,
            Finding.GROOVES_MEET,
            Finding.CUTS_CASE,
            Finding.NO_BLANK),
    STRENGTH(
            "on_strength",
            Finding.INNER_BOLTS_TOO_TIGHT,
            Finding.OUTER_BOLTS_TOO_TIGHT,
            Finding.TOO_WEAK,
            Finding.TOO_TIRED,
            Finding.INNER_RUNS_HOT,
            Finding.OUTER_RUNS_HOT),
    MOCK_UP("on_mock_up", Finding.MOCK_UP_CONTRADICTS);

    private static final int SINCE = 5;

    /** Contract version that brought the sheets of mock-ups and of what must mate. */
    private static final int LATER_SHEETS = 6;

    private static final String SAID = "a verdict above points here";

    private final String name;
    private final Set<Finding> findings;

    OptionalSheetLines(String name, Finding... findings) {
        this.name = name;
        this.findings = EnumSet.copyOf(List.of(findings));
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> columns = LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO);
        LineSet<Sizing> book = LineSet.in(lines, Section.START_MORE, Grid.BOOK);
        for (OptionalSheetLines sheet : values()) {
            int since = sheet.since();
            columns.since(since)
                    .revised(sheet.revised())
                    .whole(sheet.name + "_rests", "Whether its verdict rests on that sheet")
                    .yes(sheet.rests(), (sizing, index) -> sheet.rests(sizing, index.scenario()));
            book.since(since)
                    .when("SUM({" + sheet.name + "_rests:each})>0")
                    .text(sheet.name, "Verdicts that rest on it")
                    .is(quoted(SAID), sheet::said);
        }
    }

    private int since() {
        return this == MOCK_UP || this == MATING ? LATER_SHEETS : SINCE;
    }

    private int revised() {
        return this == DAMPERS || this == LEVERS ? SINCE : 6;
    }

    private String rests() {
        StringJoiner found = new StringJoiner("&", "IF(", "=\"\",0,1)");
        for (Finding finding : findings) {
            for (Side side : Side.values()) {
                found.add("{" + FindingLines.name(finding) + "@" + side.word() + "}");
            }
        }
        return found.toString();
    }

    private boolean rests(Sizing sizing, int scenario) {
        return sizing.verdict(scenario).stream()
                .flatMap(verdict -> verdict.findings().stream())
                .anyMatch(findings::contains);
    }

    private String said(Sizing sizing) {
        boolean any =
                IntStream.range(0, sizing.scenarios().size())
                        .anyMatch(scenario -> rests(sizing, scenario));
        return any ? SAID : "";
    }
}
