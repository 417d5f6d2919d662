package shaftwright.validity;

/**
 * One breach of a rule.
 *
 * @param part of the package
 * @param place in it: a cell, a name, an element; "" for the part as a whole
 * @param what is wrong
 */
public record Finding(String part, String place, String what) {
    @Override
    public String toString() {
        return part + (place.isEmpty() ? "" : " " + place) + ": " + what;
    }
}
