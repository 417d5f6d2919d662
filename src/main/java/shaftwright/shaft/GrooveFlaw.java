package shaftwright.shaft;

/** What is against a plan's ends, the least first; plans without any come before others. */
public enum GrooveFlaw {
    NONE(0),
    /** The stub asked for leaves too thin a land, outside a new groove or an old one cut to it. */
    THIN_LAND(1),
    /** An old groove nearer the end, or left outboard of the new one, leaves too thin a land. */
    THIN_LAND_AT_OLD_GROOVE(2),
    /** The new groove is cut into an old one. */
    MEETS_OLD_GROOVE(3),
    /** An end of a case-hardened blank is cut, which takes its hard skin away. */
    CUTS_CASE(4);

    private final int level;

    GrooveFlaw(int level) {
        this.level = level;
    }

    /** Place in this order, 0 for none; workbooks hold it as a number. */
    public int level() {
        return level;
    }

    static GrooveFlaw of(EndCut cut) {
        if (cut.meetsOldGroove()) {
            return MEETS_OLD_GROOVE;
        }
        if (cut.landHolds()) {
            return NONE;
        }
        boolean asAsked =
                cut.groove() == GrooveUse.NEW ? cut.outboardGroove().isEmpty() : cut.trim() > 0;
        return asAsked ? THIN_LAND : THIN_LAND_AT_OLD_GROOVE;
    }

    /** The graver of two. */
    GrooveFlaw or(GrooveFlaw that) {
        return compareTo(that) >= 0 ? this : that;
    }
}
