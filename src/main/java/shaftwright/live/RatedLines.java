package shaftwright.live;

import static shaftwright.live.Quantity.FACTOR;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.TORQUE;
import static shaftwright.live.Quantity.WHOLE;

import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.reading.Sizing;
import shaftwright.reading.StrengthReader;
import shaftwright.strength.BoltClass;
import shaftwright.strength.FlangeBolts;

/** What the flange bolts of each rated joint hold, row by row. */
enum RatedLines implements LiveLine.Formula, LiveLine.Core {
    RATED_OF(
            "rated_of",
            Section.PARTS_WORK,
            "Row of the joint",
            WHOLE,
            "IF({rated_slot}>ROWS(rated_joint),0,IF(INDEX(rated_joint,{rated_slot})=\"\",0,"
                    + "IFERROR(MATCH(INDEX(rated_joint,{rated_slot}),joint_name,0),0)))"),
    /** ISO 898-1 and SAE J429, as the core has them. */
    BOLT_PROOF(
            "bolt_proof",
            Section.PARTS_WORK,
            "Proof load of a bolt, N",
            NUMBER,
            "IF({rated_of}=0,\"\",IF(COUNT({bolt_diameter_read},{bolt_pitch_read},"
                    + "{bolt_count_read},{bolt_circle_read},{bolt_torque_read},nut_factor_read,"
                    + "flange_friction_read)<7,\"\",IF({bolt_pitch_read}<{bolt_diameter_read},"
                    + proof("INDEX(bolt_class,{rated_slot})")
                    + ",\"\")))"),
    BOLT_TENSION(
            "bolt_tension",
            Section.PARTS_WORK,
            "Tension of a bolt, N",
            NUMBER,
            "IF(ISNUMBER({bolt_proof}),"
                    + "1000*{bolt_torque_read}/(nut_factor_read*{bolt_diameter_read}),\"\")"),
    BOLT_OF(
            "bolt_of",
            Section.BOLTS,
            "Joint",
            TEXT,
            "IF({rated_of}=0,\"\",INDEX(joint_name,{rated_of}))"),
    BOLT_SHARE(
            "bolt_share",
            Section.BOLTS,
            "Tension over proof load",
            FACTOR,
            "IF(ISNUMBER({bolt_proof}),{bolt_tension}/{bolt_proof},\"\")"),
    BOLT_MOST(
            "bolt_most",
            Section.BOLTS,
            "Tighten with at most",
            TORQUE,
            "IF(ISNUMBER({bolt_proof}),"
                    + FlangeBolts.MOST_PRELOAD
                    + "*{bolt_proof}*nut_factor_read*{bolt_diameter_read}/1000/torque_nm,\"\")"),
    BOLT_FRICTION(
            "bolt_friction",
            Section.BOLTS,
            "Friction holds",
            TORQUE,
            "IF(ISNUMBER({bolt_proof}),IF({bolt_share}>"
                    + FlangeBolts.MOST_PRELOAD
                    + ",0,{bolt_count_read}*{bolt_tension}*flange_friction_read*"
                    + "{bolt_circle_read}/2/1000/torque_nm),\"\")"),
    BOLT_SHEAR(
            "bolt_shear",
            Section.BOLTS,
            "Shear, after slipping",
            TORQUE,
            "IF(ISNUMBER({bolt_proof}),{bolt_count_read}*{bolt_proof}/SQRT(3)*"
                    + "{bolt_circle_read}/2/1000/torque_nm,\"\")"),
    BOLT_ENGAGED(
            "bolt_engaged",
            Section.BOLTS,
            "Thread engaged, diameters",
            FACTOR,
            "IF(AND({rated_of}>0,COUNT({bolt_engagement_read},{bolt_diameter_read})=2),"
                    + "{bolt_engagement_read}/{bolt_diameter_read},\"\")"),
    BOLT_NOTE(
            "bolt_note",
            Section.BOLTS,
            "Note",
            TEXT,
            "IF(IF(ISNUMBER({bolt_share}),{bolt_share}>"
                    + FlangeBolts.MOST_PRELOAD
                    + ",FALSE),\""
                    + Words.TOO_TIGHT
                    + "\",IF(IF(ISNUMBER({bolt_engaged}),ROUND({bolt_engaged},6)<1,FALSE),\""
                    + Words.TOO_SHORT
                    + "\",\"\"))");

    private final String name;
    private final Section section;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    RatedLines(String name, Section section, String label, Quantity quantity, String formula) {
        this.name = name;
        this.section = section;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (RatedLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            Grid.RATED_SLOT,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    /** Proof stress of the class times the stress area of its kind of thread. */
    private static String proof(String mark) {
        StringBuilder text = new StringBuilder();
        for (BoltClass each : BoltClass.values()) {
            text.append("IF(")
                    .append(mark)
                    .append("=\"")
                    .append(each.words())
                    .append("\",")
                    .append(stress(each))
                    .append("*PI()/4*({bolt_diameter_read}-")
                    .append(each.pitches())
                    .append("*{bolt_pitch_read})^2,");
        }
        return text.append("\"\"").append(")".repeat(BoltClass.values().length)).toString();
    }

    private static String stress(BoltClass boltClass) {
        return boltClass == BoltClass.ISO_8_8
                ? "IF({bolt_diameter_read}>"
                        + BoltClass.LARGE
                        + ","
                        + BoltClass.LARGE_8_8_PROOF
                        + ","
                        + boltClass.proofStress()
                        + ")"
                : String.valueOf(boltClass.proofStress());
    }

    @Override
    public int revised() {
        return this == BOLT_FRICTION ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        StrengthReader strength = sizing.strength();
        int row = index.row();
        double unit = InputKind.TORQUE.factor(sizing.unit());
        return switch (this) {
            case RATED_OF -> CellValue.of(strength.joint(row));
            case BOLT_OF -> CellValue.of(strength.name(row));
            case BOLT_NOTE -> CellValue.of(note(strength, row));
            case BOLT_PROOF -> shown(strength, row, FlangeBolts::proofLoad);
            case BOLT_TENSION -> shown(strength, row, FlangeBolts::preload);
            case BOLT_SHARE -> shown(strength, row, FlangeBolts::preloadShare);
            case BOLT_MOST -> shown(strength, row, bolts -> bolts.mostTorque() / unit);
            case BOLT_FRICTION -> shown(strength, row, bolts -> bolts.frictionCapacity() / unit);
            case BOLT_SHEAR -> shown(strength, row, bolts -> bolts.shearCapacity() / unit);
            case BOLT_ENGAGED -> ReadLines.shown(strength.engagement(row));
        };
    }

    private static CellValue shown(
            StrengthReader strength, int row, ToDoubleFunction<FlangeBolts> figure) {
        return ReadLines.shown(strength.bolts(row).stream().mapToDouble(figure).findAny());
    }

    private static String note(StrengthReader strength, int row) {
        if (strength.bolts(row).filter(FlangeBolts::tooTight).isPresent()) {
            return Words.TOO_TIGHT;
        }
        // Compared like the cell does, so that 10 mm of an inch bolt's thread are no riddle.
        return strength.engagement(row).stream().anyMatch(d -> Math.rint(d * 1e6) < 1e6)
                ? Words.TOO_SHORT
                : "";
    }

    /** What the note says. */
    private static final class Words {
        static final String TOO_TIGHT = "too tight: friction does not count";
        static final String TOO_SHORT = "less than one diameter of thread";

        private Words() {}
    }
}
