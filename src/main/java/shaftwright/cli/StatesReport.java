package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import shaftwright.shaft.Binding;
import shaftwright.shaft.MouthGap;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.StateSetup;
import shaftwright.shaft.StatesResult;

/** What becomes of a side's shaft in all states that are asked for, as JSON. */
final class StatesReport {
    private final JsonGenerator json;

    StatesReport(JsonGenerator json) {
        this.json = json;
    }

    void write(SideResult side) throws IOException {
        if (side.states().isEmpty()) {
            json.writeNullField("all_states");
            return;
        }
        StatesResult all = side.states().get();
        json.writeObjectFieldStart("all_states");
        json.writeArrayFieldStart("states");
        for (StateSetup state : all.window().states()) {
            json.writeString(state.name());
        }
        json.writeEndArray();
        end("shortest", side.choice().shortest(), all.window().shortest());
        end("longest", side.choice().longest(), all.window().longest());
        number("window_mm", side.window().width());
        met("slack_in", "mm", all.slackIn());
        met("slack_out", "mm", all.slackOut());
        met("free_play", "mm", all.freePlay());
        met("inner_steepest", "rad", all.steepestInner());
        met("outer_steepest", "rad", all.steepestOuter());
        number("inner_ride_rad", all.innerAtRide());
        number("outer_ride_rad", all.outerAtRide());
        Optional<MouthGap> mouth = all.mouth();
        if (mouth.isEmpty()) {
            json.writeNullField("mouth");
        } else {
            json.writeObjectFieldStart("mouth");
            number("mm", mouth.get().gap().value());
            json.writeStringField("end", mouth.get().end().word());
            where(mouth.get().gap());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void end(String name, ShaftLength length, Binding end) throws IOException {
        json.writeObjectFieldStart(name);
        number("race_spacing_mm", length.spacing());
        number("clip_to_clip_mm", length.clipToClip());
        number("end_to_end_mm", length.endToEnd());
        where(end);
        json.writeEndObject();
    }

    private void met(String name, String unit, Binding extreme) throws IOException {
        json.writeObjectFieldStart(name);
        number(unit, extreme.value());
        where(extreme);
        json.writeEndObject();
    }

    private void where(Binding extreme) throws IOException {
        number("travel_mm", extreme.travel());
        json.writeStringField("state", extreme.state());
    }

    private void number(String name, double value) throws IOException {
        JsonReport.number(json, name, value);
    }
}
