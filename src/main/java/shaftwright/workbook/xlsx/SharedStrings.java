package shaftwright.workbook.xlsx;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamException;

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
        int count = part == null ? 0 : PartReader.walk(title, part, r -> pick(r, missing));
        if (missing.length() > count) {
            throw new UnreadableBookException(
                    title,
                    "a cell with shared text " + (missing.length() - 1) + " of " + count,
                    "a shared text that exists");
        }
    }

    private Integer pick(PartReader reader, BitSet wanted) throws XMLStreamException {
        int last = wanted.length() - 1;
        int index = 0;
        while (index <= last && reader.nextChild()) {
            if (!reader.name().equals("si")) {
                reader.skip();
            } else {
                if (wanted.get(index)) {
                    known.put(index, XmlText.richText(reader));
                } else {
                    reader.skip();
                }
                index++;
            }
        }
        return index;
    }

    String get(int index) {
        return known.get(index);
    }
}
