package shaftwright.suspension;

import java.util.List;

/** What of a typed linkage may lie elsewhere than typed, so that tape readings disagree with it. */
public enum LinkageOffset {
    /** The output flange, outward. */
    FLANGE_OUT("output flange sideways", "flange out"),
    /** The output flange, upward. */
    FLANGE_UP("output flange height", "flange up"),
    /** The hub's datum, outward along the stub axis. */
    DATUM_OUT("hub datum offset", "datum out");

    /** In the order of the coefficients of an {@link OffsetEstimate}. */
    static final List<LinkageOffset> ALL = List.of(values());

    private final String word;
    private final String shortWord;

    LinkageOffset(String word, String shortWord) {
        this.word = word;
        this.shortWord = shortWord;
    }

    /** As a builder reads it. */
    public String word() {
        return word;
    }

    /** Likewise, with the sense that counts as positive. */
    public String shortWord() {
        return shortWord;
    }
}
