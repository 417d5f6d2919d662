package shaftwright.workbook.xlsx;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/** The table of texts that sheets share; only the asked-for ones are kept. */
final class SharedStrings {
    private final String title;
    private final PartText part;
    private final Map<Integer, String> known = new HashMap<>();

    /** The table in this part; null where the workbook has none. */
    SharedStrings(String title, PartText part) {
        this.title = title;
        this.part = part;
    }

    /** Makes these texts known. */
    void need(BitSet wanted) {
        BitSet missing = new BitSet();
        for (int i = wanted.nextSetBit(0); i >= 0; i = wanted.nextSetBit(i + 1)) {
            if (!known.containsKey(i)) {
                missing.set(i);
            }
        }
        if (missing.isEmpty()) {
            return;
        }
        Picking picking = new Picking(missing);
        if (part != null) {
            PartReader.walk(part, picking);
        }
        if (missing.length() > picking.count) {
            throw new UnreadableBookException(
                    title,
                    "a cell with shared text " + (missing.length() - 1) + " of " + picking.count,
                    "a shared text that exists");
        }
    }

    /** Keeps the wanted texts and stops after the last of them. */
    private final class Picking implements PartReader.Walk {
        private final BitSet wanted;
        private int count;

        Picking(BitSet wanted) {
            this.wanted = wanted;
        }

        @Override
        public void over(PartReader reader) {
            while (count < wanted.length() && reader.nextChild()) {
                if (!reader.name().equals("si")) {
                    reader.skip();
                } else {
                    if (wanted.get(count)) {
                        known.put(count, XmlText.richText(reader));
                    } else {
                        reader.skip();
                    }
                    count++;
                }
            }
        }
    }

    String get(int index) {
        return known.get(index);
    }
}
