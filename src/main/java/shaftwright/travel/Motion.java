package shaftwright.travel;

import shaftwright.suspension.Vector;

/** How the points move that go along with a wheel. */
public interface Motion {
    /**
     * Where everything stands at a travel.
     *
     * @param travel of the outer datum, mm, positive in bump
     * @throws IllegalArgumentException if the wheel does not get there
     */
    Stance at(double travel);

    /** Where everything stands at one travel, in the frame of {@link CarriedPoint}. */
    interface Stance {
        /**
         * Where a point has gone to.
         *
         * @throws IllegalArgumentException if nothing is called as what it goes along with
         */
        Vector of(CarriedPoint point);

        /** The outer datum. */
        Vector datum();

        /** Stub axis, pointing outward, of length one. */
        Vector stubAxis();
    }
}
