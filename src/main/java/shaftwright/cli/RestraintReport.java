package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import shaftwright.travel.BootGap;
import shaftwright.travel.Restraint;
import shaftwright.travel.Span;
import shaftwright.travel.TravelEnds;
import shaftwright.workbook.SideRestraints;
import shaftwright.workbook.SideStops;

/** Dampers, straps, bump stops and the gap between boots and tubes, as JSON. */
record RestraintReport(JsonGenerator json) {

    /** The rows of one side that could be worked out, each on its own. */
    void rows(SideRestraints restraints) throws IOException {
        json.writeArrayFieldStart("restraints");
        for (SideRestraints.Row row : restraints.rows()) {
            Restraint restraint = row.restraint();
            json.writeStartObject();
            json.writeNumberField("row", row.row() + 1);
            json.writeStringField("name", restraint.span().name());
            json.writeStringField("kind", restraint.kind().name());
            number("closed_mm", restraint.shortest() > 0 ? restraint.shortest() : Double.NaN);
            number("open_mm", restraint.longest());
            number("length_ride_mm", row.lengthAtRide());
            number("length_per_height", row.ratioAtRide());
            number("stops_up_mm", stop(row.alone().up()));
            number("stops_down_mm", stop(row.alone().down()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static double stop(TravelEnds.End end) {
        return end.stop().isRestraint() ? Math.abs(end.travel()) : Double.NaN;
    }

    /** What they make of the travel that one side of a scenario wants. */
    void stops(SideStops stops, SideRestraints restraints) throws IOException {
        early("stopped_up", stops.earlyUpOrNull());
        early("stopped_down", stops.earlyDownOrNull());
        json.writeArrayFieldStart("restraints");
        for (SideRestraints.Row row : restraints.rows()) {
            Span.Course course = stops.courseOrNull(row.row());
            if (course != null) {
                json.writeStartObject();
                json.writeNumberField("row", row.row() + 1);
                number("longest_mm", course.longest());
                number("longest_travel_mm", course.longestAt());
                number("shortest_mm", course.shortest());
                number("shortest_travel_mm", course.shortestAt());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        gap("inner_boot_gap", stops.gapOrNull(BootGap.End.INNER));
        gap("outer_boot_gap", stops.gapOrNull(BootGap.End.OUTER));
    }

    private void early(String name, TravelEnds.End endOrNull) throws IOException {
        if (endOrNull == null) {
            json.writeNullField(name + "_mm");
            json.writeNullField(name + "_by");
        } else {
            number(name + "_mm", Math.abs(endOrNull.travel()));
            json.writeStringField(name + "_by", endOrNull.stop().name());
        }
    }

    private void gap(String name, SideStops.Gap gapOrNull) throws IOException {
        if (gapOrNull == null) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        json.writeNumberField("tube_row", gapOrNull.tube() + 1);
        number("least_mm", gapOrNull.least());
        number("travel_mm", gapOrNull.leastAt());
        number("ride_mm", gapOrNull.atRide());
        json.writeEndObject();
    }

    private void number(String name, double value) throws IOException {
        JsonReport.number(json, name, value);
    }
}
