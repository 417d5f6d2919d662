package shaftwright.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Build;
import shaftwright.build.DrivenFlanges;
import shaftwright.build.GroundClearance;
import shaftwright.build.Margins;
import shaftwright.build.Market;
import shaftwright.build.OwnCosts;
import shaftwright.build.RatedJoint;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Spares;
import shaftwright.build.Stock;
import shaftwright.build.Vehicle;
import shaftwright.build.Wheel;
import shaftwright.build.WheelTravel;
import shaftwright.build.WorkPrices;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Boot;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.RingSpec;
import shaftwright.suspension.TapeSettings;

/** A build with parts to choose from and prices, without a workbook. Figures invented. */
final class PricedBuild {
    static final Joint SMALL = joint("90 mm six-ball", 34, 60);
    static final Joint LARGE = joint("108 mm six-ball", 60, 110);
    static final Boot TIGHT = Boot.changing(-3).sold("tight boot", 20);
    static final Boot LONG = Boot.ofSize(100, 80).sold("long boot", 33);

    private PricedBuild() {}

    private static Joint joint(String name, double plunge, double price) {
        double most = Math.toRadians(24);
        return Joint.named(name, 17, BenchTable.straight(plunge, most, 0.5), most)
                .datumOffset(2)
                .cupBottom(31)
                .price(price)
                .build();
    }

    /** Its race counterbored by 4 mm, under a tight boot. */
    static MountedJoint mounted(Joint joint) {
        return new MountedJoint(joint, 0, 4, 8, 28, TIGHT);
    }

    /** Joints alike at both ends; 110 mm of travel either way. */
    static Scenario.Builder scenario(Joint joint) {
        return Scenario.named("A")
                .joints(mounted(joint), mounted(joint))
                .travel(WheelTravel.of(110, 110))
                .wheel(new Wheel(OptionalDouble.of(740), OptionalDouble.empty(), 0, 0))
                .costs(new OwnCosts(OptionalDouble.empty(), 46))
                .margins(new Margins(3, 3));
    }

    /** With three blanks, two joints and two boots to be had; other mounts are not priced. */
    static Build with(Scenario.Builder scenario) {
        Readings tape =
                Readings.of(305, 318, TapeSettings.of(1, 1))
                        .withCentreToDatum(150)
                        .and(193, 672)
                        .and(235, 665)
                        .and(276, 660)
                        .and(318, 657)
                        .and(360, 656)
                        .and(401, 658)
                        .and(443, 663);
        Vehicle vehicle =
                new Vehicle(
                        InnerFlange.of(0, 0),
                        OptionalDouble.of(60),
                        new GroundClearance(OptionalDouble.of(250), OptionalDouble.of(740)),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        DrivenFlanges.UNKNOWN);
        Stock stock =
                new Stock(
                        List.of(blank(710, 80), blank(730, 90), blank(790, 120)),
                        new RingSpec(2, 2.2, 1.2, 3),
                        1);
        Market market =
                new Market(
                        List.of(RatedJoint.of(SMALL), RatedJoint.of(LARGE)),
                        List.of(TIGHT, LONG),
                        new WorkPrices(
                                OptionalDouble.of(17),
                                OptionalDouble.of(13),
                                OptionalDouble.empty(),
                                OptionalDouble.of(75),
                                OptionalDouble.of(38),
                                OptionalDouble.of(21)),
                        new Spares(1, 2, 0, 0, 1));
        return Build.of(vehicle, tape, stock).with(market).withScenario(scenario.build());
    }

    private static Blank blank(double length, double price) {
        BlankEnd splined = new BlankEnd(30, 110, OptionalDouble.empty());
        return new Blank(length + " mm", length, 30, splined, splined, price, true);
    }
}
