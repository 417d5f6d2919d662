package shaftwright.xlsx;

/**
 * Digital signatures of a package (ECMA-376 part 2, 13): found by what relationships and the list
 * of content types say, as their parts may have any name.
 */
final class Signatures {
    private static final String DIGITAL = "/digital-signature/";

    private Signatures() {}

    /** Whether the package is signed. */
    static boolean in(String title, ZipSnapshot zip) {
        for (Relationships.Link origin : Relationships.of(title, zip, "").links()) {
            if (origin.isA("origin") && origin.type().contains(DIGITAL)) {
                for (Relationships.Link link :
                        Relationships.of(title, zip, origin.target()).links()) {
                    if (link.isA("signature") && zip.find(link.target()) != null) {
                        return true;
                    }
                }
            }
        }
        ContentTypes types = ContentTypes.of(zip);
        for (ZipEntryRecord entry : zip.entries()) {
            if (types.says(entry.name(), ContentTypes.SIGNATURE)) {
                return true;
            }
        }
        return false;
    }
}
