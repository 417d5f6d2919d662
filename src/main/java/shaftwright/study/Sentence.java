package shaftwright.study;

import java.util.ArrayList;
import java.util.List;

/**
 * A sentence with slots, declared once and rendered twice: as a text by the study, as a formula by
 * the workbook.
 *
 * @param parts fixed texts and slots in order
 * @param <S> what its slots are taken from
 */
public record Sentence<S extends Enum<S> & Slot>(List<Part<S>> parts) {
    /**
     * A fixed text or a slot.
     *
     * @param text the fixed text, empty for a slot
     * @param slots the slot, empty for a text
     */
    public record Part<S>(String text, List<S> slots) {
        public Part {
            slots = List.copyOf(slots);
        }
    }

    /** Writes what stands in a slot. */
    public interface Writer<S> {
        String write(S slot);
    }

    public Sentence {
        parts = List.copyOf(parts);
    }

    /**
     * A sentence with its slots by name in braces: {@code "short by {SHORTFALL}"}.
     *
     * @throws IllegalArgumentException if there is no such slot, or a brace has no partner
     */
    static <S extends Enum<S> & Slot> Sentence<S> of(Class<S> slots, String template) {
        List<Part<S>> parts = new ArrayList<>();
        int at = 0;
        for (int open = template.indexOf('{'); open >= 0; open = template.indexOf('{', at)) {
            int close = template.indexOf('}', open);
            if (close < 0) {
                throw new IllegalArgumentException("no closing brace in: " + template);
            }
            if (open > at) {
                parts.add(new Part<>(template.substring(at, open), List.of()));
            }
            S slot = Enum.valueOf(slots, template.substring(open + 1, close));
            parts.add(new Part<>("", List.of(slot)));
            at = close + 1;
        }
        if (at < template.length()) {
            parts.add(new Part<>(template.substring(at), List.of()));
        }
        return new Sentence<>(parts);
    }

    /** The sentence in full. */
    String text(Writer<S> writer) {
        StringBuilder text = new StringBuilder();
        for (Part<S> part : parts) {
            text.append(part.text());
            for (S slot : part.slots()) {
                text.append(writer.write(slot));
            }
        }
        return text.toString();
    }
}
