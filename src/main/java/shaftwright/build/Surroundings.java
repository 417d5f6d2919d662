package shaftwright.build;

import java.util.ArrayList;
import java.util.List;
import shaftwright.travel.BootGap.Tube;
import shaftwright.travel.Restraint;

/**
 * What else than the shaft may end the travel of one wheel. Points are where they are at ride, with
 * the hub where it was measured: ahead of the inner datum, outward from the vehicle's centre plane,
 * above the inner datum, mm.
 *
 * @param restraints dampers, straps and bump stops, in the builder's order
 * @param tubes that a boot may touch, in the builder's order
 */
public record Surroundings(List<Restraint> restraints, List<Tube> tubes) {
    /** Nothing that is known of. */
    public static final Surroundings NONE = new Surroundings(List.of(), List.of());

    public Surroundings {
        restraints = List.copyOf(restraints);
        tubes = List.copyOf(tubes);
    }

    /** These and a damper, strap or bump stop more. */
    public Surroundings and(Restraint restraint) {
        List<Restraint> more = new ArrayList<>(restraints);
        more.add(restraint);
        return new Surroundings(more, tubes);
    }

    /** These and a tube more. */
    public Surroundings and(Tube tube) {
        List<Tube> more = new ArrayList<>(tubes);
        more.add(tube);
        return new Surroundings(restraints, more);
    }
}
