package shaftwright.shaft;

import java.util.Optional;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Refusal.Reason;

/**
 * One way of using or not using a blank's existing grooves, and what came of it.
 *
 * @param inner ring of the inner end
 * @param outer ring of the outer end
 * @param plan the cuts, when it can be done
 * @param refusal the first thing against it, when it cannot
 * @param innerCut what would come off the inner end, whether or not it can be done, mm; NaN when an
 *     existing groove is to be used where there is none
 */
public record GroovePlan(
        GrooveUse inner,
        GrooveUse outer,
        Optional<CutPlan> plan,
        Optional<Refusal> refusal,
        double innerCut) {
    /** Lengths nearer than this count as equal, mm. */
    static final double TOLERANCE = 1e-6;

    /** Works one way out, by blank, whether or not the blank is in stock and its splines fit. */
    static GroovePlan of(
            Blank blank, int row, ShaftOrder order, GrooveUse innerUse, GrooveUse outerUse) {
        if (lacksGroove(blank.inner(), innerUse) || lacksGroove(blank.outer(), outerUse)) {
            return new GroovePlan(
                    innerUse,
                    outerUse,
                    Optional.empty(),
                    Optional.of(Refusal.of(Reason.NO_GROOVE)),
                    Double.NaN);
        }
        Workpiece piece = Workpiece.of(blank, order, innerUse, outerUse);
        Optional<Refusal> refusal = piece.refusal();
        Optional<CutPlan> plan =
                refusal.isPresent() ? Optional.empty() : Optional.of(piece.plan(row));
        return new GroovePlan(innerUse, outerUse, plan, refusal, piece.innerCut());
    }

    private static boolean lacksGroove(BlankEnd end, GrooveUse use) {
        return use == GrooveUse.EXISTING && end.groove().isEmpty();
    }

    /** An end with its ring's place settled but not yet its cut. */
    private record End(
            BlankEnd blank, GrooveUse use, double trim, double stub, double splineNeeded) {
        static End of(BlankEnd blank, GrooveUse use, MountedJoint joint, ShaftOrder order) {
            double stub = joint.stub();
            double trim = 0;
            if (use == GrooveUse.EXISTING) {
                double groove = blank.groove().orElseThrow();
                trim = Math.max(0, groove - stub);
                stub = groove - trim;
            }
            return new End(blank, use, trim, stub, order.splineNeeded(joint, stub));
        }

        /** What may come off before the spline gets too short; negative when it is already. */
        double room() {
            return blank.splineLength() - splineNeeded;
        }

        /** Spline missing after a cut, mm; 0 or less when there is enough. */
        double splineMissing(double cut) {
            return Math.max(0, cut) - room();
        }

        EndCut cut(double cut, RingSpec ring) {
            double outerWall = stub - ring.ringThickness();
            return new EndCut(
                    use,
                    cut,
                    trim,
                    stub,
                    new GrooveWalls(outerWall, outerWall + ring.grooveWidth()),
                    ring.landWanted(),
                    left(cut, ring));
        }

        /** The old groove where it is not used, taken to be as wide as a new one. */
        private Optional<GrooveWalls> left(double cut, RingSpec ring) {
            if (use == GrooveUse.EXISTING || blank.groove().isEmpty()) {
                return Optional.empty();
            }
            double outerWall = blank.groove().getAsDouble() - cut - ring.ringThickness();
            double innerWall = outerWall + ring.grooveWidth();
            return Rounding.sixth(innerWall) > 0
                    ? Optional.of(new GrooveWalls(outerWall, innerWall))
                    : Optional.empty();
        }
    }

    /** A blank with both rings' places settled, its length and what must come off. */
    private record Workpiece(
            Blank blank, ShaftOrder order, End inner, End outer, ShaftLength length, double rest) {
        static Workpiece of(Blank blank, ShaftOrder order, GrooveUse innerUse, GrooveUse outerUse) {
            End inner = End.of(blank.inner(), innerUse, order.inner(), order);
            End outer = End.of(blank.outer(), outerUse, order.outer(), order);
            double clipToClip = order.choice().chosen().clipToClip();
            if (innerUse == GrooveUse.EXISTING && outerUse == GrooveUse.EXISTING) {
                clipToClip =
                        blank.length()
                                - blank.inner().groove().orElseThrow()
                                - blank.outer().groove().orElseThrow();
            }
            ShaftLength length =
                    ShaftLength.ofClipToClip(clipToClip, order.inner(), order.outer())
                            .withStubs(inner.stub(), outer.stub());
            double rest = blank.length() - length.endToEnd() - inner.trim() - outer.trim();
            return new Workpiece(blank, order, inner, outer, length, rest);
        }

        boolean bothExisting() {
            return inner.use() == GrooveUse.EXISTING && outer.use() == GrooveUse.EXISTING;
        }

        /** Cut of the inner end: its trim, and with a new groove all or its part of the rest. */
        double innerCut() {
            if (inner.use() == GrooveUse.EXISTING) {
                return inner.trim();
            }
            if (outer.use() == GrooveUse.EXISTING) {
                return Math.max(0, rest);
            }
            return newGroovesCut();
        }

        /**
         * The end with more spline to spare is cut alone where it has enough, since each cut is a
         * set-up; the other one where that leaves less against the grooves.
         */
        private double newGroovesCut() {
            boolean innerHasMore = Rounding.sixth(inner.room() - outer.room()) >= 0;
            double most = Math.max(inner.room(), outer.room());
            if (Rounding.sixth(most - rest) < 0) {
                return Math.min(Math.max(rest / 2, rest - outer.room()), inner.room());
            }
            double cut = innerHasMore ? rest : 0;
            boolean otherHasEnough =
                    Rounding.sixth(Math.min(inner.room(), outer.room()) - rest) >= 0;
            return otherHasEnough && flaw(rest - cut).compareTo(flaw(cut)) < 0 ? rest - cut : cut;
        }

        private GrooveFlaw flaw(double innerCut) {
            return GrooveFlaw.of(inner.cut(innerCut, order.ring()))
                    .or(GrooveFlaw.of(outer.cut(rest - innerCut, order.ring())));
        }

        double outerCut() {
            if (outer.use() == GrooveUse.EXISTING) {
                return outer.trim();
            }
            return inner.use() == GrooveUse.EXISTING ? Math.max(0, rest) : rest - innerCut();
        }

        /** The first thing against this way, if any. */
        Optional<Refusal> refusal() {
            if (!bothExisting() && rest < -TOLERANCE) {
                return Optional.of(new Refusal(Reason.TOO_SHORT, -rest));
            }
            double missing = inner.splineMissing(innerCut());
            if (missing > TOLERANCE) {
                return Optional.of(new Refusal(Reason.INNER_SPLINE_TOO_SHORT, missing));
            }
            missing = outer.splineMissing(outerCut());
            if (missing > TOLERANCE) {
                return Optional.of(new Refusal(Reason.OUTER_SPLINE_TOO_SHORT, missing));
            }
            double outside = order.outsideWindow(length.clipToClip());
            if (bothExisting() && outside > 0) {
                return Optional.of(new Refusal(Reason.GROOVES_OUTSIDE_WINDOW, outside));
            }
            return Optional.empty();
        }

        CutPlan plan(int row) {
            return new CutPlan(
                    blank,
                    row,
                    length,
                    inner.cut(innerCut(), order.ring()),
                    outer.cut(outerCut(), order.ring()));
        }
    }
}
