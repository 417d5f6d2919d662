package shaftwright.build;

import shaftwright.shaft.TravelSteps;

/** Where the wheel stands while a finished shaft is measured, from the top down. */
public enum WheelPlace {
    BUMP("full bump", TravelSteps.BUMP),
    RIDE("ride height", TravelSteps.RIDE),
    DROOP("full droop", TravelSteps.DROOP);

    private final String words;
    private final int step;

    WheelPlace(String words, int step) {
        this.words = words;
        this.step = step;
    }

    /** As builders say it. */
    public String words() {
        return words;
    }

    /** Zero-based row of the position table. */
    public int step() {
        return step;
    }
}
