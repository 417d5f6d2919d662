package shaftwright.mockup;

/** What stops a race from sliding inboard along a stick. The pin stops it outboard only. */
public enum RaceStop {
    COLLAR("collar"),
    TAPE("tape"),
    SECOND_PIN("second pin"),
    /** The stick can't push the race into its cup, so that it says nothing of the inward limit. */
    NOTHING("nothing");

    private final String word;

    RaceStop(String word) {
        this.word = word;
    }

    /** As it is typed. */
    public String word() {
        return word;
    }
}
