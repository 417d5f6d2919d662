package shaftwright.live;

import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;

/** The curves over travel that together carry a hub and all that is fast to it. */
enum HubCurve {
    FORE_AFT("fore_aft", "fore-aft", "Fore-aft, mm"),
    REACH_SQUARED("reach_squared", "squared reach", "Squared reach, mm²"),
    CAMBER("camber", "camber", "Camber, rad"),
    TOE("toe", "toe", "Toe, rad"),
    PITCH("pitch", "pitch", "Pitch of the hub, front up, rad");

    /** Part of the names of lines that hold its coefficients. */
    final String word;

    final String inSentence;

    /** What a builder reads above its coefficients. */
    final String label;

    HubCurve(String word, String inSentence, String label) {
        this.word = word;
        this.inSentence = inSentence;
        this.label = label;
    }

    /** This one of a path and the pitch that belongs to it, which readings don't tell. */
    Polynomial of(HubPath path, Polynomial pitch) {
        return switch (this) {
            case FORE_AFT -> path.foreAft();
            case REACH_SQUARED -> path.reachSquared();
            case CAMBER -> path.camber();
            case TOE -> path.toe();
            case PITCH -> pitch;
        };
    }
}
