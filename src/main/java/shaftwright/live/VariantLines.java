package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.live.Quantity.MONEY;

import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.SweepInput;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.reading.Variants;
import shaftwright.study.Finding;
import shaftwright.study.Lever;
import shaftwright.study.SmallerMargins;
import shaftwright.study.SweepCell;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;

/**
 * What changes do for the scenario that the builder wants varied, and the grid of its variants: an
 * engine block.
 */
final class VariantLines {
    private static final EngineBlock BLOCK =
            new EngineBlock("variants", Grid.BOOK, Section.BOOK_WORK, Section.LEVER_BLOCK);

    /** A scenario whose variants have figures. */
    private static final Known<Sizing> VARIED =
            new Known<>(
                    "{try_ready}=1",
                    (sizing, index) -> Optional.of(sizing).filter(VariantLines::ready));

    private VariantLines() {}

    private static boolean ready(Sizing sizing) {
        return Variants.varied(sizing).isPresent();
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> work = LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK);
        chosen(lines, work);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("parts_print", "settings_print", "try_column_print")
                        .whole("sweep_across_index", "sweep_down_index")
                        .measured("sweep_across_first_read", "sweep_across_last_read")
                        .measured("sweep_down_first_read", "sweep_down_last_read");
        BLOCK.stamp(lines, all, 1, VARIED);
        levers(work);
        LineSet<Sizing> edges = work.in(Section.SWEEP_EDGES, Grid.SWEEP_STEP);
        edge(edges, "sweep_across", "Across");
        edge(edges, "sweep_down", "Down");
        work.in(Section.SWEEP_BLOCK, Grid.SWEEP_CELL)
                .ofAny(VariantLines::cell, Lacking.NO_FIGURES)
                .text("sweep_cell", "Variant")
                .filledInUnit(VariantLines::words);
    }

    private static void chosen(LiveLines lines, LineSet<Sizing> work) {
        work.whole("try_index", "Scenario to vary")
                .is(
                        "IFERROR(MATCH(try_scenario,{work_letter:each},0),0)",
                        sizing -> Variants.scenario(sizing).orElse(-1) + 1);
        work.whole("try_ready", "It is computed")
                .yes(
                        ofChosen(
                                (inColumn("{ready@left:each}") + "*")
                                        + inColumn("{ready@right:each}")),
                        VariantLines::ready);
        LiveLine column = lines.line("column_print");
        work.whole("try_column_print", "Fingerprint of its column")
                .cell(
                        ofChosen(inColumn("{column_print:each}")),
                        (sizing, index) ->
                                Variants.scenario(sizing).stream()
                                        .mapToObj(scenario -> new Index(Side.LEFT, scenario, 0))
                                        .map(varied -> column.core().at(sizing, varied))
                                        .findAny()
                                        .orElse(Lacking.ZERO.value()));
        varied(work, "sweep_across", "Varied across");
        varied(work, "sweep_down", "Varied down");
    }

    private static String ofChosen(String formula) {
        return "IF({try_index}=0,0,IFERROR(" + formula + ",0))";
    }

    private static String inColumn(String row) {
        return Card.inColumn(row, "{try_index}");
    }

    /** The picked word's number, 0 for none. */
    private static void varied(LineSet<Sizing> work, String input, String label) {
        Cases cases = new Cases();
        for (SweepInput each : SweepInput.values()) {
            cases.when(input + "=" + quoted(each.word()), each.number());
        }
        work.whole(input + "_index", label)
                .is(
                        "IFERROR(" + cases.otherwise("0") + ",0)",
                        sizing ->
                                SweepInput.ofWord(sizing.inputs().text(input))
                                        .map(SweepInput::number)
                                        .orElse(0));
    }

    private static void levers(LineSet<Sizing> work) {
        LineSet<Lever> set =
                work.in(Section.LEVER_BLOCK, Grid.LEVER)
                        .ofAny(
                                (sizing, index) ->
                                        sizing.variants().levers().stream()
                                                .skip(index.row())
                                                .findFirst(),
                                Lacking.NO_FIGURES);
        set.text("lever_words", "Change").filledInUnit(Lever::words);
        set.shown("lever_gain", "Window gained").filled(Lever::gain);
        set.of(MONEY, "lever_cost", "Extra cost")
                .filledCell((lever, index) -> VehicleLines.shown(lever.cost()));
        set.text("lever_then", "Then it").filled(lever -> lever.fits() ? "fits" : "does not fit");
        // Apart from the changes, as it is none.
        work.in(Section.LEVER_BLOCK, Grid.BOOK)
                .since(3)
                .ofAny((sizing, index) -> sizing.variants().smallerMargins(), Lacking.NO_FIGURES)
                .text("lever_margins", "Smaller margins")
                .filledInUnit(SmallerMargins::words);
    }

    private static void edge(LineSet<Sizing> edges, String input, String label) {
        int steps = Grid.SWEEP_STEP.rows() - 1;
        String first = input + "_first";
        String last = input + "_last";
        edges.with(
                        Pieces.of("first", "{" + first + "_read}")
                                .and("last", "{" + last + "_read}")
                                .and("steps", steps))
                .givenAll("<first>", "<last>")
                .shown(input + "_value", label)
                .is(
                        index ->
                                Pieces.of("row", index.row())
                                        .in("(<first>+(<last>-<first>)*<row>/<steps>)/tape_mm"),
                        (sizing, index) -> {
                            double from = sizing.inputs().number(first);
                            double to = sizing.inputs().number(last);
                            return from + (to - from) * index.row() / steps;
                        });
    }

    private static Optional<SweepCell> cell(Sizing sizing, Index index) {
        int columns = Grid.SWEEP_STEP.rows();
        return sizing.variants()
                .sweep()
                .map(sweep -> sweep.cell(index.row() / columns, index.row() % columns));
    }

    private static String words(SweepCell cell, LengthUnit unit) {
        if (cell.beyondHeights()) {
            return "beyond heights";
        }
        if (cell.window().isEmpty()) {
            return "not computed";
        }
        String width =
                Wording.rounded(
                        Math.abs(cell.window().getAsDouble()) / unit.mm(), Wording.decimals(unit));
        return cell.fits() ? "fits " + width : word(cell.obstacle().orElseThrow(), width);
    }

    private static String word(Finding obstacle, String width) {
        return switch (obstacle) {
            case NO_WINDOW -> "short " + width;
            case NO_BLANK -> "no blank";
            case BLANK_UNMATED, INNER_FLANGE_UNMATED, OUTER_FLANGE_UNMATED -> "does not mate";
            case INNER_ANGLE, OUTER_ANGLE -> "too steep";
            case TOUCHES_CUP -> "touches cup";
            default -> "no verdict";
        };
    }
}
