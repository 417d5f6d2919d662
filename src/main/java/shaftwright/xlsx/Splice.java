package shaftwright.xlsx;

import java.util.Collections;
import java.util.List;

/** A stretch of a part's text, in byte offsets, and what comes in its place. */
record Splice(int from, int to, String text) implements Comparable<Splice> {
    /** Bytes compressed at a time. */
    private static final int PIECE = 32 * 1024;

    @Override
    public int compareTo(Splice other) {
        return Integer.compare(from, other.from);
    }

    /** The part with these changes, each byte outside them as it was; sorts the list. */
    static Deflated apply(PartText part, List<Splice> splices, int expectedSize) {
        // Stable, so several insertions at one place keep their order.
        Collections.sort(splices);
        Deflated out = new Deflated(expectedSize);
        byte[] source = part.bytes();
        byte[] piece = new byte[PIECE];
        int count = 0;
        int at = 0;
        for (int i = 0; i < splices.size(); i++) {
            Splice splice = splices.get(i);
            byte[] written = part.encoded(splice.text);
            int kept = splice.from - at;
            if (count + kept + written.length > piece.length) {
                part.emit(out, piece, 0, count);
                count = 0;
            }
            if (kept + written.length > piece.length) {
                part.emit(out, source, at, kept);
                part.emit(out, written, 0, written.length);
            } else {
                System.arraycopy(source, at, piece, count, kept);
                System.arraycopy(written, 0, piece, count + kept, written.length);
                count += kept + written.length;
            }
            at = splice.to;
        }
        part.emit(out, piece, 0, count);
        part.emit(out, source, at, source.length - at);
        return out.finish();
    }
}
