package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.function.ToDoubleFunction;
import shaftwright.formula.Given;
import shaftwright.formula.LengthTextFormula;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.CardPrint;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/** Sizes of the shaft that a shop card draws, beside those that it prints, and words beside it. */
final class ShaftDrawingLines {
    private static final String GROOVE = "groove from this end: %s, %s wide";

    private ShaftDrawingLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> sizes = LineSet.in(lines, Section.SHAFT_SIZES, SIDE);
        sizes(sizes);
        DrawnPointLines.declare(lines);
        words(Card.printed(sizes));
    }

    private static void sizes(LineSet<Sizing> set) {
        set.revised(2)
                .with(
                        Pieces.of("lengths", CardPrint.LENGTHS.level())
                                .and("row", Card.cell("plan_row")))
                .whole("draw_row", "Blank's row")
                .is(
                        "IF(OR(card_index=0,{card_allowed}<<lengths>),0,IFERROR(<row>,0))",
                        (sizing, index) ->
                                Card.printed(sizing, index)
                                        .flatMap(Card.Printed::plan)
                                        .map(plan -> sizing.parts().blankRow(plan.row()))
                                        .orElse(0));
        LineSet<Card.Printed> printed = Card.printed(set);
        printed.given("{card_e}")
                .mm("draw_total", "Blank, or shaft without one")
                .is("{card_e}+SUM({card_cut_in},{card_cut_out})", ShaftDrawingLines::total);
        LineSet<Card.Printed> ofBlank = printed.inRow("{draw_row}");
        ofBlank.with(Pieces.of("diameter", "INDEX(blank_diameter_read,{draw_row})"))
                .mm("draw_body", "Half the bar")
                .is(
                        "IF(SUM(<diameter>)>0,<diameter>/2,shaft_end_diameter_inner_read/2)",
                        ShaftDrawingLines::body);
        for (ShaftEnd end : ShaftEnd.values()) {
            ofBlank.at(end)
                    .mm("draw_spline_<end>", "Spline left, <inner> end")
                    .is(
                            "INDEX(blank_spline_length_<inner>_read,{draw_row})-{card_cut_<end>}",
                            print -> print.ofPlan(plan -> plan.splineLeft(end)));
        }
    }

    /** Length of the blank, or of the shaft without one, mm. */
    static double total(Card.Printed print) {
        return print.shaft().length().endToEnd() + print.plan().map(CutPlan::scrap).orElse(0.0);
    }

    /** Half the bar's diameter, mm; NaN without a blank. */
    static double body(Card.Printed print) {
        return print.ofPlan(
                plan -> plan.blank().diameter().orElse(print.endDiameter(ShaftEnd.INNER)) / 2);
    }

    private static void words(LineSet<Card.Printed> set) {
        LineSet<Card.Printed> printed = set.revised(5);
        words(printed, DrawnPart.LENGTH, "E ", "card_e", Card.Printed::endToEnd);
        words(printed, DrawnPart.CLIPS, "K ", "card_k", Card.Printed::clipToClip);
        groove(printed, DrawnPart.GROOVE_IN, ShaftEnd.INNER);
        groove(printed, DrawnPart.GROOVE_OUT, ShaftEnd.OUTER);
        cut(printed, DrawnPart.CUT_IN, ShaftEnd.INNER);
        cut(printed, DrawnPart.CUT_OUT, ShaftEnd.OUTER);
    }

    private static void cut(LineSet<Card.Printed> printed, DrawnPart part, ShaftEnd end) {
        words(
                printed,
                part,
                "cut off ",
                "card_cut_" + end.shortWord(),
                print -> print.ofPlan(plan -> plan.cut(end).cut()));
    }

    /** A length as words beside the drawing: in decimal inch and mm, the workbook's unit first. */
    private static void words(
            LineSet<Card.Printed> printed,
            DrawnPart part,
            String before,
            String line,
            ToDoubleFunction<Card.Printed> core) {
        printed.text(part.words(), "Words")
                .is(
                        Given.number("{" + line + "}", quoted(before) + "&" + both(line)),
                        print ->
                                Double.isNaN(core.applyAsDouble(print))
                                        ? ""
                                        : before + both(core.applyAsDouble(print), print.sizing()));
    }

    private static void groove(LineSet<Card.Printed> printed, DrawnPart part, ShaftEnd end) {
        String line = "card_wall_" + end.shortWord();
        String words = Phrases.said(GROOVE, both(line), CardLines.grooveWidth());
        printed.text(part.words(), "Words")
                .is(
                        Given.number("{" + line + "}", words),
                        print ->
                                print.plan()
                                        .map(plan -> groove(plan.cut(end), print.sizing()))
                                        .orElse(""));
    }

    private static String groove(EndCut cut, Sizing sizing) {
        return GROOVE.formatted(both(cut.outerWall(), sizing), CardLines.grooveWidth(sizing));
    }

    private static String both(String line) {
        return Pieces.of("inch", "{" + line + "_inch}")
                .and("mm", LengthTextFormula.millimetres("{" + line + "}"))
                .in("IF(unit=\"inch\",<inch>&\" (\"&<mm>,<mm>&\" (\"&<inch>)&\")\"");
    }

    private static String both(double mm, Sizing sizing) {
        Length length = new Length(mm);
        String inch = length.format(LengthStyle.DECIMAL_INCH);
        String millimetres = length.format(LengthStyle.MILLIMETRES);
        return sizing.unit() == LengthUnit.INCH
                ? inch + " (" + millimetres + ")"
                : millimetres + " (" + inch + ")";
    }
}
