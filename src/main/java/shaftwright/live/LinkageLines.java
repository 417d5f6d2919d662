package shaftwright.live;

import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.SideLinkage;
import shaftwright.reading.Sizing;
import shaftwright.study.Wording;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.OffsetEstimate;

/**
 * The hub path of a side's linkage, solved by a fill, and how it agrees with the readings: an
 * engine block, and the fingerprints of all that it follows from.
 */
final class LinkageLines {
    private static final EngineBlock BLOCK =
            new EngineBlock("linkage", SIDE, Section.PATH_WORK, Section.LINKAGE_BLOCK);
    private static final Known<SideLinkage> TYPED =
            new Known<>(
                    "COUNT({point_height_used:all})>0",
                    (sizing, index) -> linkage(sizing, index).filter(SideLinkage::isTyped));

    private static final Lacking NONE = Lacking.NO_FIGURES;

    /** Terms of a point's and of a row's fingerprint. */
    private static final int TERMS = 3;

    private LinkageLines() {}

    private static Optional<SideLinkage> linkage(Sizing sizing, Index index) {
        return Optional.of(sizing.path(index.side()).linkage());
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> work = LineSet.in(lines, Section.PATH_WORK, LINKAGE_POINT);
        String label = "Fingerprint of the row";
        work.print(
                "point_print",
                label,
                new Fingerprint(lines).measured("point_x", "point_y", "point_z"),
                TERMS);
        work.in(Section.PATH_WORK, READING_SLOT)
                .revised(2)
                .print(
                        "row_print",
                        label,
                        new Fingerprint(lines)
                                .measured("row_height", "row_counted", "row_variance"),
                        TERMS);
        Fingerprint shape =
                new Fingerprint(lines)
                        .sum("point_print")
                        .whole("linkage_kind_number")
                        .whole("reach_out1", "reach_out2", "reach_out3")
                        .whole("reach_out4", "reach_out5", "reach_out6")
                        .measured("inner_ahead_used", "inner_height_used", "inner_offset_used")
                        .measured("outer_ahead_used", "outer_out_used", "ride_height_used")
                        .measured("static_camber_used", "static_toe_used")
                        .measured("linkage_up_read", "linkage_down_read");
        LineSet<Sizing> side = LineSet.in(lines, Section.PATH_WORK, SIDE).since(6);
        LineSet<?> typed = side.only(TYPED, Lacking.NO_FIGURES);
        typed.print("linkage_shape_print", "Fingerprint of the linkage", shape, 0);
        typed.filledPrint("linkage_shape_filled", "The same at the last fill", shape);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("linkage_shape_print")
                        .sum("row_print")
                        .whole("path_rows")
                        .measured("tape_mm");
        BLOCK.stamp(lines, all, 6, TYPED);
        BLOCK.figures(lines, TYPED.source())
                .text("linkage_status", "The points")
                .filled(SideLinkage::status);
        LineSet<SideLinkage> linkages = BLOCK.figures(lines, LinkageLines::linkage);
        compared(linkages);
        solved(linkages);
        LineSet<LinkagePath> paths =
                linkages.in(Section.LINKAGE_CURVES, POWER)
                        .ofAny((linkage, index) -> linkage.path(), NONE);
        for (HubCurve curve : HubCurve.values()) {
            paths.number("linkage_" + curve.word, curve.label)
                    .filled(
                            (path, index) ->
                                    curve.of(path.path(), path.pitch()).coefficient(index.row()));
        }
    }

    private static void compared(LineSet<SideLinkage> linkages) {
        LineSet<Calibration> set = linkages.ofAny((linkage, index) -> linkage.calibration(), NONE);
        said(linkages, "linkage_agreement", "Tape and linkage", SideLinkage::agreement);
        set.shown("linkage_off_before", "Readings off the linkage, typically")
                .filled(Calibration::offBefore);
        set.shown("linkage_tape_share", "… tape error accounts for").filled(Calibration::tape);
        set.shown("linkage_off_after", "… left with the offsets below")
                .filled(Calibration::offAfter);
        offset(
                set.of((told, index) -> told.flangeOut()),
                "linkage_flange_out",
                "Output flange farther out than typed");
        offset(
                set.of((told, index) -> told.flangeUp()),
                "linkage_flange_up",
                "Output flange higher than typed");
        offset(
                set.of((told, index) -> told.datumOut()),
                "linkage_datum_out",
                "Outer datum farther out than typed");
        said(
                linkages.since(3),
                "linkage_together",
                "Told only together, ± one standard uncertainty",
                SideLinkage::together);
        set.text("linkage_told", "How well the readings tell offsets (singular values)")
                .filled(
                        told ->
                                told.singularValues().stream()
                                        .map(value -> Wording.rounded(value, 2))
                                        .collect(Collectors.joining(", ")));
        said(linkages, "linkage_untold", "What they can't tell", SideLinkage::untold);
    }

    private static void offset(LineSet<OffsetEstimate> estimates, String name, String label) {
        told(estimates, CellValue.of("not told alone"))
                .shown(name, label)
                .filled(OffsetEstimate::value);
        told(estimates, NONE.value())
                .since(3)
                .shown(name + "_uncertainty", "… ± (one standard uncertainty)")
                .filled(OffsetEstimate::uncertainty);
    }

    private static LineSet<OffsetEstimate> told(
            LineSet<OffsetEstimate> estimates, CellValue otherwise) {
        return estimates.ofAny(
                (estimate, index) -> Optional.of(estimate).filter(OffsetEstimate::isTold),
                otherwise);
    }

    private static void said(
            LineSet<SideLinkage> linkages,
            String name,
            String label,
            Function<SideLinkage, String> sentence) {
        linkages.ofAny(
                        (linkage, index) ->
                                Optional.of(sentence.apply(linkage))
                                        .filter(text -> !text.isEmpty()),
                        NONE)
                .text(name, label)
                .filled(text -> text);
    }

    private static void solved(LineSet<SideLinkage> linkages) {
        LineSet<SideLinkage> doubt =
                linkages.ofAny((linkage, index) -> linkage.path().map(path -> linkage), NONE);
        LineSet<LinkagePath> shown = doubt.of((linkage, index) -> linkage.path().orElseThrow());
        LineSet<LinkagePath> work = shown.in(Section.LINKAGE_CURVES, SIDE);
        shown.since(5)
                .shown("linkage_lowest", "Lowest travel solved")
                .filled(solved -> solved.path().tMin());
        shown.since(5)
                .shown("linkage_highest", "Highest travel solved")
                .filled(solved -> solved.path().tMax());
        doubt.since(5)
                .shown("linkage_uncertainty", "Doubt by the readings")
                .filled(SideLinkage::doubt);
        work.mm("linkage_low", "Lowest travel solved").filled(solved -> solved.path().tMin());
        work.mm("linkage_high", "Highest travel solved").filled(solved -> solved.path().tMax());
        work.number("linkage_length_error", "Curves off the linkage, thousandths of a mm")
                .filled(solved -> 1000 * solved.lengthError());
        work.number("linkage_angle_error", "Camber and toe off it, thousandths of a degree")
                .filled(solved -> 1000 * Math.toDegrees(solved.angleError()));
        doubt.in(Section.LINKAGE_CURVES, SIDE)
                .mm("linkage_doubt", "Doubt by the readings")
                .filled(SideLinkage::doubt);
    }
}
