package shaftwright.live;

import static shaftwright.contract.Grid.READING;
import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;
import shaftwright.study.Wording;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.suspension.SuspectReading;
import shaftwright.units.LengthUnit;

/**
 * What is said of the readings: a note beside each row that the others make doubtful, and one
 * sentence a side.
 */
final class ReadingNoteLines {
    private static final String NOT_USED = "Not used: ";
    private static final String HEIGHTS = " heights, ";
    private static final String TWO_HEIGHTS = "too few for a verdict";
    private static final String NO_CROSS_CHECK = "too few to check each other";
    private static final String CURVE = "a curve of degree ";
    private static final String ENDS_NOT_CHECKED = ", a wrong reading at either end would not show";
    private static final String DOUBT = "; tape and curve leave a doubt of ";
    private static final String MEASURE_AGAIN = " Measure again: ";
    private static final String READINGS_OF = " Readings of ";
    private static final String CONTRADICT_EACH_OTHER =
            " contradict each other, and so few can't show which is wrong: measure one more"
                    + " height, best near ";
    private static final String NO_CAMBER = " No camber was read: 0 is used.";
    private static final String NO_TOE = " No toe was read: 0 is used.";

    private ReadingNoteLines() {}

    /** What stands beside the rows. */
    static void declareRows(LiveLines lines) {
        LineSet<Sizing> rows = LineSet.in(lines, Section.PATH_WORK, READING_SLOT);
        rows.revised(2)
                .text("row_note", "Note")
                .is(
                        new Cases()
                                .say("{row_flaw}=1", "can't be read")
                                .say("{row_flaw}=2", "height or distance is missing")
                                .say("{row_flaw}=3", "distance shorter than its rise")
                                .say("{row_flaw}=4", "same height as another row")
                                .otherwise(SuspectLines.notes()),
                        ReadingNoteLines::note);
        rows.since(2)
                .text("row_suspect", "Suspect readings")
                .is(
                        SuspectLines.listed(),
                        (sizing, index) ->
                                ofRow(
                                        sizing,
                                        index,
                                        "",
                                        suspect ->
                                                ReadingWording.LISTED_BETWEEN
                                                        + ReadingWording.listed(
                                                                suspect, sizing.unit())));
        LineSet<Sizing> typed = rows.in(Section.MEASURE_NOTES, READING);
        typed.about(ReadRow::of, Lacking.EMPTY.value())
                .shown("reading_residual", "Off the curve")
                .is(
                        Given.when(
                                "{fit_ready}*INDEX(row_weight~,{:ordinal})>0",
                                "INDEX(row_residual~,{:ordinal})/tape_mm"),
                        row -> row.fitted().residual());
        typed.text("reading_note", "What the other readings say")
                .is("INDEX(row_note~,{:ordinal})", ReadingNoteLines::note);
    }

    private static String note(Sizing sizing, Index index) {
        return ofRow(sizing, index, ". ", suspect -> ReadingWording.note(suspect, sizing.unit()));
    }

    private static String ofRow(
            Sizing sizing, Index index, String between, Function<SuspectReading, String> said) {
        return ReadRow.of(sizing, index).stream()
                .flatMap(row -> row.suspects().stream())
                .map(said)
                .collect(Collectors.joining(between));
    }

    /** What is said of a side. */
    static void declareSides(LiveLines lines) {
        LineSet<Sizing> sides = LineSet.in(lines, Section.PATH_WORK, SIDE);
        LineSet<Sizing> later = sides.since(2);
        LineSet<ReadingContradiction> found =
                later.about(
                        (sizing, index) -> sizing.readings(index.side()).contradiction(),
                        Lacking.ZERO.value());
        later.text("reading_suspects", "Suspect readings of the side")
                .is(SuspectLines.ofSide(), said(ReadingNoteLines::listed));
        later.text("reading_next", "Best height for one more row")
                .is(
                        Given.when("{fit_ready}=1", SuspectLines.distance("{gap_least_known}")),
                        said(ReadingNoteLines::next));
        found.whole("readings_unplaced", "Quantities that contradict, no row named")
                .is(
                        "{reach_unplaced}+{fore_aft_unplaced}+{camber_unplaced}+{toe_unplaced}",
                        readings -> readings.unplaced().size());
        found.whole("readings_contradict", "Readings contradict each other")
                .is(
                        "IF({reading_suspects}=\"\",IF({readings_unplaced}>0,1,0),1)",
                        readings -> readings.exists() ? 1 : 0);
        // Where the path comes from the linkage, nothing rests on them.
        later.text("readings_say", "Said where something rests on the readings")
                .is(
                        "IF({linkage_used}*{readings_contradict}<{readings_contradict},"
                                + "IF({reading_suspects}=\"\",%s&{reading_next},%s&{reading_suspects})&\".\",\"\")"
                                        .formatted(
                                                quoted(ReadingWording.MORE),
                                                quoted(ReadingWording.AGAIN)),
                        (sizing, index) -> said(sizing, index.side()));
        // What keeps the readings from use, or how far they can be trusted.
        sides.in(Section.MEASURE_NOTES, SIDE)
                .revised(2)
                .text("reading_summary", "The readings")
                .is(summary(), ReadingNoteLines::summary);
    }

