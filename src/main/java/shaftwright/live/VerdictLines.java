package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Arrays;
import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;
import shaftwright.study.Finding;
import shaftwright.study.PairSlot;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.Severity;
import shaftwright.study.Verdict;

/** Plunge used, and the verdict in words: a side's with all its findings, and a scenario's. */
final class VerdictLines {
    private static final Finding[] FINDINGS = Finding.values();
    private static final int UNUSED = Severity.values().length;

    private VerdictLines() {}

    static void declare(LiveLines lines) {
        ExtremeLines.declare(lines);
        FindingLines.declare(lines);
        LineSet<Sizing> all = LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        all.only(Known.RESULT, Lacking.NOT_AVAILABLE)
                .mm("plunge_used", "Plunge used")
                .is(
                        "MAX({centre_distance:all})-MIN({centre_distance:all})",
                        SideResult::plungeUsed);
        LineSet<Verdict> sides = all.revised(6).ofAny(Sizing::verdict);
        all.since(2)
                .revised(6)
                .ofAny(Sizing::verdict, Lacking.ZERO)
                .whole("first_finding", "Most severe finding (0 none)")
                .is(first(), side -> side.leading().map(Finding::number).orElse(0));
        all.revised(6)
                .ofAny(Sizing::verdict, CellValue.of(UNUSED))
                .whole("gravity", "Severity (0 fits, 4 no verdict)")
                .is(severity(), side -> side.severity().level());
        all.since(2)
                .revised(6)
                .ofAny(Sizing::verdict, CellValue.of(CardPrint.ALL.level()))
                .whole("card_prints", "What the card prints (0 nothing, 4 all)")
                .is(card(), side -> side.card().level());
        sides.since(2)
                .text("side_findings", "All findings")
                .inUnit(
                        "MID(" + joined("&", FINDINGS, VerdictLines::spaced) + ",2,32000)",
                        Verdict::sentences);
        Finding last = FINDINGS[FINDINGS.length - 1];
        sides.since(2)
                .with(
                        Pieces.of("first", FindingLines.name(FINDINGS[0]))
                                .and("last", FindingLines.name(last)))
                .text("leading_verdict", "Most severe finding's verdict")
                .inUnit(orFits("INDEX({<first>><last>},{first_finding})"), Verdict::leadingText);
        sides.text("side_verdict", "Verdict").inUnit(orFits("{side_findings}"), Verdict::text);
        LineSet<Sizing> scenarios = all.in(Section.SCENARIO_WORK, SCENARIO).revised(6);
        scenarios
                .since(2)
                .ofAny(VerdictLines::ofScenario, Lacking.ZERO)
                .whole("finding_count", "Findings on either side")
                .is(
                        joined("+", FINDINGS, VerdictLines::onEitherSide),
                        verdict -> verdict.findings().size());
        // The graver side's first sentence, or both lengths when both fit.
        scenarios
                .in(Section.SCENARIO_RESULTS, SCENARIO)
                .ofAny(VerdictLines::ofScenario)
                .text("verdict", "Verdict")
                .inUnit(together(), ScenarioVerdict::text);
    }

    /** Of the whole scenario. */
    static Optional<ScenarioVerdict> ofScenario(Sizing sizing, Index index) {
        return sizing.verdict(index.scenario());
    }

    private static String of(Finding finding, String formula) {
        return Pieces.of("find", FindingLines.name(finding)).in(formula);
    }

    private static String spaced(Finding finding) {
        return of(finding, "IF({<find>}=\"\",\"\",\" \"&{<find>})");
    }

    private static String onEitherSide(Finding finding) {
        return of(finding, "IF({<find>@left}&{<find>@right}=\"\",0,1)");
    }

    private static String first() {
        Cases cases = new Cases();
        for (Finding finding : FINDINGS) {
            cases.when(of(finding, "{<find>}<>\"\""), finding.number());
        }
        return cases.otherwise("0");
    }

    /** Steps over the order of findings, in which those of one severity may stand apart. */
    private static String severity() {
        Cases cases = new Cases().when("{used}=0", UNUSED).when("{first_finding}=0", 0);
        for (int at = 1; at < FINDINGS.length; at++) {
            Finding before = FINDINGS[at - 1];
            if (before.severity() != FINDINGS[at].severity()) {
                cases.when("{first_finding}<=" + before.number(), before.severity().level());
            }
        }
        return cases.otherwise("" + FINDINGS[FINDINGS.length - 1].severity().level());
    }

    private static String card() {
        Finding[] forbidding =
                Arrays.stream(FINDINGS)
                        .filter(finding -> finding.card() != CardPrint.ALL)
                        .toArray(Finding[]::new);
        Pieces all = Pieces.of("all", CardPrint.ALL.level());
        return all.in("MIN(<all>,") + joined(",", forbidding, each -> allowed(all, each)) + ")";
    }

    private static String allowed(Pieces all, Finding finding) {
        return all.and("this", finding.card().level())
                .in(of(finding, "IF({<find>}=\"\",<all>,<this>)"));
    }

    /** A severity before sentences, or that it fits. */
    private static String orFits(String sentences) {
        String leads = joined(",", 1, UNUSED - 1, level -> quoted(Severity.ofLevel(level).lead()));
        return Pieces.of("fits", Phrases.sentence(Verdict.FITS, FindingPlaces::place))
                .and("leads", leads)
                .and("sentences", sentences)
                .in(
                        """
                        IF({used}=0,"",IF({first_finding}=0,<fits>,CHOOSE({gravity},<leads>)
                        &LOWER(LEFT(<sentences>,1))&MID(<sentences>,2,32000)))
                        """);
    }

    private static String together() {
        return Pieces.of(
                        "both_fit",
                        Phrases.sentence(ScenarioVerdict.BOTH_FIT, VerdictLines::pairPlace))
                .and("none", FINDINGS.length + 1)
                .and("alike", quoted(ScenarioVerdict.ALIKE))
                .and("left", quoted(ScenarioVerdict.LEFT))
                .and("right", quoted(ScenarioVerdict.RIGHT))
                .and("one_more", quoted(ScenarioVerdict.ONE_MORE))
                .and("more", quoted(ScenarioVerdict.MORE))
                .in(
                        """
                        IF({used}=0,"",
                        IF({leading_verdict@left}={leading_verdict@right},{leading_verdict@left},
                        IF({finding_count}=0,<both_fit>,
                        IF({first_finding@left}={first_finding@right},<alike>&{leading_verdict@left},
                        IF(IF({first_finding@left}=0,<none>,{first_finding@left})
                        <=IF({first_finding@right}=0,<none>,{first_finding@right}),
                        <left>&{leading_verdict@left},<right>&{leading_verdict@right}))))
                        &IF({finding_count}<2,"",IF({finding_count}=2,<one_more>,
                        " "&({finding_count}-1)&<more>)))
                        """);
    }

    private static String pairPlace(PairSlot slot) {
        return switch (slot) {
            case LEFT_END_TO_END -> "{e_final@left}";
            case RIGHT_END_TO_END -> "{e_final@right}";
            case LEAST_SLACK_IN -> "MIN({worst_slack_in@left},{worst_slack_in@right})";
            case LEAST_SLACK_OUT -> "MIN({worst_slack_out@left},{worst_slack_out@right})";
        };
    }
}
