package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import java.util.StringJoiner;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.study.CardPrint;
import shaftwright.study.Finding;
import shaftwright.study.PairSlot;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.Severity;
import shaftwright.study.Verdict;

/** Plunge used, and the verdict in words: a side's with all its findings, and a scenario's. */
enum VerdictLines implements LiveLine.Formula, LiveLine.Core {
    PLUNGE_USED("plunge_used", "Plunge used", MILLIMETRE),
    FIRST("first_finding", "Most severe finding (0 none)", WHOLE),
    GRAVITY("gravity", "Severity (0 fits, 4 no verdict)", WHOLE),
    CARD("card_prints", "What the card prints (0 nothing, 4 all)", WHOLE),
    ALL("side_findings", "All findings", TEXT),
    LEADING("leading_verdict", "Most severe finding's verdict", TEXT),
    SIDE_VERDICT("side_verdict", "Verdict", TEXT),
    COUNT("finding_count", "Findings on either side", WHOLE),
    /** The graver side's first sentence, or both lengths when both fit. */
    VERDICT("verdict", "Verdict", TEXT);

    private static final int UNUSED = Severity.values().length;

    private final String name;
    private final String label;
    private final Quantity quantity;

    VerdictLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        ExtremeLines.declare(lines);
        FindingLines.declare(lines);
        for (VerdictLines line : values()) {
            switch (line) {
                case COUNT -> line.declare(lines, Section.SCENARIO_WORK, SCENARIO);
                case VERDICT -> line.declare(lines, Section.SCENARIO_RESULTS, SCENARIO);
                default -> line.declare(lines, Section.SIDE_WORK, SCENARIO_SIDE);
            }
        }
    }

    private void declare(LiveLines lines, Section section, Grid grid) {
        lines.add(new LiveLine(name, section, grid, label, quantity, this, this));
    }

    @Override
    public int since() {
        return switch (this) {
            case FIRST, CARD, ALL, LEADING, COUNT -> 2;
            default -> 1;
        };
    }

    @Override
    public int revised() {
        return switch (this) {
            case PLUNGE_USED -> 1;
            case LEADING, SIDE_VERDICT, VERDICT -> 5;
            default -> 2;
        };
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case PLUNGE_USED ->
                    "IF({ready}=1,MAX({centre_distance:all})-MIN({centre_distance:all}),NA())";
            case FIRST -> first();
            case GRAVITY -> severity();
            case CARD -> card();
            case ALL -> all();
            case LEADING -> orFits("INDEX(" + range() + ",{first_finding})");
            case SIDE_VERDICT -> orFits("{side_findings}");
            case COUNT -> count();
            case VERDICT -> together();
        };
    }

    /** All findings' cells of a side of a scenario. */
    private static String range() {
        Finding[] all = Finding.values();
        return "{" + FindingLines.name(all[0]) + ">" + FindingLines.name(all[all.length - 1]) + "}";
    }

    private static String place(Finding finding) {
        return "{" + FindingLines.name(finding) + "}";
    }

    private static String first() {
        StringBuilder text = new StringBuilder();
        for (Finding finding : Finding.values()) {
            text.append("IF(").append(place(finding)).append("<>\"\",");
            text.append(finding.number()).append(',');
        }
        return text.append('0').append(")".repeat(Finding.values().length)).toString();
    }

    /** Steps over the order of findings, in which severities follow each other. */
    private static String severity() {
        StringBuilder text = new StringBuilder("IF({used}=0," + UNUSED);
        text.append(",IF({first_finding}=0,0,");
        int open = 2;
        for (Severity severity : Severity.values()) {
            int last = last(severity);
            if (severity == Severity.FITS_BUT) {
                text.append(severity.level());
            } else if (last > 0) {
                text.append("IF({first_finding}<=").append(last).append(',');
                text.append(severity.level()).append(',');
                open++;
            }
        }
        return text.append(")".repeat(open)).toString();
    }

    private static int last(Severity severity) {
        int last = 0;
        for (Finding finding : Finding.values()) {
            if (finding.severity() == severity) {
                last = finding.number();
            }
        }
        return last;
    }

    private static String card() {
        StringJoiner text = new StringJoiner(",", "MIN(", ")");
        text.add(String.valueOf(CardPrint.ALL.level()));
        for (Finding finding : Finding.values()) {
            if (finding.card() != CardPrint.ALL) {
                text.add(
                        "IF("
                                + place(finding)
                                + "=\"\","
                                + CardPrint.ALL.level()
                                + ","
                                + finding.card().level()
                                + ")");
            }
        }
        return text.toString();
    }

    private static String all() {
        StringJoiner text = new StringJoiner("&", "MID(", ",2,32000)");
        for (Finding finding : Finding.values()) {
            text.add("IF(" + place(finding) + "=\"\",\"\",\" \"&" + place(finding) + ")");
        }
        return text.toString();
    }

    /** A severity before sentences, or that it fits. */
    private static String orFits(String sentences) {
        StringBuilder lead = new StringBuilder("CHOOSE({gravity}");
        for (int level = 1; level < UNUSED; level++) {
            Severity severity = Severity.ofLevel(level);
            lead.append(',').append(Phrases.literal(severity.lead()));
        }
        lead.append(')');
        return "IF({used}=0,\"\",IF({first_finding}=0,"
                + Phrases.sentence(Verdict.FITS, FindingPlaces::place)
                + ","
                + lead
                + "&LOWER(LEFT("
                + sentences
                + ",1))&MID("
                + sentences
                + ",2,32000)))";
    }

    private static String count() {
        StringJoiner text = new StringJoiner("+");
        for (Finding finding : Finding.values()) {
            String name = FindingLines.name(finding);
            text.add("IF({" + name + "@left}&{" + name + "@right}=\"\",0,1)");
        }
        return text.toString();
    }

    private static String together() {
        String left = "{leading_verdict@left}";
        String right = "{leading_verdict@right}";
        return "IF({used}=0,\"\",IF("
                + left
                + "="
                + right
                + ","
                + left
                + ",IF({finding_count}=0,"
                + Phrases.sentence(ScenarioVerdict.BOTH_FIT, VerdictLines::pairPlace)
                + ",IF({first_finding@left}={first_finding@right},\""
                + ScenarioVerdict.ALIKE
                + "\"&"
                + left
                + ",IF("
                + order("left")
                + "<="
                + order("right")
                + ",\""
                + ScenarioVerdict.LEFT
                + "\"&"
                + left
                + ",\""
                + ScenarioVerdict.RIGHT
                + "\"&"
                + right
                + "))))&IF({finding_count}<2,\"\",IF({finding_count}=2,\""
                + ScenarioVerdict.ONE_MORE
                + "\",\" \"&({finding_count}-1)&\""
                + ScenarioVerdict.MORE
                + "\")))";
    }

    private static String order(String side) {
        String first = "{first_finding@" + side + "}";
        return "IF(" + first + "=0," + (Finding.values().length + 1) + "," + first + ")";
    }

    private static String pairPlace(PairSlot slot) {
        return switch (slot) {
            case LEFT_END_TO_END -> "{e_final@left}";
            case RIGHT_END_TO_END -> "{e_final@right}";
            case LEAST_SLACK_IN -> "MIN({worst_slack_in@left},{worst_slack_in@right})";
            case LEAST_SLACK_OUT -> "MIN({worst_slack_out@left},{worst_slack_out@right})";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (this == PLUNGE_USED) {
            return sizing.result(index)
                    .map(result -> CellValue.of(result.plungeUsed()))
                    .orElse(CellValue.NOT_AVAILABLE);
        }
        if (this == VERDICT) {
            return CellValue.of(together(sizing, index.scenario()));
        }
        if (this == COUNT) {
            return CellValue.of(
                    sizing.verdict(index.scenario()).map(v -> v.findings().size()).orElse(0));
        }
        Verdict verdict = sizing.verdict(index).orElse(null);
        return verdict == null ? unused() : core(verdict, sizing);
    }

    private CellValue unused() {
        return switch (this) {
            case FIRST -> CellValue.of(0);
            case GRAVITY -> CellValue.of(UNUSED);
            case CARD -> CellValue.of(CardPrint.ALL.level());
            default -> CellValue.of("");
        };
    }

    private CellValue core(Verdict verdict, Sizing sizing) {
        return switch (this) {
            case FIRST -> CellValue.of(verdict.leading().map(Finding::number).orElse(0));
            case GRAVITY -> CellValue.of(verdict.severity().level());
            case CARD -> CellValue.of(verdict.card().level());
            case ALL -> CellValue.of(verdict.sentences(sizing.unit()));
            case LEADING -> CellValue.of(verdict.leadingText(sizing.unit()));
            default -> CellValue.of(verdict.text(sizing.unit()));
        };
    }

    /** One side's verdict by the core, empty while its column is not in use. */
    static String words(Sizing sizing, Index index) {
        return sizing.verdict(index).map(verdict -> verdict.text(sizing.unit())).orElse("");
    }

    /** The scenario's verdict by the core, likewise. */
    static String together(Sizing sizing, int scenario) {
        return sizing.verdict(scenario).map(verdict -> verdict.text(sizing.unit())).orElse("");
    }
}
