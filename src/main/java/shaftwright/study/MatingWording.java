package shaftwright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.SplineClash;
import shaftwright.joint.SplineForm;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.MatingFacts.UnmatedFlange;
import shaftwright.units.LengthUnit;

/** What two parts differ in, in a builder's words. */
public final class MatingWording {
    /** Decimals of a module in mm: pitches are told apart in the third. */
    public static final int MODULE_DECIMALS = 3;

    /** Between a blank's figure and the joint's. */
    public static final String JOINTS = ", the joint's ";

    private MatingWording() {}

    /** "pressure angle 45.0°, the joint's 30.0°". */
    public static String clash(SplineClash clash) {
        return (clash.property().words() + " ")
                + said(clash.property(), clash.blank())
                + JOINTS
                + said(clash.property(), clash.joint());
    }

    private static String said(SplineForm.Property property, SplineForm form) {
        return switch (property) {
            case STANDARD -> form.standard();
            case MODULE -> module(form.module().orElseThrow());
            case PRESSURE_ANGLE -> Wording.angle(form.pressureAngle().orElseThrow());
            case ROOT -> form.root();
            case FIT -> form.fit();
        };
    }

    private static String module(double mm) {
        return Wording.rounded(mm, MODULE_DECIMALS);
    }

    /** Said where nothing that is known differs. */
    public static final String MATES = "mates, as far as known";

    /** Said of splines of which nothing else is known of both. */
    public static final String COUNT_ONLY = "only the count was compared";

    /** Said of splines of which not even the counts are known. */
    public static final String NOT_COMPARED = "not compared";

    /** Between a joint's measure and its flange's. */
    public static final String AGAINST = " against ";

    /** Before what differs, where a spacer is taken for the adapter. */
    public static final String ADAPTER = "adapter: ";

    /** Behind diameters of thread. */
    public static final String THREAD = " diameters of thread";

    /** Before the length by which bolts are too short. */
    public static final String LONGER = ": take bolts longer by ";

    /** How near two flanges' measures, and two splines', count as the same: own limits. */
    public static String sameWithin(LengthUnit unit) {
        List<String> limits = new ArrayList<>();
        for (BoltPattern.Part part : BoltPattern.Part.values()) {
            if (part.same() > 0) {
                limits.add(part.words() + " " + Wording.fineLength(part.same(), unit));
            }
        }
        limits.add("module " + Wording.rounded(100 * SplineForm.SAME_MODULE, 1) + " %");
        limits.add("pressure angle " + Wording.angle(SplineForm.SAME_ANGLE));
        return String.join(", ", limits) + " (own limits); all else only when equal";
    }

    /** How a joint goes on its flange; empty while nothing is known of both. */
    public static String flange(MountedJoint mounted, BoltPattern flange, LengthUnit unit) {
        String differs =
                UnmatedFlange.withoutAdapter(mounted, flange)
                        .map(found -> differs(found, unit))
                        .orElse("");
        if (differs.isEmpty()) {
            return mounted.joint().mating().bolts().comparesWith(flange) ? MATES : "";
        }
        return mounted.cupSpacer() > 0 ? ADAPTER + differs : differs;
    }

    private static String differs(UnmatedFlange found, LengthUnit unit) {
        return (found.part().words() + " ")
                + measure(found.part(), found.jointHas(), unit)
                + AGAINST
                + measure(found.part(), found.flangeHas(), unit);
    }

    /**
     * What thread a joint's bolts have behind the spacers; empty while that is not known, or where
     * an adapter has bolts of its own.
     */
    public static String thread(MountedJoint mounted, BoltPattern flange, LengthUnit unit) {
        OptionalDouble engaged = mounted.threadEngaged();
        if (engaged.isEmpty() || UnmatedFlange.withoutAdapter(mounted, flange).isPresent()) {
            return "";
        }
        double diameters = engaged.getAsDouble();
        double size = mounted.joint().mating().bolts().size().orElseThrow();
        String said = Wording.rounded(diameters, 2) + THREAD;
        return Math.rint(diameters * 1e6) < 1e6
                ? said + LONGER + Wording.excess((1 - diameters) * size, unit)
                : said;
    }

    /** How far a shaft's spline was held against a race's. */
    public static String spline(BlankEnd end, Joint joint) {
        if (end.form().comparesWith(joint.mating().spline())) {
            return MATES;
        }
        return end.splines() == 0 || joint.splines() == 0 ? NOT_COMPARED : COUNT_ONLY;
    }

    /** Before what is said of the inner end alone. */
    public static final String AT_INNER = "inner: ";

    /** The same of the outer end. */
    public static final String AT_OUTER = "outer: ";

    /** What of a shaft's splines was not compared; empty where all was, beyond the count. */
    public static String notCompared(SideResult shaft) {
        if (shaft.plan().isEmpty()) {
            return "";
        }
        Blank blank = shaft.plan().get().blank();
        String inner = spline(blank.inner(), shaft.setup().inner().joint());
        String outer = spline(blank.outer(), shaft.setup().outer().joint());
        if (inner.equals(outer)) {
            return inner.equals(MATES) ? "" : inner;
        }
        List<String> open = new ArrayList<>();
        if (!inner.equals(MATES)) {
            open.add(AT_INNER + inner);
        }
        if (!outer.equals(MATES)) {
            open.add(AT_OUTER + outer);
        }
        return String.join("; ", open);
    }

    /** A measure of a flange: a count, or a length as fine as it is told apart. */
    static String measure(BoltPattern.Part part, double value, LengthUnit unit) {
        return switch (part) {
            case CIRCLE -> Wording.length(value, unit);
            case COUNT -> Wording.rounded(value, 0);
            case SIZE, PILOT -> Wording.fineLength(value, unit);
        };
    }
}
