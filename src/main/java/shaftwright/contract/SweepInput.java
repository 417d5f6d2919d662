package shaftwright.contract;

import java.util.List;
import java.util.Optional;

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
        return ALL.stream().map(SweepInput::word).toList();
    }

    /** The one of these words, empty when there is none. */
    public static Optional<SweepInput> ofWord(String word) {
        return ALL.stream().filter(each -> each.word.equalsIgnoreCase(word)).findAny();
    }
}
