package shaftwright.study;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.build.Build;
import shaftwright.build.Corner;
import shaftwright.build.LinkageAtRide;
import shaftwright.build.Margins;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Stock;
import shaftwright.build.Vehicle;
import shaftwright.build.WheelTravel;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.RingSpec;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.TapeSettings;
import shaftwright.suspension.Vector;

/**
 * An invented vehicle on trailing arms whose pivots lie square across: each hub goes round a circle
 * in its own plane, {@code x = L − √(L² − t²)}, so that its place is known without solving.
 */
final class LinkageBuild {
    /** Pivot to hub, mm. */
    static final double ARM = 600;

    /** Inner to outer datum across the vehicle, mm. */
    static final double REACH = 650;

    private LinkageBuild() {}

    /** Fore-aft offset of the hub at a travel, mm. */
    static double foreAft(double travel) {
        return ARM - Math.sqrt(ARM * ARM - travel * travel);
    }

    static LinkageAtRide arm() {
        return arm(REACH);
    }

    /** An arm whose hub stands so far outward of the inner datum, mm. */
    static LinkageAtRide arm(double reach) {
        HubAtRide hub = new HubAtRide(new Vector(0, 200, 0), new Vector(0, 200 + reach, 0), 0, 0);
        return LinkageAtRide.of(
                LinkageKind.TRAILING_ARM, List.of(new Vector(ARM, 500, 0)), hub, -120, 120);
    }

    /** Nothing was read. */
    static Readings unread() {
        return Readings.of(300, 300, TapeSettings.of(1, 1)).withCentreToDatum(200);
    }

    /** Seven heights read without a slip, then lengthened, mm. */
    static Readings read(double longer) {
        Readings readings = unread();
        for (int height = -90; height <= 90; height += 30) {
            double distance = Math.hypot(Math.hypot(foreAft(height), REACH), height);
            readings =
                    readings.and(
                            new shaftwright.suspension.TapeRow(
                                    readings.rows().size() + 1,
                                    300 + height,
                                    List.of(distance + longer),
                                    foreAft(height),
                                    OptionalDouble.of(0),
                                    OptionalDouble.of(0)));
        }
        return readings;
    }

    /** Both sides on such arms, compared with these readings; one scenario, A. */
    static Build of(Readings readings) {
        return Build.of(Vehicle.PLAIN, Corner.of(readings).with(arm()), stock())
                .withScenario(scenario("A").build());
    }

    static Stock stock() {
        BlankEnd splined = new BlankEnd(30, 90, OptionalDouble.empty());
        Blank blank = new Blank("730 mm", 730, 30, splined, splined, 90, true);
        return new Stock(List.of(blank), new RingSpec(2, 2.2, 1.2, 3), 1);
    }

    static Scenario.Builder scenario(String name) {
        double most = Math.toRadians(24);
        Joint joint =
                Joint.named("100 mm six-ball", 17, BenchTable.straight(50, most, 0.5), most)
                        .datumOffset(2)
                        .cupBottom(44)
                        .build();
        MountedJoint end = new MountedJoint(joint, 0, 4, 8, 28, 0);
        return Scenario.named(name)
                .joints(end, end)
                .travel(WheelTravel.of(110, 110))
                .margins(new Margins(3, 4));
    }
}
