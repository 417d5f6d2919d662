package shaftwright.reading;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.shaft.ShaftEnd;

/** What a joint's row must hold before a length can be computed with it, in the order asked for. */
public enum JointSize {
    RACE_HALF_WIDTH("joint_race_half_width", "race half width"),
    DATUM_OFFSET("joint_datum_offset", "datum to joint centre"),
    CUP_BOTTOM("joint_cup_bottom", "centre to cup bottom"),
    ANGLE_LIMIT("joint_angle_max", "angle limit"),
    /** How far it plunges. */
    TRAVEL("joint_plunge", "straight plunge, or bench rows");

    /** Those that nothing can stand for. */
    static final Set<JointSize> TYPED = EnumSet.complementOf(EnumSet.of(TRAVEL));

    private final String column;
    private final String words;

    JointSize(String column, String words) {
        this.column = column;
        this.words = words;
    }

    /** Name of the input that it is typed into. */
    public String column() {
        return column;
    }

    /** What it is called inside a sentence. */
    public String words() {
        return words;
    }

    /** Begins what is said of a scenario's joint that lacks something. */
    public static String lacks(ShaftEnd end) {
        return "the " + end.word() + " joint lacks: ";
    }

    /**
     * The first that a joint lacks.
     *
     * @param row from 1
     */
    static Optional<JointSize> lacking(Sizing sizing, int row) {
        for (JointSize size : values()) {
            boolean there =
                    size == TRAVEL
                            ? sizing.limits().has(row)
                            : !Double.isNaN(sizing.parts().number(size.column, row - 1));
            if (!there) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }

    /**
     * What is said of a joint that lacks it: its words and its cell.
     *
     * @param row from 1
     */
    String said(InputValues inputs, int row) {
        return words() + " (" + inputs.address(column, new Index(Side.LEFT, 0, row - 1)) + ")";
    }

    /**
     * What a joint lacks first, with its cell; empty when it is complete.
     *
     * @param row from 1
     */
    public static String said(Sizing sizing, int row) {
        return lacking(sizing, row).map(size -> size.said(sizing.inputs(), row)).orElse("");
    }
}
