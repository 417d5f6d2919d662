package shaftwright.strength;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * Charts of the stress concentration factor of a round shaft in torsion, {@code K_ts}, by nominal
 * shear on the smaller diameter. Each is a cubic {@code C1 + C2 x + C3 x² + C4 x³} in {@code x =
 * 2h/D}, whose coefficients are {@code a + b √(h/r) + c h/r}: {@code h} is the notch's depth,
 * {@code r} its radius, {@code D} the larger diameter. Pilkey, <i>Peterson's Stress Concentration
 * Factors</i>, charts of the U-shaped groove and of the shoulder fillet.
 */
public enum TorsionChart {
    /** A groove with a round bottom, all around the shaft. */
    GROOVE(
            List.of(
                    new Stretch(
                            2,
                            new Coefficient(0.966, 1.056, -0.022),
                            new Coefficient(-0.192, -4.037, 0.674),
                            new Coefficient(0.808, 5.321, -1.231),
                            new Coefficient(-0.567, -2.364, 0.566)),
                    new Stretch(
                            50,
                            new Coefficient(1.089, 0.924, 0.018),
                            new Coefficient(-1.504, -2.141, -0.047),
                            new Coefficient(2.486, 2.289, 0.091),
                            new Coefficient(-1.056, -1.104, -0.059)))),
    /** A step to a larger diameter with a fillet. */
    SHOULDER(
            List.of(
                    new Stretch(
                            4,
                            new Coefficient(0.905, 0.783, -0.075),
                            new Coefficient(-0.437, -1.969, 0.553),
                            new Coefficient(1.557, 1.073, -0.578),
                            new Coefficient(-1.061, 0.171, 0.086))));

    /**
     * Least depth over radius that the charts have; a blunter notch is taken to be as sharp as
     * that.
     */
    public static final double LEAST = 0.25;

    /** Decimals of depth over radius by which it is told where a chart goes on in its next part. */
    public static final int SETTLED = 9;

    /**
     * A coefficient of the cubic.
     *
     * @param constant {@code a}
     * @param root {@code b}, times the root of depth over radius
     * @param linear {@code c}, times depth over radius
     */
    public record Coefficient(double constant, double root, double linear) {
        double at(double sharpness) {
            return constant + root * Math.sqrt(sharpness) + linear * sharpness;
        }
    }

    /**
     * A part of a chart.
     *
     * @param most depth over radius up to which it holds
     */
    public record Stretch(
            double most,
            Coefficient first,
            Coefficient second,
            Coefficient third,
            Coefficient fourth) {
        double at(double sharpness, double depth) {
            return first.at(sharpness)
                    + depth
                            * (second.at(sharpness)
                                    + depth * (third.at(sharpness) + depth * fourth.at(sharpness)));
        }
    }

    private final List<Stretch> stretches;

    TorsionChart(List<Stretch> stretches) {
        this.stretches = stretches;
    }

    /** Its parts, by rising depth over radius. */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** Greatest depth over radius that it has. */
    public double most() {
        return stretches.get(stretches.size() - 1).most();
    }

    /**
     * A notch's depth over its radius, as the charts take it.
     *
     * @param depth mm ({@code h})
     * @param radius mm ({@code r})
     */
    public static double sharpness(double depth, double radius) {
        return Math.max(LEAST, depth / radius);
    }

    /**
     * The factor, 1 or more; empty for a notch sharper than the chart has.
     *
     * @param larger diameter beside the notch, mm ({@code D})
     * @param smaller diameter in it, mm ({@code D - 2h})
     * @param radius of its bottom or fillet, mm ({@code r})
     */
    public OptionalDouble factor(double larger, double smaller, double radius) {
        Require.positive("smaller diameter", smaller);
        Require.moreThan("larger diameter", larger, "the smaller one", smaller);
        Require.positive("radius of a notch", radius);
        double depth = (larger - smaller) / 2;
        double sharpness = sharpness(depth, radius);
        for (Stretch stretch : stretches) {
            if (Math.rint(sharpness * 1e9) / 1e9 <= stretch.most()) {
                return OptionalDouble.of(Math.max(1, stretch.at(sharpness, 2 * depth / larger)));
            }
        }
        return OptionalDouble.empty();
    }
}
