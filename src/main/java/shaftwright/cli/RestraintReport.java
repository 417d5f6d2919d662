package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.SideRestraints;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.study.SideStops;
import shaftwright.travel.Restraint;
import shaftwright.travel.Span;
import shaftwright.travel.TravelEnds;

/** Dampers, straps, bump stops and the gap between boots and tubes, as JSON. */
record RestraintReport(JsonGenerator json) {

    /** The rows of one side that could be worked out, each on its own. */
    void rows(SideRestraints restraints) throws IOException {
        json.writeArrayFieldStart("restraints");
        for (SideRestraints.Row row : restraints.rows()) {
            RestraintCourse course = row.course();
            Restraint restraint = course.restraint();
            json.writeStartObject();
            json.writeNumberField("row", row.row() + 1);
            json.writeStringField("name", restraint.span().name());
            json.writeStringField("kind", restraint.kind().name());
            number("closed_mm", restraint.shortest() > 0 ? restraint.shortest() : Double.NaN);
            number("open_mm", restraint.longest());
            number("length_ride_mm", course.lengthAtRide());
            number("length_per_height", course.ratioAtRide());
            number("stops_up_mm", stop(course.alone().up()));
            number("stops_down_mm", stop(course.alone().down()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static double stop(TravelEnds.End end) {
        return end.stop().isRestraint() ? Math.abs(end.travel()) : Double.NaN;
    }

    /** What they make of the travel that one side of a scenario wants. */
    void stops(SideOutcome side, SideRestraints restraints) throws IOException {
        SideStops stops = side.stops().orElseThrow();
        early("stopped_up", stops.earlyUp());
        early("stopped_down", stops.earlyDown());
        json.writeArrayFieldStart("restraints");
        for (SideRestraints.Row row : restraints.rows()) {
            Optional<Span.Course> course = side.course(row.row());
            if (course.isPresent()) {
                json.writeStartObject();
                json.writeNumberField("row", row.row() + 1);
                number("longest_mm", course.get().longest());
                number("longest_travel_mm", course.get().longestAt());
                number("shortest_mm", course.get().shortest());
                number("shortest_travel_mm", course.get().shortestAt());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        gap("inner_boot_gap", side, stops.gap(ShaftEnd.INNER));
        gap("outer_boot_gap", side, stops.gap(ShaftEnd.OUTER));
    }

    private void early(String name, Optional<TravelEnds.End> end) throws IOException {
        if (end.isEmpty()) {
            json.writeNullField(name + "_mm");
            json.writeNullField(name + "_by");
        } else {
            number(name + "_mm", Math.abs(end.get().travel()));
            json.writeStringField(name + "_by", end.get().stop().name());
        }
    }

    private void gap(String name, SideOutcome side, Optional<SideStops.Gap> found)
            throws IOException {
        if (found.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        SideStops.Gap gap = found.get();
        json.writeObjectFieldStart(name);
        json.writeNumberField("tube_row", side.tubeRow(gap) + 1);
        number("least_mm", gap.least());
        number("travel_mm", gap.leastAt());
        number("ride_mm", gap.atRide());
        json.writeEndObject();
    }

    private void number(String name, double value) throws IOException {
        JsonReport.number(json, name, value);
    }
}
