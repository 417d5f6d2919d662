package shaftwright.study;

import java.util.List;
import shaftwright.shaft.ShaftEnd;

/** Where a change is made: at one end of both shafts, or at all four ends. */
public enum Ends {
    INNER(ShaftEnd.INNER),
    OUTER(ShaftEnd.OUTER),
    BOTH(ShaftEnd.INNER, ShaftEnd.OUTER);

    private final List<ShaftEnd> each;

    Ends(ShaftEnd... each) {
        this.each = List.of(each);
    }

    /** The ends of one shaft that it is made at. */
    public List<ShaftEnd> each() {
        return each;
    }

    boolean overlap(Ends other) {
        return this == BOTH || other == BOTH || this == other;
    }

    /** ", inner race", ", both races": of a word and its plural. */
    String at(String one, String several) {
        return this == BOTH ? ", both " + several : ", " + each.get(0).word() + " " + one;
    }
}
