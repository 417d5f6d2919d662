package shaftwright.calc;

import java.util.List;

/**
 * What a menu command has to say.
 *
 * @param isDone whether it did what was asked
 * @param text for the builder, a few sentences
 * @param found what it found, each with its cell
 * @param page lines that belong together; empty when there are none
 * @param face how those are shown
 */
record Answer(boolean isDone, String text, List<Found> found, List<String> page, Face face) {
    /** How lines are shown. */
    enum Face {
        /** With a gap between them. */
        SENTENCES,
        /** All signs of one width, so that columns stand below each other. */
        TABLE
    }

    /** Somebody chose Cancel, and needs not be told. */
    static final Answer CANCELLED = refused("Cancelled, nothing was changed.");

    Answer {
        found = List.copyOf(found);
        page = List.copyOf(page);
    }

    static Answer done(String text) {
        return new Answer(true, text, List.of(), List.of(), Face.SENTENCES);
    }

    static Answer refused(String text) {
        return new Answer(false, text, List.of(), List.of(), Face.SENTENCES);
    }

    Answer with(List<Found> things) {
        return new Answer(isDone, text, things, page, face);
    }

    Answer withPage(List<String> lines) {
        return new Answer(isDone, text, found, lines, Face.SENTENCES);
    }

    Answer withTable(List<String> lines) {
        return new Answer(isDone, text, found, lines, Face.TABLE);
    }

    /** The page as it is shown. */
    String shownPage() {
        return face == Face.TABLE ? String.join("\n", page) : spaced(page);
    }

    /** Sentences with a gap before each; what is indented belongs to the one above. */
    static String spaced(List<String> lines) {
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            text.append(text.length() == 0 ? "" : line.startsWith("  ") ? "\n" : "\n\n");
            text.append(line);
        }
        return text.toString();
    }

    /** All of it, as a script is told. */
    String all() {
        StringBuilder all = new StringBuilder(text);
        found.forEach(each -> all.append('\n').append(each.text()));
        page.forEach(line -> all.append('\n').append(line));
        return all.toString();
    }
}
