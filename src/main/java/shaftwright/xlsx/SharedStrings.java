package shaftwright.xlsx;

import java.util.Arrays;

/** The table of texts that sheets share. Only those asked for are decoded, one at a time. */
final class SharedStrings {
    private final String title;
    private final PartText part;

    /** Where each text's element stands; null until the first is asked for. */
    private int[] starts;

    private int count;
    private PartReader decoder;

    /** The table in this part; null where the workbook has none. */
    SharedStrings(String title, PartText part) {
        this.title = title;
        this.part = part;
    }

    /**
     * A text by its number, from 0.
     *
     * @throws UnreadableBookException if there is none
     */
    synchronized String get(int index) {
        if (starts == null) {
            starts = new int[256];
            if (part != null) {
                PartReader.walk(part, new Listing());
                decoder = PartReader.ofElements(part);
            }
        }
        if (index >= count) {
            throw new UnreadableBookException(
                    title,
                    "a cell with shared text " + index + " of " + count,
                    "a shared text that exists");
        }
        decoder.standOn(starts[index]);
        return XmlText.richText(decoder);
    }

    private final class Listing implements PartReader.Walk {
        @Override
        public void over(PartReader reader) {
            while (reader.nextChild()) {
                if (reader.name().equals("si")) {
                    if (count == starts.length) {
                        starts = Arrays.copyOf(starts, count * 2);
                    }
                    starts[count] = reader.start();
                    count++;
                }
                reader.skip();
            }
        }
    }
}
