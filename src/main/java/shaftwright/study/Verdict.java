package shaftwright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.units.LengthUnit;

/**
 * The judgement on one side of a scenario: all that was found, the gravest first.
 *
 * @param side what it was drawn from
 * @param findings in the order of their ranks, empty when the shaft fits and nothing is against it
 */
public record Verdict(SideFacts side, List<Finding> findings) {
    /** Said of a side on which nothing was found. */
    public static final Sentence<SideSlot> FITS =
            Sentence.of(
                    SideSlot.class,
                    "Fits: E {END_TO_END}, {SLACK_IN} left before bottoming at {SLACK_IN_AT},"
                            + " {SLACK_OUT} before pull-out at {SLACK_OUT_AT}.");

    public Verdict {
        findings = List.copyOf(findings);
    }

    /**
     * Judges a side.
     *
     * @throws IllegalArgumentException if it has no shaft although nothing is missing
     */
    public static Verdict of(SideFacts side) {
        if (side.shaft().isEmpty() && !side.path().silent()) {
            throw new IllegalArgumentException("a side without a shaft, and nothing is missing");
        }
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : Finding.values()) {
            if (finding.holds(side)) {
                findings.add(finding);
            }
        }
        return new Verdict(side, findings);
    }

    /**
     * Judges a side that can't be studied.
     *
     * @param missing what is lacking, such as "choose an inner joint"
     * @param path what is known of its hub path
     */
    public static Verdict lacking(String missing, Optional<PathStudy> path) {
        PathFacts facts = PathFacts.SOUND.lacking(missing);
        return of(
                SideFacts.of(path.map(known -> known.said(facts)).orElse(facts), Optional.empty()));
    }

    /** The gravest finding, empty when there is none. */
    public Optional<Finding> leading() {
        return findings.isEmpty() ? Optional.empty() : Optional.of(findings.get(0));
    }

    public Severity severity() {
        return findings.isEmpty() ? Severity.FITS : findings.get(0).severity();
    }

    /** What the shop card may print. */
    public CardPrint card() {
        CardPrint card = CardPrint.ALL;
        for (Finding finding : findings) {
            card = card.and(finding.card());
        }
        return card;
    }

    /** The gravest finding that keeps a shaft from fitting or from being cut from a blank. */
    public Optional<Finding> obstacle() {
        return findings.stream().filter(Finding::isObstacle).findFirst();
    }

    /** Whether a shaft fits and can be cut from a blank of the list. */
    public boolean holds() {
        return obstacle().isEmpty();
    }

    /** A finding in a sentence of its own. */
    public String sentence(Finding finding, LengthUnit unit) {
        return finding.sentence().text(slot -> slot.text(side, unit));
    }

    /** All of it in one text: severity, then every finding's sentence; or that it fits. */
    public String text(LengthUnit unit) {
        if (findings.isEmpty()) {
            return FITS.text(slot -> slot.text(side, unit));
        }
        return severity().led(sentences(unit));
    }

    /** Every finding's sentence, empty when there is none. */
    public String sentences(LengthUnit unit) {
        List<String> sentences = new ArrayList<>();
        for (Finding finding : findings) {
            sentences.add(sentence(finding, unit));
        }
        return String.join(" ", sentences);
    }

    /** The gravest finding alone, with its severity; or that it fits. */
    public String leadingText(LengthUnit unit) {
        return findings.isEmpty() ? text(unit) : severity().led(sentence(findings.get(0), unit));
    }

    /** What stands above a list of its findings, or all there is to say when there is none. */
    public String heading(LengthUnit unit) {
        if (findings.isEmpty()) {
            return text(unit);
        }
        String warning = card().warning();
        return (warning.isEmpty() ? "" : warning + " ") + severity().heading();
    }
}
