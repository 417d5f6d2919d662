package shaftwright.xlsx;

import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Tells whether a sheet has any formula at all, inflating it through a small buffer. */
final class FormulaScan {
    private static final int BUFFER = 32 * 1024;

    private final byte[] buffer = new byte[BUFFER];
    private final byte[] name = new byte[64];

    /** Of the tag that is being read; -1 outside. */
    private int nameLength = -1;

    private int prefixLength = -1;
    private boolean begun;

    private FormulaScan() {}

    /**
     * Whether the sheet's part holds an {@code <f>} element, in the prefix of its root. Parts in
     * encodings other than ASCII-like ones count as having one.
     */
    static boolean hasFormula(String title, ZipSnapshot zip, ZipEntryRecord entry) {
        if (entry.method() == 0) {
            byte[] stored = zip.inflate(entry);
            return new FormulaScan().found(stored, stored.length);
        }
        Inflater inflater = zip.inflater(entry);
        try {
            return new FormulaScan().run(inflater);
        } catch (DataFormatException e) {
            throw new UnreadableBookException(
                    title, "part " + entry.name() + " damaged", ZipSnapshot.A_WORKBOOK, e);
        } finally {
            inflater.end();
        }
    }

    private boolean run(Inflater inflater) throws DataFormatException {
        while (!inflater.finished()) {
            int count = inflater.inflate(buffer, 0, BUFFER);
            if (count == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                return true;
            }
            if (found(buffer, count)) {
                return true;
            }
        }
        return false;
    }

    private boolean found(byte[] bytes, int count) {
        if (!begun && isWide(bytes, count)) {
            return true;
        }
        begun = true;
        int i = 0;
        while (i < count) {
            if (nameLength < 0) {
                // Most bytes by far; nothing but locals, which the quick compiler keeps at hand.
                while (i < count && bytes[i] != '<') {
                    i++;
                }
                nameLength = i < count ? 0 : -1;
            } else if (bytes[i] == '<') {
                nameLength = 0;
            } else if (isNameEnd(bytes[i])) {
                if (isFormula()) {
                    return true;
                }
                nameLength = -1;
            } else if (nameLength < name.length) {
                name[nameLength++] = bytes[i];
            }
            i++;
        }
        return false;
    }

    /** Whether characters take two bytes: behind the mark, if any, one of "<" is 0 then. */
    private static boolean isWide(byte[] bytes, int count) {
        for (int i = 0; i < Math.min(count, 4); i++) {
            if (bytes[i] == 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNameEnd(byte b) {
        return b == ' ' || b == '>' || b == '/' || b == '\n' || b == '\r' || b == '\t';
    }

    /** The first element's prefix is the one that sheet elements have. */
    private boolean isFormula() {
        if (nameLength == 0 || name[0] == '?' || name[0] == '!') {
            return false;
        }
        if (prefixLength < 0) {
            prefixLength = 0;
            for (int i = 0; i < nameLength; i++) {
                if (name[i] == ':') {
                    prefixLength = i + 1;
                }
            }
            return false;
        }
        return nameLength == prefixLength + 1 && name[nameLength - 1] == 'f' && prefixMatches();
    }

    private boolean prefixMatches() {
        return prefixLength == 0 || name[prefixLength - 1] == ':';
    }
}
