package shaftwright.build;

import shaftwright.shaft.TravelSteps;

/** Where the wheel stands while a finished shaft is measured, from the top down. */
public enum WheelPlace {
    BUMP("full bump", 0, TravelSteps.BUMP),
    RIDE("ride height", 1, TravelSteps.RIDE),
    DROOP("full droop", 2, TravelSteps.DROOP);

    private final String words;
    private final int row;
    private final int step;

    WheelPlace(String words, int row, int step) {
        this.words = words;
        this.row = row;
        this.step = step;
    }

    /** As builders say it. */
    public String words() {
        return words;
    }

    /** The place that is so many places below the topmost. */
    public static WheelPlace of(int row) {
        for (WheelPlace place : values()) {
            if (place.row == row) {
                return place;
            }
        }
        throw new IllegalArgumentException("no place of the wheel " + row);
    }

    /** How many places lie above it. */
    public int row() {
        return row;
    }

    /** Zero-based row of the position table. */
    public int step() {
        return step;
    }
}
