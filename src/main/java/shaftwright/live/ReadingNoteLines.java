package shaftwright.live;

import static shaftwright.contract.Grid.READING;
import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.SidePath;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.units.LengthUnit;

/**
 * What is said of the readings: a note beside each row that the others make doubtful, and one
 * sentence a side.
 */
final class ReadingNoteLines {
    private ReadingNoteLines() {}

    /** What stands beside the rows. */
    static void declareRows(LiveLines lines) {
        LineSet<ReadRow> rows =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .about(ReadRow::of, Lacking.EMPTY.value());
        rows.revised(2)
                .text("row_note", "Note")
                .inUnit(
                        new Cases()
                                .say("{row_flaw}=1", "can't be read")
                                .say("{row_flaw}=2", "height or distance is missing")
                                .say("{row_flaw}=3", "distance shorter than its rise")
                                .say("{row_flaw}=4", "same height as another row")
                                .otherwise(SuspectLines.notes()),
                        ReadRow::note);
        rows.since(2)
                .text("row_suspect", "Suspect readings")
                .inUnit(SuspectLines.listed(), ReadRow::listed);
        LineSet<ReadRow> typed = rows.in(Section.MEASURE_NOTES, READING);
        typed.when("{fit_ready}*INDEX(row_weight~,{:ordinal})>0")
                .shown("reading_residual", "Off the curve")
                .is("INDEX(row_residual~,{:ordinal})/tape_mm", row -> row.fitted().residual());
        typed.text("reading_note", "What the other readings say")
                .inUnit("INDEX(row_note~,{:ordinal})", ReadRow::note);
    }

    /** What is said of a side. */
    static void declareSides(LiveLines lines) {
        LineSet<Sizing> sides = LineSet.in(lines, Section.PATH_WORK, SIDE);
        LineSet<Sizing> later = sides.since(2);
        LineSet<ReadingContradiction> words =
                later.about(ReadingNoteLines::found, Lacking.EMPTY.value());
        LineSet<ReadingContradiction> found =
                later.about(ReadingNoteLines::found, Lacking.ZERO.value());
        words.text("reading_suspects", "Suspect readings of the side")
                .inUnit(SuspectLines.ofSide(), ReadingWording::listed);
        words.when("{fit_ready}=1")
                .text("reading_next", "Best height for one more row")
                .inUnit(SuspectLines.distance("{gap_least_known}"), ReadingWording::nextHeight);
        found.whole("readings_unplaced", "Quantities that contradict, no row named")
                .is(
                        "{reach_unplaced}+{fore_aft_unplaced}+{camber_unplaced}+{toe_unplaced}",
                        readings -> readings.unplaced().size());
        found.whole("readings_contradict", "Readings contradict each other")
                .yes(
                        "IF({reading_suspects}=\"\",IF({readings_unplaced}>0,1,0),1)",
                        ReadingContradiction::exists);
        // Where the path comes from the linkage, nothing rests on them.
        later.of((sizing, index) -> sizing.path(index.side()))
                .when("{linkage_used}*{readings_contradict}<{readings_contradict}")
                .with(
                        Pieces.of("more", quoted(ReadingWording.MORE))
                                .and("again", quoted(ReadingWording.AGAIN)))
                .text("readings_say", "Said where something rests on the readings")
                .inUnit(
                        """
                        IF({reading_suspects}="",<more>&{reading_next},<again>&{reading_suspects})&"."
                        """,
                        SidePath::readingsSay);
        // What keeps the readings from use, or how far they can be trusted.
        sides.in(Section.MEASURE_NOTES, SIDE)
                .revised(2)
                .of((sizing, index) -> sizing.readings(index.side()))
                .text("reading_summary", "The readings")
                .inUnit(summary(), ReadingNoteLines::summary);
    }

    private static Optional<ReadingContradiction> found(Sizing sizing, Index index) {
        return sizing.readings(index.side()).contradiction();
    }

    private static String summary() {
        return Pieces.of("not_used", ReadingWording.NOT_USED)
                .and("heights", ReadingWording.HEIGHTS)
                .and("two_heights", ReadingWording.TWO_HEIGHTS)
                .and("no_cross_check", ReadingWording.NO_CROSS_CHECK)
                .and("curve", ReadingWording.CURVE)
                .and("ends_not_checked", ReadingWording.ENDS_NOT_CHECKED)
                .and("doubt_of", ReadingWording.DOUBT)
                .and("doubt", Phrases.length("{path_worst_doubt}"))
                .and("again", ReadingWording.MEASURE_AGAIN)
                .and("readings_of", ReadingWording.READINGS_OF)
                .and("unplaced", SuspectLines.unplaced())
                .and("contradict", ReadingWording.CONTRADICT_EACH_OTHER)
                .and("no_camber", ReadingWording.NO_CAMBER)
                .and("no_toe", ReadingWording.NO_TOE)
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

    private static String summary(SideReadings side, LengthUnit unit) {
        return side.path()
                .map(path -> ReadingWording.summary(path, unit))
                .orElse(ReadingWording.NOT_USED + Sizing.NO_READINGS + ".");
    }
}
