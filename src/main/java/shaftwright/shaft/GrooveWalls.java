package shaftwright.shaft;

/**
 * Where a groove lies at one end of a shaft.
 *
 * @param outer its wall nearer the finished end, from that end, mm; below zero where a cut took it
 *     away and left the rest
 * @param inner its wall farther in, likewise
 */
public record GrooveWalls(double outer, double inner) {
    public double width() {
        return inner - outer;
    }

    /** Whether two grooves of one width run into each other. */
    boolean meets(GrooveWalls that) {
        return Rounding.sixth(Math.abs(outer - that.outer) - width()) < 0;
    }

    /** Whether it lies farther from the end. */
    boolean inboardOf(GrooveWalls that) {
        return outer > that.outer + GroovePlan.TOLERANCE;
    }
}
