package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
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
            5,
            5,
            Finding.BUMP_ENDS_EARLY,
            Finding.DROOP_ENDS_EARLY,
            Finding.INNER_BOOT_TOUCHES,
            Finding.OUTER_BOOT_TOUCHES),
    MATING(
            6,
            6,
            Finding.BLANK_UNMATED,
            Finding.INNER_FLANGE_UNMATED,
            Finding.OUTER_FLANGE_UNMATED,
            Finding.INNER_BOOT_STRAINED,
            Finding.OUTER_BOOT_STRAINED),
    LEVERS(5, 5, Finding.NO_WINDOW),
    BLANKS(5, 6, Finding.THIN_LAND, Finding.GROOVES_MEET, Finding.CUTS_CASE, Finding.NO_BLANK),
    STRENGTH(
            5,
            6,
            Finding.INNER_BOLTS_TOO_TIGHT,
            Finding.OUTER_BOLTS_TOO_TIGHT,
            Finding.TOO_WEAK,
            Finding.TOO_TIRED,
            Finding.INNER_RUNS_HOT,
            Finding.OUTER_RUNS_HOT),
    MOCK_UP(6, 6, Finding.MOCK_UP_CONTRADICTS);

    private static final String SAID = "a verdict above points here";

    private final int since;

    /** Contract version that brought the last of the findings. */
    private final int revised;

    private final Set<Finding> findings;

    OptionalSheetLines(int since, int revised, Finding... findings) {
        this.since = since;
        this.revised = revised;
        this.findings = EnumSet.copyOf(List.of(findings));
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> columns = LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO);
        LineSet<Sizing> book = LineSet.in(lines, Section.START_MORE, Grid.BOOK);
        for (OptionalSheetLines sheet : values()) {
            String name = "on_" + sheet.name().toLowerCase(Locale.ROOT);
            columns.since(sheet.since)
                    .revised(sheet.revised)
                    .whole(name + "_rests", "Whether its verdict rests on that sheet")
                    .yes(sheet.rests(), (sizing, index) -> sheet.rests(sizing, index.scenario()));
            book.since(sheet.since)
                    .when("SUM({" + name + "_rests:each})>0")
                    .text(name, "Verdicts that rest on it")
                    .is(quoted(SAID), sheet::said);
        }
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
