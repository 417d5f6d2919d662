package shaftwright.build;

import java.util.stream.IntStream;

/**
 * How many of each part are carried besides those fitted.
 *
 * @param shafts of either side
 * @param innerJoints joints of the transaxle's end
 * @param outerJoints joints of the hub's end
 * @param innerBoots boot kits of the transaxle's end
 * @param outerBoots boot kits of the hub's end
 */
public record Spares(int shafts, int innerJoints, int outerJoints, int innerBoots, int outerBoots) {
    public static final Spares NONE = new Spares(0, 0, 0, 0, 0);

    public Spares {
        if (IntStream.of(shafts, innerJoints, outerJoints, innerBoots, outerBoots)
                        .min()
                        .orElseThrow()
                < 0) {
            throw new IllegalArgumentException("counts of spares must not be negative");
        }
    }
}
