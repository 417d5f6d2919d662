package shaftwright.workbook.xlsx;

import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Tells whether a sheet has any formula at all, inflating it through a small buffer. */
final class FormulaScan {
    private static final int BUFFER = 32 * 1024;

    private final byte[] buffer = new byte[BUFFER];
    private final byte[] name = new byte[64];
    private int nameLength = -1;
    private int prefixLength = -1;

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
        for (int i = 0; i < count; i++) {
            byte b = bytes[i];
            if (b == 0) {
                return true;
            }
            if (b == '<') {
                nameLength = 0;
            } else if (nameLength >= 0) {
                if (isNameEnd(b)) {
                    if (isFormula()) {
                        return true;
                    }
                    nameLength = -1;
                } else if (nameLength < name.length) {
                    name[nameLength++] = b;
                }
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
