package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.live.Quantity.FACTOR;
import static shaftwright.live.Quantity.TORQUE;

import java.util.ArrayList;
import java.util.List;
import shaftwright.formula.FormulaText;
import shaftwright.formula.Pieces;
import shaftwright.study.Sentence;
import shaftwright.study.Slot;
import shaftwright.study.Wording;

/**
 * Numbers and sentences as formulas that give what {@link Wording} writes. They round before they
 * format and never use a locale's separators, so that both give the same text everywhere.
 */
final class Phrases {
    /** Longest text that a spreadsheet takes inside a formula. */
    private static final int LONGEST_LITERAL = 255;

    /** A space of its own, since programs lose one at the end of a cell's stored text. */
    private static final String UNIT = "\" \"&unit_symbol";

    private Phrases() {}

    /** What stands in a sentence's slot, as a formula with places. */
    interface Places<S> {
        /** In mm, rad, N·m or plain; a text for a name; from 1 for a choice. */
        String place(S slot);
    }

    /** A whole sentence. */
    static <S extends Enum<S> & Slot> String sentence(Sentence<S> sentence, Places<S> places) {
        List<String> parts = new ArrayList<>();
        for (Sentence.Part<S> part : sentence.parts()) {
            for (int at = 0; at < part.text().length(); at += LONGEST_LITERAL) {
                int end = Math.min(part.text().length(), at + LONGEST_LITERAL);
                parts.add(quoted(part.text().substring(at, end)));
            }
            for (S slot : part.slots()) {
                parts.add(written(slot, places.place(slot)));
            }
        }
        return String.join("&", parts);
    }

    private static String written(Slot slot, String place) {
        return switch (slot.kind()) {
            case LENGTH -> length(place);
            case FINE_LENGTH -> fineLength(place);
            case SHOP_LENGTH -> shopLength(place);
            case EXCESS -> excess(place);
            case ANGLE -> angle(place);
            case ANGLE_EXCESS -> angleExcess(place);
            case TRAVEL -> travel(place);
            case FACTOR -> of(place, "FIXED(ROUND(ROUND(<place>,8),2),2,1)");
            case FACTOR_ABOVE -> of(place, "FIXED(ROUNDUP(ROUND(<place>,8),2),2,1)");
            case TORQUE ->
                    of(
                            place,
                            """
                            FIXED(ROUNDDOWN(ROUND(<place>/torque_nm,8),0),0,1)
                            &IF(unit="inch"," lb·ft"," N·m")
                            """);
            case COUNT -> of(place, "FIXED(<place>,0,1)");
            case NAME -> place;
            case CHOICE ->
                    of(place, "CHOOSE(<place>,")
                            + (joined(",", slot.words().toArray(String[]::new), FormulaText::quoted)
                                    + ")");
        };
    }

    /** A text with {@code %s} in the place of each of these formulas. */
    static String said(String text, String... places) {
        String[] fixed = text.split("%s", -1);
        List<String> parts = new ArrayList<>();
        for (int at = 0; at < fixed.length; at++) {
            if (!fixed[at].isEmpty()) {
                parts.add(quoted(fixed[at]));
            }
            if (at < places.length) {
                parts.add(places[at]);
            }
        }
        return String.join("&", parts);
    }

    /** A length in mm by which something is over: "less than 0.1 mm" rather than 0. */
    static String excess(String millimetres) {
        return atLeastOneStep("(" + millimetres + ")/tape_mm", "unit_decimals", UNIT);
    }

    /** The same of an angle in rad. */
    static String angleExcess(String radians) {
        return atLeastOneStep("DEGREES(" + radians + ")", "" + Wording.ANGLE_DECIMALS, "\"°\"");
    }

    private static String of(String place, String open) {
        return Pieces.of("place", place).in(open);
    }

    private static String atLeastOneStep(String value, String decimals, String unit) {
        return Pieces.of("decimals", decimals)
                .and("rounded", "ROUND(ROUND(" + value + ",8),<decimals>)")
                .and("unit", unit)
                .in(
                        """
                        IF(<rounded>=0,"less than "&FIXED(1/10^<decimals>,<decimals>,1),
                        FIXED(<rounded>,<decimals>,1))&<unit>
                        """);
    }

    /** A length in the workbook's unit, with the unit. */
    static String length(String millimetres) {
        return length(millimetres, "unit_decimals");
    }

    /** The same to two decimals more. */
    static String fineLength(String millimetres) {
        return length(millimetres, "(unit_decimals+2)");
    }

    /** A shaft's length: as a fraction where it is a whole number of the shop's steps. */
    private static String shopLength(String millimetres) {
        return Pieces.of("is_step", StepFormula.isStep(millimetres))
                .and("fraction", StepFormula.nearest(millimetres))
                .and("decimals", length(millimetres))
                .in("IF(IF(shop_sixtyfourths=0,FALSE,<is_step>),<fraction>,<decimals>)");
    }

    private static String length(String millimetres, String decimals) {
        return Pieces.of("decimals", decimals)
                .in(
                        "FIXED(ROUND(ROUND(("
                                + millimetres
                                + ")/tape_mm,8),<decimals>),<decimals>,1)&"
                                + UNIT);
    }

    /** An angle in degrees, with the sign. */
    static String angle(String radians) {
        return "FIXED(ROUND(ROUND(DEGREES(" + radians + "),8),1),1,1)&\"°\"";
    }

    /** A travel: "3.20 in bump", "ride height". */
    static String travel(String millimetres) {
        return Pieces.of("travel", millimetres)
                .and("length", length("ABS(<travel>)"))
                .in(
                        """
                        IF(ROUND(ROUND(ABS(<travel>)/tape_mm,8),unit_decimals)=0,"ride height",
                        <length>&IF(<travel>>0," bump"," droop"))
                        """);
    }
}
