package shaftwright.shaft;

import shaftwright.units.Require;

/**
 * A shaft blank as sold.
 *
 * @param name as the builder calls it
 * @param length end to end, mm
 * @param diameter of the bar, mm; 0 when not given
 * @param inner the end meant for the transaxle
 * @param outer the end meant for the wheel
 * @param price in the builder's currency; 0 when not given
 * @param inStock whether it can be had
 */
public record Blank(
        String name,
        double length,
        double diameter,
        BlankEnd inner,
        BlankEnd outer,
        double price,
        boolean inStock) {
    public Blank {
        Require.named("blank name", name);
        Require.positive("length of a blank", length);
        Require.notNegative("diameter of a blank", diameter);
        Require.notNegative("price of a blank", price);
        groove(inner, length);
        groove(outer, length);
    }

    private static void groove(BlankEnd end, double length) {
        if (end.groove().isPresent()) {
            Require.noMoreThan(
                    "a groove of a blank", end.groove().getAsDouble(), "its length", length);
        }
    }
}
