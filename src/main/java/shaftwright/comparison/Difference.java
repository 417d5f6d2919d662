package shaftwright.comparison;

import shaftwright.live.Quantity;

/**
 * The cells that find out which inputs differ: for each input, in each column in use, whether it
 * differs from that of the first column in use; then a mark for the input, a running count, and the
 * list of those that differ. Each holds its formula, with places in braces, and its defined name.
 */
public enum Difference {
    /** Ordinal of the first column in use. */
    FIRST("comparison_first", "IFERROR(MATCH(1,{used},0),1)"),
    /** The first column's input. */
    BASE("comparison_base", "INDEX({values},1,{first})"),
    /** 1 where an input differs from that; see {@link #flag}. */
    FLAG("comparison_flag", ""),
    /** Beside each input. */
    MARK("comparison_mark", "IF(SUM({flags})>0,\"" + Difference.DIFFERS + "\",\"\")"),
    /** How many inputs down to this row differ. */
    COUNT("comparison_count", "{before}+IF(SUM({flags})>0,1,0)"),
    /** Ordinal of the row of the first, second … input that differs, 0 when there is none. */
    ROW("comparison_row", "IFERROR(MATCH({:ordinal},{counts},0),0)"),
    /** Label of an input that differs. */
    LISTED_LABEL("comparison_listed", "IF({row}=0,\"\",INDEX({labels},{row}))"),
    /** What it is in a column. */
    LISTED_VALUE(
            "comparison_listed_value",
            "IF({row}=0,\"\",IF(ISNUMBER(INDEX({column},{row})),"
                    + "ROUND(ROUND(INDEX({column},{row}),8),3),INDEX({column},{row})))"),
    /** One sentence on how many differ. */
    SUMMARY(
            "comparison_summary",
            "IF(MAX({counts})=0,\"No input differs.\",MAX({counts})&IF(MAX({counts})=1,\" input differs\","
                    + "\" inputs differ\")&IF(MAX({counts})>"
                    + Comparison.LISTED
                    + ",\"; the first "
                    + Comparison.LISTED
                    + " are listed, all are marked on the sheet All inputs.\",\".\"))");

    /** Beside an input that differs; readable without colour. */
    public static final String DIFFERS = "≠";

    private final String definedName;
    private final String formula;

    Difference(String definedName, String formula) {
        this.definedName = definedName;
        this.formula = formula;
    }

    public String definedName() {
        return definedName;
    }

    /** Its formula; a flag's depends on what it compares. */
    public String formula() {
        return formula;
    }

    /** Degrees closer than this come from the same reading of a level. */
    static final double SAME_ANGLE = 0.001;

    /** Formula of a flag for an input of this kind. */
    public static String flag(Quantity quantity) {
        String apart = "ABS({value}-{base})";
        String differs =
                switch (quantity) {
                    case SHOWN_LENGTH ->
                            "ROUND("
                                    + apart
                                    + "*"
                                    + Comparison.UNIT_MM
                                    + ",6)>IF(ISNUMBER("
                                    + Comparison.TOLERANCE
                                    + "),"
                                    + Comparison.TOLERANCE
                                    + ",0)";
                    case DEGREE -> "ROUND(" + apart + ",6)>" + SAME_ANGLE;
                    default -> "ROUND(" + apart + ",6)>0";
                };
        return "IF({inuse}=0,0,IF(AND(ISNUMBER({value}),ISNUMBER({base})),IF("
                + differs
                + ",1,0),IF(OR(ISNUMBER({value}),ISNUMBER({base})),1,"
                + "IF(EXACT(LOWER({value}),LOWER({base})),0,1))))";
    }
}
