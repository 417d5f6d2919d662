package shaftwright.cli;

import java.util.List;

/**
 * What a JSON file gives for one input.
 *
 * @param texts its values, an empty text for {@code null}
 * @param single whether it was one value, not a list
 */
record GivenInput(List<String> texts, boolean single) {
    GivenInput {
        texts = List.copyOf(texts);
    }

    static GivenInput one(String text) {
        return new GivenInput(List.of(text), true);
    }

    static GivenInput list(List<String> texts) {
        return new GivenInput(texts, false);
    }
}
