package shaftwright.xlsx;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a workbook's package is whole: what a spreadsheet program would refuse or repair when it
 * opens the file must not be carried on, and not take the place of a sound backup.
 */
final class PackageCheck {
    private static final String WHOLE = "a whole workbook; take a backup or an earlier copy";

    private final String title;
    private final ZipSnapshot zip;
    private final Relationships links;

    /**
     * @param links of the workbook part
     */
    PackageCheck(String title, ZipSnapshot zip, Relationships links) {
        this.title = title;
        this.zip = zip;
        this.links = links;
    }

    /**
     * Checks what every program needs to open the file: the list of content types, styles, the ends
     * of sheets, styles and shared texts, and the checksums of all parts.
     *
     * @param main name of the workbook part
     * @param sheets parts of the sheets with cells
     * @param walked names of those of them that were read to their end already
     * @throws UnreadableBookException naming the part that is missing or damaged
     */
    void refuseDamaged(String main, Collection<ZipEntryRecord> sheets, Set<String> walked) {
        ContentTypes types = ContentTypes.of(zip);
        if (zip.find(ContentTypes.PART) == null) {
            throw damaged("no part " + ContentTypes.PART);
        }
        refuseUntyped(types, main, ContentTypes.WORKBOOK);
        for (ZipEntryRecord sheet : sheets) {
            refuseUntyped(types, sheet.name(), ContentTypes.WORKSHEET);
            if (!walked.contains(sheet.name())) {
                refuseCutOff(sheet);
            }
        }
        beside("styles", types, ContentTypes.STYLES);
        beside("sharedStrings", types, ContentTypes.SHARED_STRINGS);
        if (links.first("styles") == null) {
            refuseFormatsWithoutStyles(sheets);
        }
        zip.verify(Optional.empty());
    }

    /** A part that the workbook may have, of which it has one at most. */
    private void beside(String kind, ContentTypes types, String type) {
        String part = links.first(kind);
        if (part != null) {
            ZipEntryRecord entry = zip.find(part);
            if (entry == null) {
                throw damaged("no part " + part);
            }
            refuseUntyped(types, part, type);
            refuseCutOff(entry);
        }
    }

    private void refuseUntyped(ContentTypes types, String part, String type) {
        if (!types.says(part, type)) {
            throw damaged("part " + part + " missing from the list " + ContentTypes.PART);
        }
    }

    private void refuseCutOff(ZipEntryRecord entry) {
        String missing = zip.ends(entry).missingEndTag();
        if (!missing.isEmpty()) {
            throw damaged(
                    "part " + entry.name() + " cut off, its last tag " + missing + " missing");
        }
    }

    /** Cells may do without styles only where none has a format. */
    private void refuseFormatsWithoutStyles(Collection<ZipEntryRecord> sheets) {
        for (ZipEntryRecord sheet : sheets) {
            if (zip.text(sheet).hasFormats()) {
                throw damaged("no styles part, though cells of part " + sheet.name() + " need it");
            }
        }
    }

    private UnreadableBookException damaged(String found) {
        return new UnreadableBookException(title, found, WHOLE);
    }
}
