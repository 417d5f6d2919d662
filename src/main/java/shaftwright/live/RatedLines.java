package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.strength.FlangeBolts.MOST_PRELOAD;

import shaftwright.contract.Grid;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.StrengthReader;
import shaftwright.strength.Bar;
import shaftwright.strength.BoltClass;
import shaftwright.strength.FlangeBolts;

/** What the flange bolts of each rated joint hold, row by row. */
final class RatedLines {
    private static final String TOO_TIGHT = "too tight: friction does not count";
    private static final String TOO_SHORT = "less than one diameter of thread";

    private RatedLines() {}

    static void declare(LiveLines lines) {
        LineSet<StrengthReader> work =
                LineSet.in(lines, Section.PARTS_WORK, Grid.RATED_SLOT)
                        .of((sizing, index) -> sizing.strength())
                        .with(
                                Pieces.of("nmm", Bar.NMM)
                                        .and("most", MOST_PRELOAD)
                                        .and("too_tight", quoted(TOO_TIGHT))
                                        .and("too_short", quoted(TOO_SHORT)));
        work.whole("rated_of", "Row of the joint")
                .is(
                        """
                        IF({rated_slot}>ROWS(rated_joint),0,IF(INDEX(rated_joint,{rated_slot})="",0,
                        IFERROR(MATCH(INDEX(rated_joint,{rated_slot}),joint_name,0),0)))
                        """,
                        (strength, index) -> strength.joint(index.row()));
        LineSet<FlangeBolts> bolts = work.ofAny((strength, index) -> strength.bolts(index.row()));
        bolts.number("bolt_proof", "Proof load of a bolt, N")
                .is(proofLoad(), FlangeBolts::proofLoad);
        LineSet<FlangeBolts> proven = bolts.given("{bolt_proof}");
        proven.number("bolt_tension", "Tension of a bolt, N")
                .is(
                        "<nmm>*{bolt_torque_read}/(nut_factor_read*{bolt_diameter_read})",
                        FlangeBolts::preload);
        LineSet<StrengthReader> shown = work.in(Section.BOLTS, Grid.RATED_SLOT);
        shown.inRow("{rated_of}")
                .text("bolt_of", "Joint")
                .is(
                        "INDEX(joint_name,{rated_of})",
                        (strength, index) -> strength.name(index.row()));
        LineSet<FlangeBolts> tight = proven.in(Section.BOLTS, Grid.RATED_SLOT);
        tight.factor("bolt_share", "Tension over proof load")
                .is("{bolt_tension}/{bolt_proof}", FlangeBolts::preloadShare);
        tight.torque("bolt_most", "Tighten with at most")
                .is(
                        "<most>*{bolt_proof}*nut_factor_read*{bolt_diameter_read}/<nmm>/torque_nm",
                        FlangeBolts::mostTorque);
        tight.revised(2)
                .torque("bolt_friction", "Friction holds")
                .is(
                        """
                        IF({bolt_share}><most>,0,{bolt_count_read}*{bolt_tension}
                        *flange_friction_read*{bolt_circle_read}/2/<nmm>/torque_nm)
                        """,
                        FlangeBolts::frictionCapacity);
        tight.torque("bolt_shear", "Shear, after slipping")
                .is(
                        """
                        {bolt_count_read}*{bolt_proof}/SQRT(3)*{bolt_circle_read}/2
                        /<nmm>/torque_nm
                        """,
                        FlangeBolts::shearCapacity);
        shown.when("AND({rated_of}>0,COUNT({bolt_engagement_read},{bolt_diameter_read})=2)")
                .factor("bolt_engaged", "Thread engaged, diameters")
                .ifKnown(
                        "{bolt_engagement_read}/{bolt_diameter_read}",
                        (strength, index) -> strength.engagement(index.row()));
        shown.text("bolt_note", "Note")
                .is(
                        """
                        IF(IF(ISNUMBER({bolt_share}),{bolt_share}><most>,FALSE),<too_tight>,
                        IF(IF(ISNUMBER({bolt_engaged}),ROUND({bolt_engaged},6)<1,FALSE),<too_short>,""))
                        """,
                        (strength, index) -> note(strength, index.row()));
    }

    /** Proof stress of the class times the stress area of its kind of thread. */
    private static String proofLoad() {
        Cases classes = new Cases();
        for (BoltClass each : BoltClass.values()) {
            classes.when(
                    "INDEX(bolt_class,{rated_slot})=" + quoted(each.words()),
                    Pieces.of("proof", proofStress(each))
                            .and("pitches", String.valueOf(each.pitches()))
                            .in(
                                    "<proof>*PI()/4*({bolt_diameter_read}-<pitches>*{bolt_pitch_read})^2"));
        }
        return Pieces.of("stress_area", classes.otherwise("\"\""))
                .in(
                        """
                        IF({rated_of}=0,"",IF(COUNT({bolt_diameter_read},{bolt_pitch_read},
                        {bolt_count_read},{bolt_circle_read},{bolt_torque_read},nut_factor_read,
                        flange_friction_read)<7,"",
                        IF({bolt_pitch_read}<{bolt_diameter_read},<stress_area>,"")))
                        """);
    }

    /** MPa; ISO 898-1 and SAE J429, as the core has them. */
    private static String proofStress(BoltClass bolts) {
        return bolts == BoltClass.ISO_8_8
                ? "IF({bolt_diameter_read}>%s,%s,%s)"
                        .formatted(BoltClass.LARGE, BoltClass.LARGE_8_8_PROOF, bolts.proofStress())
                : String.valueOf(bolts.proofStress());
    }

    private static String note(StrengthReader strength, int row) {
        if (strength.bolts(row).filter(FlangeBolts::tooTight).isPresent()) {
            return TOO_TIGHT;
        }
        // Compared like the cell does, so that 10 mm of an inch bolt's thread are no riddle.
        return strength.engagement(row).stream().anyMatch(d -> Math.rint(d * 1e6) < 1e6)
                ? TOO_SHORT
                : "";
    }
}
