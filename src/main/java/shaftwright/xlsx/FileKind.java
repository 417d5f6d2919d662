package shaftwright.xlsx;

import java.nio.charset.StandardCharsets;

/** What a file is by its first bytes, for messages about files that are not .xlsx workbooks. */
final class FileKind {
    private static final int LOOK = 4096;

    private FileKind() {}

    /** Whether the bytes begin like a zip archive with at least one entry. */
    static boolean startsLikeZip(byte[] bytes) {
        return startsWith(bytes, 'P', 'K', 3, 4);
    }

    /** Plain words for content that is not a zip archive. */
    static String describe(byte[] bytes) {
        if (bytes.length == 0) {
            return "an empty file";
        }
        if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            return describeCompound(bytes);
        }
        if (startsWith(bytes, 'P', 'K', 5, 6)) {
            return "a zip archive with nothing in it";
        }
        if (startsWith(bytes, 0x1F, 0x8B)) {
            return "a gzip file (a workbook in a program's own format?)";
        }
        if (bytes[0] == 9 && bytes.length > 3 && bytes[1] <= 8 && bytes[1] % 2 == 0) {
            return "a workbook in an old .xls format";
        }
        return describeText(bytes);
    }

    private static String describeCompound(byte[] bytes) {
        if (contains(bytes, "EncryptedPackage") || contains(bytes, "EncryptionInfo")) {
            return "a workbook encrypted with a password";
        }
        return "a workbook in the old .xls format";
    }

    private static String describeText(byte[] bytes) {
        int end = Math.min(bytes.length, LOOK);
        for (int i = 0; i < end; i++) {
            int b = bytes[i] & 0xFF;
            if (b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != 0x1A) {
                return "a file of some other kind";
            }
        }
        String start = new String(bytes, 0, end, StandardCharsets.ISO_8859_1).trim();
        return start.startsWith("<")
                ? "an XML or HTML file under another name"
                : "a text file (CSV?) under another name";
    }

    /**
     * Directory entries of compound files (MS-CFB) carry their names in UTF-16, little end first.
     */
    private static boolean contains(byte[] bytes, String name) {
        byte[] wanted = name.getBytes(StandardCharsets.UTF_16LE);
        for (int at = 0; at + wanted.length <= bytes.length; at += 128) {
            int i = 0;
            while (i < wanted.length && bytes[at + i] == wanted[i]) {
                i++;
            }
            if (i == wanted.length) {
                return true;
            }
        }
        return false;
    }

    private static boolean startsWith(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }
}
