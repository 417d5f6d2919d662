package shaftwright.live;

import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;

/** The curves over travel that together carry a hub and all that is fast to it. */
enum HubCurve {
    FORE_AFT("fore_aft", "Fore-aft, mm"),
    REACH_SQUARED("reach_squared", "Squared reach, mm²"),
    CAMBER("camber", "Camber, rad"),
    TOE("toe", "Toe, rad"),
    PITCH("pitch", "Pitch of the hub, front up, rad");

    private final String word;
    private final String label;

    HubCurve(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /** Part of the names of lines that hold its coefficients. */
    String word() {
        return word;
    }

    /** What a builder reads above its coefficients. */
    String label() {
        return label;
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
