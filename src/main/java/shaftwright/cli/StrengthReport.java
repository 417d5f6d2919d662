package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import shaftwright.build.Side;
import shaftwright.workbook.ScenarioStrength;

/** What the parts of a scenario carry, as JSON; parts whose capacity is not known are left out. */
record StrengthReport(JsonGenerator json, ScenarioStrength strength, List<Side> sides) {

    void write() throws IOException {
        ScenarioStrength.Torques torques = strength.torques();
        json.writeObjectFieldStart("strength");
        number("torque_engine_nm", torques.engine());
        number("torque_clutch_nm", torques.clutch());
        number("torque_grip_nm", torques.grip());
        number("torque_landing_nm", torques.landing());
        number("torque_needed_nm", torques.needed());
        if (strength.weakest().isEmpty()) {
            json.writeNullField("weakest_part");
        } else {
            json.writeStringField("weakest_part", strength.weakest());
        }
        number("least_factor", strength.leastFactor());
        parts();
        for (Side side : sides) {
            ScenarioStrength.Shaft shaft = strength.shaft(side);
            json.writeObjectFieldStart(side.word());
            number("twist_rad", shaft.twist());
            number("critical_rpm", shaft.criticalSpeed());
            number("inner_life_h", shaft.lifeInner());
            number("outer_life_h", shaft.lifeOuter());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void parts() throws IOException {
        json.writeArrayFieldStart("parts");
        for (Side side : sides) {
            for (ScenarioStrength.ShaftPart part : ScenarioStrength.ShaftPart.values()) {
                part(part.words(), side.word(), strength.shaft(side).capacity(part));
            }
        }
        for (ScenarioStrength.SharedPart part : ScenarioStrength.SharedPart.values()) {
            part(part.words(), "both", strength.capacity(part));
        }
        json.writeEndArray();
    }

    private void part(String words, String side, double capacity) throws IOException {
        if (Double.isNaN(capacity)) {
            return;
        }
        json.writeStartObject();
        json.writeStringField("part", words);
        json.writeStringField("side", side);
        number("torque_nm", capacity);
        number("factor", strength.factor(capacity));
        json.writeEndObject();
    }

    private void number(String name, double value) throws IOException {
        JsonReport.number(json, name, value);
    }
}
