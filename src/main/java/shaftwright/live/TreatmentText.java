package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import shaftwright.formula.Pieces;
import shaftwright.shaft.Treatment;

/** What a blank's heat treatment leaves for the shop, behind the blank's name. */
final class TreatmentText {
    private TreatmentText() {}

    /** With a bracket around it, as a formula; empty where it is not known. */
    static String formula(String typed) {
        return Pieces.of("typed", typed)
                .and("case", quoted(Treatment.CASE_HARDENED.typed()))
                .and("through", quoted(Treatment.THROUGH_HARDENED.typed()))
                .and("case_words", quoted(of(Treatment.CASE_HARDENED)))
                .and("through_words", quoted(of(Treatment.THROUGH_HARDENED)))
                .in(
                        """
                        IF(<typed>=<case>,<case_words>,IF(<typed>=<through>,<through_words>,""))
                        """);
    }

    static String of(Treatment treatment) {
        return treatment == Treatment.UNKNOWN ? "" : " (" + treatment.words() + ")";
    }
}
