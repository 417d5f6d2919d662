package shaftwright.shaft;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.strength.Bar;
import shaftwright.strength.ShaftMaterial;
import shaftwright.units.Require;

/**
 * A shaft blank as sold.
 *
 * @param name as the builder calls it
 * @param length end to end, mm
 * @param diameter of the bar, mm, empty when it is not known
 * @param inner the end meant for the transaxle
 * @param outer the end meant for the wheel
 * @param price in the builder's currency, empty when it is not known
 * @param inStock whether it can be had
 * @param bore of a hollow one, mm; 0 when solid
 * @param material what it is made of
 * @param treatment what its heat treatment leaves for the shop
 */
public record Blank(
        String name,
        double length,
        OptionalDouble diameter,
        BlankEnd inner,
        BlankEnd outer,
        OptionalDouble price,
        boolean inStock,
        double bore,
        ShaftMaterial material,
        Treatment treatment) {
    public Blank {
        Require.named("blank name", name);
        Require.positive("length of a blank", length);
        price.ifPresent(amount -> Require.notNegative("price of a blank", amount));
        Require.notNegative("bore of a blank", bore);
        if (diameter.isPresent()) {
            Require.moreThan("diameter of a blank", diameter.getAsDouble(), "its bore", bore);
        }
        groove(inner, length);
        groove(outer, length);
    }

    /** A solid blank of this price, of which the material is not known. */
    public Blank(
            String name,
            double length,
            double diameter,
            BlankEnd inner,
            BlankEnd outer,
            double price,
            boolean inStock) {
        this(
                name,
                length,
                OptionalDouble.of(diameter),
                inner,
                outer,
                OptionalDouble.of(price),
                inStock,
                0,
                ShaftMaterial.UNKNOWN,
                Treatment.UNKNOWN);
    }

    private static void groove(BlankEnd end, double length) {
        if (end.groove().isPresent()) {
            Require.noMoreThan(
                    "a groove of a blank", end.groove().getAsDouble(), "its length", length);
        }
    }

    /** One of its ends. */
    public BlankEnd end(ShaftEnd end) {
        return end.either(inner, outer);
    }

    /** The step between its bar and an end's teeth; empty while the bar's diameter is not known. */
    public Optional<Shoulder> shoulder(ShaftEnd end) {
        return diameter.stream().mapToObj(bar -> Shoulder.of(bar, end(end).outside())).findAny();
    }

    /** The same of this material. */
    public Blank of(ShaftMaterial other) {
        return new Blank(
                name, length, diameter, inner, outer, price, inStock, bore, other, treatment);
    }

    /** The same after this heat treatment. */
    public Blank treated(Treatment other) {
        return new Blank(
                name, length, diameter, inner, outer, price, inStock, bore, material, other);
    }

    /** Whether it costs less than another: nobody knows that one without a price is cheap. */
    boolean cheaperThan(Blank that) {
        return price.orElse(Double.POSITIVE_INFINITY) < that.price.orElse(Double.POSITIVE_INFINITY);
    }

    /** The whole of it as a bar; empty while diameter or material are not known. */
    public Optional<Bar> bar() {
        return diameter.stream().boxed().findAny().flatMap(this::bar);
    }

    /**
     * A stretch of it as a bar; empty while its material is not known, or where the bore leaves
     * nothing.
     *
     * @param outside diameter there, mm
     */
    public Optional<Bar> bar(double outside) {
        return bore < outside
                ? material.bar().map(steel -> new Bar(outside, bore, steel))
                : Optional.empty();
    }
}
