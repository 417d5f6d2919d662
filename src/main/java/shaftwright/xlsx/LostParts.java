package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * What every workbook of this tool has and a file has no more, since a program that does not keep
 * it saved the file. A single chart or rule that is gone may be the builder's own wish; all of them
 * hardly are.
 */
final class LostParts {
    /** The pictures have dozens; a program that can't read shapes may leave a stump. */
    private static final int SHAPES_OF_A_PICTURE = 10;

    private LostParts() {}

    /**
     * In a builder's words; empty when nothing is lost.
     *
     * @param types what the parts of the file are
     * @param sheets those that hold typed and live cells
     */
    static List<String> of(ZipSnapshot zip, ContentTypes types, Collection<SheetPart> sheets) {
        List<String> lost = new ArrayList<>();
        if (types.charts().isEmpty()) {
            lost.add("charts");
        }
        if (!hasPicture(zip, types)) {
            lost.add("pictures");
        }
        if (!has(sheets, "dataValidation")) {
            lost.add("drop-down lists");
        }
        if (!has(sheets, "conditionalFormatting")) {
            lost.add("highlights");
        }
        if (!has(sheets, "pageSetup")) {
            lost.add("page layouts");
        }
        return lost;
    }

    private static boolean hasPicture(ZipSnapshot zip, ContentTypes types) {
        for (String part : types.drawings()) {
            ZipEntryRecord entry = zip.find(part);
            if (entry != null && count(zip.text(entry), 0, "sp") >= SHAPES_OF_A_PICTURE) {
                return true;
            }
        }
        return false;
    }

    private static boolean has(Collection<SheetPart> sheets, String element) {
        for (SheetPart sheet : sheets) {
            int behindCells = Math.max(sheet.dataTagEnd(), sheet.dataClose());
            if (count(sheet.part(), behindCells, element) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Start tags of this name, whatever their prefix, from a place on. */
    private static int count(PartText text, int from, String element) {
        byte[] bytes = text.bytes();
        int count = 0;
        for (int at = from; at < bytes.length; at++) {
            if (bytes[at] == '<' && at + 1 < bytes.length && bytes[at + 1] != '/') {
                int end = at + 1;
                int name = end;
                while (end < bytes.length && bytes[end] > ' ' && bytes[end] != '>') {
                    name = bytes[end] == ':' ? end + 1 : name;
                    end++;
                }
                count += text.text(name, end).equals(element) ? 1 : 0;
                at = end - 1;
            }
        }
        return count;
    }
}
