package shaftwright.travel;

import shaftwright.suspension.HubPath;

/**
 * How far the wheel could go from ride whatever the shaft: as far as the hub path is known, less
 * where dampers and straps stop it.
 *
 * @param down the end below ride, at a travel of 0 or less
 * @param up the end above ride, at a travel of 0 or more
 */
public record TravelEnds(End down, End up) {
    /**
     * One end.
     *
     * @param travel mm
     * @param stop what ends the travel there
     */
    public record End(double travel, TravelStop stop) {}

    public TravelEnds {
        if (!(down.travel <= 0 && up.travel >= 0)) {
            throw new IllegalArgumentException(
                    "ends must lie on either side of ride; have "
                            + down.travel
                            + " and "
                            + up.travel);
        }
    }

    /** As far as readings show the path. */
    public static TravelEnds ofReadings(HubPath path) {
        return of(path, TravelStop.HEIGHTS);
    }

    /** As far as a linkage was solved. */
    public static TravelEnds ofLinkage(HubPath path) {
        return of(path, TravelStop.LINKAGE);
    }

    private static TravelEnds of(HubPath path, TravelStop stop) {
        return new TravelEnds(new End(path.tMin(), stop), new End(path.tMax(), stop));
    }

    /** No travel: a stop is met at ride already. */
    static TravelEnds metAtRide(TravelStop stop) {
        return new TravelEnds(new End(0, stop), new End(0, stop));
    }

    /** Whether a stop is met at ride already: a path always has some travel. */
    public boolean metAtRide() {
        return low() == high();
    }

    /** Lowest travel, mm, 0 or less. */
    public double low() {
        return down.travel;
    }

    /** Highest travel, mm, 0 or more. */
    public double high() {
        return up.travel;
    }

    /** These, or those of something that stops the wheel where it does so before. */
    public TravelEnds stoppedBy(TravelEnds that) {
        boolean down = that.down.stop.isRestraint() && that.low() >= low();
        boolean up = that.up.stop.isRestraint() && that.high() <= high();
        return new TravelEnds(down ? that.down : this.down, up ? that.up : this.up);
    }

    /** These, or where a stop is met before, were it the only one. */
    public TravelEnds stoppedBy(TravelStop stop, StopAlone alone) {
        return new TravelEnds(
                -alone.down() > low() ? new End(-alone.down(), stop) : down,
                alone.up() < high() ? new End(alone.up(), stop) : up);
    }
}