    private static BiFunction<Sizing, Index, String> said(
            BiFunction<ReadingContradiction, LengthUnit, String> words) {
        return (sizing, index) ->
                sizing.readings(index.side())
                        .contradiction()
                        .map(found -> words.apply(found, sizing.unit()))
                        .orElse("");
    }

    private static String listed(ReadingContradiction found, LengthUnit unit) {
        return String.join(ReadingWording.LISTED_BETWEEN, ReadingWording.listed(found, unit));
    }

    private static String next(ReadingContradiction found, LengthUnit unit) {
        return ReadingWording.distance(found.nextHeight(), unit);
    }

    /** What is said of a side's readings where something rests on them; empty when they agree. */
    static String said(Sizing sizing, Side side) {
        Optional<ReadingContradiction> found = sizing.readings(side).contradiction();
        boolean linkage = sizing.path(side).linkage().isChosen();
        return linkage || found.isEmpty()
                ? ""
                : ReadingWording.sentence(found.get(), sizing.unit());
    }

    private static String summary() {
        return Pieces.of("not_used", NOT_USED)
                .and("heights", HEIGHTS)
                .and("two_heights", TWO_HEIGHTS)
                .and("no_cross_check", NO_CROSS_CHECK)
                .and("curve", CURVE)
                .and("ends_not_checked", ENDS_NOT_CHECKED)
                .and("doubt_of", DOUBT)
                .and("doubt", Phrases.length("{path_worst_doubt}"))
                .and("again", MEASURE_AGAIN)
                .and("readings_of", READINGS_OF)
                .and("unplaced", SuspectLines.unplaced())
                .and("contradict", CONTRADICT_EACH_OTHER)
                .and("no_camber", NO_CAMBER)
                .and("no_toe", NO_TOE)
                .in(
                        """
                        IF({fit_ready}=0,"<not_used>"&{fit_trouble}&".",{path_rows}&"<heights>"
                        &IF({path_rows}<3,"<two_heights>",IF({reach_freedom}<=0,"<no_cross_check>",
                        "<curve>"&{path_degree}&IF({reach_freedom}<3,"<ends_not_checked>","")))
                        &"<doubt_of>"&<doubt>&"."
                        &IF({reading_suspects}="","","<again>"&{reading_suspects}&".")
                        &IF({readings_unplaced}=0,"","<readings_of>"&<unplaced>&"<contradict>"
                        &{reading_next}&".")
                        &IF(SUM({row_camber_weight:all})=0,"<no_camber>","")
                        &IF(SUM({row_toe_weight:all})=0,"<no_toe>",""))
                        """);
    }

    private static String summary(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        return side.contradiction()
                .map(found -> summary(side.path().orElseThrow(), found, sizing.unit()))
                .orElse(NOT_USED + Sizing.NO_READINGS + ".");
    }

    private static String summary(MeasuredPath path, ReadingContradiction found, LengthUnit unit) {
        String doubt = Wording.length(PathFigureLines.worstDoubt(path), unit);
        return path.rows().size()
                + HEIGHTS
                + curve(path)
                + (DOUBT + doubt + ".")
                + (found.suspects().isEmpty() ? "" : MEASURE_AGAIN + listed(found, unit) + ".")
                + (found.isUnplaced()
                        ? READINGS_OF
                                + ReadingWording.unplaced(found)
                                + (CONTRADICT_EACH_OTHER + next(found, unit) + ".")
                        : "")
                + (path.fit(MeasuredQuantity.CAMBER).isPresent() ? "" : NO_CAMBER)
                + (path.fit(MeasuredQuantity.TOE).isPresent() ? "" : NO_TOE);
    }

    private static String curve(MeasuredPath path) {
        if (!path.mayGiveVerdict()) {
            return TWO_HEIGHTS;
        }
        return switch (path.crossCheck()) {
            case NONE -> NO_CROSS_CHECK;
            case NAMES_THE_ROW -> CURVE + path.degree();
            default -> CURVE + path.degree() + ENDS_NOT_CHECKED;
        };
    }
}
