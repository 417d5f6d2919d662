package shaftwright.travel;

/** What ends the travel that a shaft allows, in the order in which it is named when several do. */
public enum TravelStop {
    /** The inward slack is used up. */
    BOTTOMS("shaft bottoms"),
    /** The outward slack is used up. */
    PULLS_OUT("joint pulls out"),
    /** The inward slack is used up but for its margin and the path's doubt. */
    MARGIN_INWARD("margin before bottoming"),
    /** The same of the outward slack. */
    MARGIN_OUTWARD("margin before pull-out"),
    /** A floating shaft could pull a joint past an outward stop that is not hard. */
    SOFT_STOP("soft outward stop"),
    /** The shaft or its end touches a cup's bore or lip. */
    TOUCHES_CUP("shaft touches a cup"),
    /** The inner joint is at its angle limit. */
    INNER_ANGLE("inner angle limit"),
    /** The outer joint is at its angle limit. */
    OUTER_ANGLE("outer angle limit"),
    /** A boot is stretched, pressed together or bent beyond what it takes. */
    BOOT_LIMIT("boot too short, too long or bent too far"),
    /** A damper is as short as it gets. */
    DAMPER_CLOSED("damper closed"),
    /** A damper is as long as it gets. */
    DAMPER_OPEN("damper fully open"),
    /** A strap is tight. */
    STRAP_TIGHT("strap tight"),
    /** A bump stop is squeezed flat. */
    BUMP_STOP_FLAT("bump stop fully compressed"),
    /** A boot touches a tube. */
    BOOT_TOUCHES("boot touches a tube"),
    /** Nothing binds up to the end of the readings. */
    HEIGHTS("end of measured heights"),
    /** Nothing binds up to the end of what the linkage was worked out for. */
    LINKAGE("as far as the linkage goes");

    private final String words;

    TravelStop(String words) {
        this.words = words;
    }

    /** As builders say it. */
    public String words() {
        return words;
    }

    /** Whether it is a damper, strap or bump stop. */
    public boolean isRestraint() {
        return switch (this) {
            case DAMPER_CLOSED, DAMPER_OPEN, STRAP_TIGHT, BUMP_STOP_FLAT -> true;
            default -> false;
        };
    }
}
