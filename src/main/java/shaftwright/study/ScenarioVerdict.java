package shaftwright.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shaftwright.units.LengthUnit;

/** The judgement on a scenario: both of its sides, the graver one first. */
public record ScenarioVerdict(Verdict left, Verdict right) {
    /** Said where nothing was found on either side, and they differ. */
    public static final Sentence<PairSlot> BOTH_FIT =
            Sentence.of(
                    PairSlot.class,
                    "Fits: left E {LEFT_END_TO_END}, right E {RIGHT_END_TO_END}; least"
                            + " {LEAST_SLACK_IN} before bottoming, {LEAST_SLACK_OUT} before"
                            + " pull-out.");

    private static final Sentence<PairSlot> BOTH_FIT_BUT =
            Sentence.of(
                    PairSlot.class,
                    "Fits with left E {LEFT_END_TO_END}, right E {RIGHT_END_TO_END}, but:");

    public static final String LEFT = ListedFinding.On.LEFT.words() + ": ";
    public static final String RIGHT = ListedFinding.On.RIGHT.words() + ": ";

    /** Where both sides' gravest finding is the same, with other figures. */
    public static final String ALIKE = ListedFinding.On.BOTH.words() + ", figures of the left: ";

    /** Follows the one sentence of the gravest finding, by how many there are besides. */
    public static final String ONE_MORE = " 1 more finding: see the sides' verdicts on Scenarios.";

    public static final String MORE = " more findings: see the sides' verdicts on Scenarios.";

    /** Whether the left side's gravest finding is at least as grave as the right side's. */
    public boolean leftLeads() {
        if (left.findings().isEmpty() || right.findings().isEmpty()) {
            return right.findings().isEmpty();
        }
        return left.findings().get(0).compareTo(right.findings().get(0)) <= 0;
    }

    /** The graver side's. */
    public Verdict graver() {
        return leftLeads() ? left : right;
    }

    public Severity severity() {
        return graver().severity();
    }

    /** The gravest finding of either side that keeps its shaft from fitting, or has no blank. */
    public Optional<Finding> obstacle() {
        return findings().stream().filter(Finding::isObstacle).findFirst();
    }

    /** Whether both sides' shafts fit and can be cut from blanks of the list. */
    public boolean holds() {
        return left.holds() && right.holds();
    }

    /** Findings of either side, each once. */
    public Set<Finding> findings() {
        Set<Finding> findings = EnumSet.noneOf(Finding.class);
        findings.addAll(left.findings());
        findings.addAll(right.findings());
        return findings;
    }

    /**
     * The gravest finding with the side that it stands on, and how many others there are; or both
     * lengths when nothing was found.
     */
    public String text(LengthUnit unit) {
        String ofLeft = left.leadingText(unit);
        String ofRight = right.leadingText(unit);
        String more = more();
        if (ofLeft.equals(ofRight)) {
            return ofLeft + more;
        }
        if (findings().isEmpty()) {
            return text(BOTH_FIT, unit);
        }
        if (left.leading().equals(right.leading())) {
            return ALIKE + ofLeft + more;
        }
        return (leftLeads() ? LEFT + ofLeft : RIGHT + ofRight) + more;
    }

    /** Findings of both sides, the gravest first, each side's own where they read differently. */
    public List<ListedFinding> listed(LengthUnit unit) {
        List<ListedFinding> listed = new ArrayList<>();
        for (Finding finding : findings()) {
            boolean onLeft = left.findings().contains(finding);
            boolean onRight = right.findings().contains(finding);
            String ofLeft = onLeft ? left.sentence(finding, unit) : "";
            String ofRight = onRight ? right.sentence(finding, unit) : "";
            if (ofLeft.equals(ofRight)) {
                listed.add(new ListedFinding(finding, ListedFinding.On.BOTH, ofLeft));
                continue;
            }
            if (onLeft) {
                listed.add(new ListedFinding(finding, ListedFinding.On.LEFT, ofLeft));
            }
            if (onRight) {
                listed.add(new ListedFinding(finding, ListedFinding.On.RIGHT, ofRight));
            }
        }
        return listed;
    }

    /** What stands above the list, or all there is to say when nothing was found. */
    public String heading(LengthUnit unit) {
        if (findings().isEmpty()) {
            return text(unit);
        }
        return left.card().and(right.card()).allows(CardPrint.LENGTHS)
                ? text(BOTH_FIT_BUT, unit)
                : severity().heading();
    }

    private String text(Sentence<PairSlot> sentence, LengthUnit unit) {
        return sentence.text(
                slot ->
                        slot.text(
                                left.side().shaft().orElseThrow(),
                                right.side().shaft().orElseThrow(),
                                unit));
    }

    private String more() {
        int others = findings().size() - 1;
        if (others < 1) {
            return "";
        }
        return others == 1 ? ONE_MORE : " " + others + MORE;
    }
}
