package shaftwright.contract;

import java.util.ArrayList;
import java.util.List;

/** Inputs that the grid of variants may vary, by the words that a builder picks. */
public enum SweepInput {
    TYRE("tyre diameter", "tyre_measured"),
    HUBS("hubs outward", "hub_shift"),
    TRANSAXLE_UP("transaxle up", "transaxle_up"),
    TRANSAXLE_FORWARD("transaxle forward", "transaxle_forward"),
    BUMP("bump travel", "bump_limit"),
    CLEARANCE("clearance wanted", "clearance_wanted"),
    DROOP("droop travel", "droop_limit"),
    MARGIN_INWARD("inward margin", "margin_inward"),
    MARGIN_OUTWARD("outward margin", "margin_outward");

    private static final List<SweepInput> ALL = List.of(values());

    private final String word;
    private final String input;

    SweepInput(String word, String input) {
        this.word = word;
        this.input = input;
    }

    /** As the builder picks it. */
    public String word() {
        return word;
    }

    /** The scenario input that it stands for. */
    public Input input() {
        return Contract.input(input);
    }

    /** Its number among the words that a builder may pick, from 1. */
    public int number() {
        return ALL.indexOf(this) + 1;
    }

    static List<String> words() {
        List<String> words = new ArrayList<>();
        for (SweepInput each : values()) {
            words.add(each.word);
        }
        return List.copyOf(words);
    }

    /** The one of these words, null when there is none. */
    public static SweepInput ofWordOrNull(String word) {
        for (SweepInput each : values()) {
            if (each.word.equalsIgnoreCase(word)) {
                return each;
            }
        }
        return null;
    }
}
