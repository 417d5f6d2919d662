package shaftwright.study;

import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import shaftwright.build.RatedJoint;
import shaftwright.build.Scenario;
import shaftwright.build.WorkPrices;
import shaftwright.joint.Boot;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.ShaftEnd;
import shaftwright.units.LengthUnit;

/** One thing that a builder may change of a scenario, on both sides of the vehicle alike. */
public sealed interface Modification {
    /**
     * The scenario with this change.
     *
     * @throws shaftwright.units.ContradictionException if another of its sizes contradicts it
     */
    Scenario of(Scenario now);

    /** What is changed, amounts in steps of the shop's scale. */
    String words(LengthUnit unit);

    /** What the work on the vehicle costs, parts apart. */
    Price work(WorkPrices prices);

    /** Whether both change the same thing, so that they can't be had together. */
    boolean meets(Modification other);

    /** A limit taken back or something moved, by an amount in mm. */
    record Moved(Move move, double by) implements Modification {
        @Override
        public Scenario of(Scenario now) {
            return move.of(now, by);
        }

        @Override
        public String words(LengthUnit unit) {
            return move.words(ShopScale.shown(by, unit));
        }

        @Override
        public Price work(WorkPrices prices) {
            return move.work(prices);
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof Moved that && move.meets(that.move);
        }
    }

    /** The ring seats of races sunk deeper, mm. */
    record Counterbored(Ends ends, double deeper) implements Modification {
        @Override
        public Scenario of(Scenario now) {
            return joints(now, ends, joint -> joint.withCounterbore(joint.counterbore() + deeper));
        }

        @Override
        public String words(LengthUnit unit) {
            return "ring seat sunk "
                    + ShopScale.shown(deeper, unit)
                    + " deeper"
                    + ends.at("race", "races");
        }

        @Override
        public Price work(WorkPrices prices) {
            return atEnds(ends, prices.counterbore());
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof Counterbored that && ends.overlap(that.ends);
        }
    }

    /** A spacer of so many mm between joint and cup, besides one that is there. */
    record Spaced(Ends ends, double thickness) implements Modification {
        @Override
        public Scenario of(Scenario now) {
            return joints(
                    now, ends, joint -> joint.withJointSpacer(joint.joint().spacer() + thickness));
        }

        @Override
        public String words(LengthUnit unit) {
            return "spacer of "
                    + ShopScale.shown(thickness, unit)
                    + " between joint and cup"
                    + ends.at("end", "ends");
        }

        @Override
        public Price work(WorkPrices prices) {
            return atEnds(ends, prices.spacer());
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof Spaced that && ends.overlap(that.ends);
        }
    }

    /** Another joint. */
    record OtherJoint(Ends ends, RatedJoint joint) implements Modification {
        @Override
        public Scenario of(Scenario now) {
            Scenario.Builder next = now.toBuilder();
            ends.each().forEach(end -> next.swap(end, joint));
            return next.build();
        }

        @Override
        public String words(LengthUnit unit) {
            return joint.joint().name() + ends.at("end", "ends");
        }

        @Override
        public Price work(WorkPrices prices) {
            return Price.of(0);
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof OtherJoint that && ends.overlap(that.ends);
        }
    }

    /** Another boot. */
    record OtherBoot(Ends ends, Boot boot) implements Modification {
        @Override
        public Scenario of(Scenario now) {
            return joints(now, ends, joint -> joint.under(boot));
        }

        @Override
        public String words(LengthUnit unit) {
            return boot.name() + ends.at("end", "ends");
        }

        @Override
        public Price work(WorkPrices prices) {
            return Price.of(0);
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof OtherBoot that && ends.overlap(that.ends);
        }
    }

    /** The best blank of the list in place of one alone. */
    record AnyBlank() implements Modification {
        @Override
        public Scenario of(Scenario now) {
            return now.toBuilder().anyBlank().build();
        }

        @Override
        public String words(LengthUnit unit) {
            return "any blank of the list";
        }

        @Override
        public Price work(WorkPrices prices) {
            return Price.of(0);
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof AnyBlank;
        }
    }

    /** Another length inside the same window, from 0 for its short end to 1 for its long end. */
    record Preferred(double share) implements Modification {
        @Override
        public Scenario of(Scenario now) {
            return now.toBuilder().bias(share).build();
        }

        @Override
        public String words(LengthUnit unit) {
            return "length preference " + Wording.rounded(share, 2);
        }

        @Override
        public Price work(WorkPrices prices) {
            return Price.of(0);
        }

        @Override
        public boolean meets(Modification other) {
            return other instanceof Preferred;
        }
    }

    private static Scenario joints(Scenario now, Ends ends, UnaryOperator<MountedJoint> other) {
        Scenario.Builder next = now.toBuilder();
        for (ShaftEnd end : ends.each()) {
            next.joint(end, other.apply(now.joint(end)));
        }
        return next.build();
    }

    /** At these ends of two shafts. */
    private static Price atEnds(Ends ends, OptionalDouble each) {
        return Price.typed(each).times(2 * ends.each().size());
    }
}
