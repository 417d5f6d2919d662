package shaftwright.joint;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * How a spline's teeth are shaped, beyond their count. What is empty is not known, and is held
 * against nothing.
 *
 * <p>Standard pressure angles are 30°, 37.5° and 45° (ISO 4156 and ANSI B92.1, from memory); older
 * and proprietary splines have others.
 *
 * @param standard that it is cut to, such as "ANSI"; empty when not known
 * @param module pitch diameter over tooth count, mm
 * @param pressureAngle rad
 * @param root shape of the tooth roots; empty when not known
 * @param fit what centres it; empty when not known
 */
public record SplineForm(
        String standard,
        OptionalDouble module,
        OptionalDouble pressureAngle,
        String root,
        String fit) {
    /** Nothing known. */
    public static final SplineForm UNKNOWN =
            new SplineForm("", OptionalDouble.empty(), OptionalDouble.empty(), "", "");

    /** Millimetres in an inch: a diametral pitch counts teeth per inch of pitch diameter. */
    private static final double INCH = 25.4;

    /**
     * Modules that differ by less than this part are one: above what rounding to three decimals
     * does, below what tells module 0.8 from a pitch of 32 per inch. Own choice.
     */
    public static final double SAME_MODULE = 0.002;

    /** Pressure angles nearer than this are one, rad: a tenth of a degree. Own choice. */
    public static final double SAME_ANGLE = Math.toRadians(0.1);

    /** What two splines may differ in, in the order in which it is looked at. */
    public enum Property {
        STANDARD("standard"),
        MODULE("module"),
        PRESSURE_ANGLE("pressure angle"),
        ROOT("root"),
        FIT("fit");

        private final String words;

        Property(String words) {
            this.words = words;
        }

        /** As builders say it. */
        public String words() {
            return words;
        }
    }

    public SplineForm {
        Objects.requireNonNull(standard);
        Objects.requireNonNull(root);
        Objects.requireNonNull(fit);
        module.ifPresent(size -> Require.positive("module", size));
        pressureAngle.ifPresent(angle -> Require.positive("pressure angle", angle));
    }

    /**
     * Module of a spline by its diametral pitch, mm: {@code 25.4 / P}.
     *
     * @param pitch teeth per inch of pitch diameter; of a pitch such as 24/48 the first number
     */
    public static double module(double pitch) {
        return INCH / Require.positive("diametral pitch", pitch);
    }

    /** Whether two modules count as one, mm. */
    public static boolean sameModule(double first, double second) {
        return Math.abs(first - second) <= SAME_MODULE * Math.max(first, second);
    }

    /** The first thing known of both that differs; empty when nothing does. */
    public Optional<Property> differenceTo(SplineForm that) {
        for (Property property : Property.values()) {
            if (knows(property) && that.knows(property) && differs(property, that)) {
                return Optional.of(property);
            }
        }
        return Optional.empty();
    }

    /** Whether anything beyond the count is known of both, so that it was compared. */
    public boolean comparesWith(SplineForm that) {
        for (Property property : Property.values()) {
            if (knows(property) && that.knows(property)) {
                return true;
            }
        }
        return false;
    }

    private boolean knows(Property property) {
        return switch (property) {
            case STANDARD -> !standard.isEmpty();
            case MODULE -> module.isPresent();
            case PRESSURE_ANGLE -> pressureAngle.isPresent();
            case ROOT -> !root.isEmpty();
            case FIT -> !fit.isEmpty();
        };
    }

    private boolean differs(Property property, SplineForm that) {
        return switch (property) {
            case STANDARD -> different(standard, that.standard);
            case MODULE -> !sameModule(module.getAsDouble(), that.module.getAsDouble());
            case PRESSURE_ANGLE ->
                    Math.abs(pressureAngle.getAsDouble() - that.pressureAngle.getAsDouble())
                            > SAME_ANGLE;
            case ROOT -> different(root, that.root);
            case FIT -> different(fit, that.fit);
        };
    }

    private static boolean different(String one, String other) {
        return !one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
    }
}
