package shaftwright.travel;

import java.util.ArrayList;
import java.util.List;
import shaftwright.suspension.HubPath;

/**
 * Bump limit from the ground clearance that must be left: {@code g(t) = g_ride − t_wheel +
 * ΔR_tyre}.
 *
 * <p>The wheel's centre stands {@code arm} outboard of the outer datum along the stub axis, so it
 * rises by {@code t_wheel = t − arm (sin γ(t) − sin γ(0))}. The travel that uses the clearance up
 * is found by fixed-point steps: camber changes so little with height that each step gains more
 * than a digit, and the last one is within a thousandth of a millimetre.
 *
 * @param clearanceAtRide mm, with the tyre fitted then
 * @param radiusGain what the scenario's tyre adds to the radius, mm
 * @param wanted clearance to be left at full bump, mm
 * @param arm outer datum to wheel centre along the stub axis, mm, outward
 */
public record ClearanceRule(double clearanceAtRide, double radiusGain, double wanted, double arm) {
    /** Steps taken, the first without regard to camber. */
    public static final int STEPS = 6;

    /**
     * The travel after each step, mm; the last one is the limit. Not positive when none is left.
     */
    public List<Double> steps(HubPath path) {
        List<Double> travel = new ArrayList<>(STEPS);
        double level = clearanceAtRide + radiusGain - wanted;
        travel.add(level);
        while (travel.size() < STEPS) {
            double last = travel.get(travel.size() - 1);
            travel.add(level + arm * (sinCamber(path, last) - sinCamber(path, 0)));
        }
        return travel;
    }

    /** Travel that leaves what is wanted, mm; not positive when none is left. */
    public double limit(HubPath path) {
        return steps(path).get(STEPS - 1);
    }

    /** Ground clearance at a travel, mm. */
    public double clearance(HubPath path, double travel) {
        double rise = travel - arm * (sinCamber(path, travel) - sinCamber(path, 0));
        return clearanceAtRide + radiusGain - rise;
    }

    private static double sinCamber(HubPath path, double travel) {
        return Math.sin(path.camber().at(path.normalised(travel)));
    }
}
