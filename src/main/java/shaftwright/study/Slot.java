package shaftwright.study;

import java.util.List;

/** A place in a {@link Sentence} for a number or a name. */
public interface Slot {
    SlotKind kind();

    /** What a {@link SlotKind#CHOICE} chooses from; empty for all others. */
    List<String> words();
}
