package shaftwright.live;

import java.util.Locale;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.SideOutcome;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;

/** An end of a shaft, as names and labels of live lines write it. */
enum ShaftEnd {
    INNER("in", "inner"),
    OUTER("out", "outer");

    /** At the end of names. */
    final String suffix;

    /** In labels and names of inputs. */
    final String word;

    ShaftEnd(String suffix, String word) {
        this.suffix = suffix;
        this.word = word;
    }

    ShaftEnd other() {
        return either(OUTER, INNER);
    }

    /** What belongs to this end of two things. */
    <T> T either(T inner, T outer) {
        return this == INNER ? inner : outer;
    }

    double either(double inner, double outer) {
        return this == INNER ? inner : outer;
    }

    /**
     * A name, formula or label of this end: {@code END} stands for the suffix of its names, {@code
     * OTHER} for that of the other end's, {@code WORD} for its word.
     */
    String in(String text) {
        return text.replace("END", suffix).replace("OTHER", other().suffix).replace("WORD", word);
    }

    /** A label that begins with this end's word: "Inner angle". */
    String heading(String rest) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) + rest;
    }

    MountedJoint joint(SideOutcome side) {
        return either(side.inner(), side.outer());
    }

    BlankEnd of(Blank blank) {
        return this == INNER ? blank.inner() : blank.outer();
    }

    EndCut cut(CutPlan plan) {
        return either(plan.inner(), plan.outer());
    }
}
