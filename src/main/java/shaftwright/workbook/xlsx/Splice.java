package shaftwright.workbook.xlsx;

import java.util.Collections;
import java.util.List;

/** A stretch of a part's text and what comes in its place. */
record Splice(int from, int to, String text) implements Comparable<Splice> {
    @Override
    public int compareTo(Splice other) {
        return Integer.compare(from, other.from);
    }

    /** The part with these changes, each byte outside them as it was; sorts the list. */
    static Deflated apply(PartText part, List<Splice> splices, int expectedSize) {
        // Stable, so several insertions at one place keep their order.
        Collections.sort(splices);
        Deflated out = new Deflated(expectedSize);
        StringBuilder piece = new StringBuilder(PIECE + PIECE / 2);
        String text = part.text();
        int at = 0;
        out.add(part.mark());
        for (int i = 0; i < splices.size(); i++) {
            Splice splice = splices.get(i);
            piece.append(text, at, splice.from).append(splice.text);
            at = splice.to;
            if (piece.length() >= PIECE) {
                out.add(piece.toString(), part.charset());
                piece.setLength(0);
            }
        }
        out.add(piece.toString(), part.charset());
        out.add(text.substring(at), part.charset());
        return out.finish();
    }

    /** Characters encoded at a time. */
    private static final int PIECE = 16 * 1024;
}
