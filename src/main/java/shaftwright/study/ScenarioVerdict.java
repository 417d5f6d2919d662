package shaftwright.study;

import java.util.EnumSet;
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

    public static final String LEFT = "Left: ";
    public static final String RIGHT = "Right: ";

    /** Follows the one sentence of the gravest finding, by how many there are besides. */
    public static final String ONE_MORE = " 1 more finding: see Scenarios.";

    public static final String MORE = " more findings: see Scenarios.";

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
            return BOTH_FIT.text(
                    slot ->
                            slot.text(
                                    left.side().shaft().orElseThrow(),
                                    right.side().shaft().orElseThrow(),
                                    unit));
        }
        return (leftLeads() ? LEFT + ofLeft : RIGHT + ofRight) + more;
    }

    private String more() {
        int others = findings().size() - 1;
        if (others < 1) {
            return "";
        }
        return others == 1 ? ONE_MORE : " " + others + MORE;
    }
}
