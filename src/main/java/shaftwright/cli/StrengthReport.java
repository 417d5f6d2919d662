package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Side;
import shaftwright.strength.TorquePath;
import shaftwright.strength.WeakestPart;
import shaftwright.study.ShaftPart;
import shaftwright.study.SharedPart;
import shaftwright.study.StrengthStudy;

/** What the parts of a scenario carry, as JSON; parts whose capacity is not known are left out. */
record StrengthReport(JsonGenerator json, StrengthStudy strength, List<Side> sides) {

    void write() throws IOException {
        TorquePath torques = strength.torques();
        json.writeObjectFieldStart("strength");
        number("torque_engine_nm", torques.engine());
        number("torque_clutch_nm", torques.clutch());
        number("torque_grip_nm", torques.grip());
        number("torque_landing_nm", torques.landing());
        number("torque_needed_nm", torques.needed());
        Optional<WeakestPart> weakest = strength.weakest();
        json.writeStringField(
                "weakest_part",
                weakest.map(parts -> parts.least().part())
                        .filter(part -> !part.isEmpty())
                        .orElse(null));
        number("least_factor", weakest.stream().mapToDouble(WeakestPart::factor).findAny());
        parts();
        for (Side side : sides) {
            json.writeObjectFieldStart(side.word());
            number("twist_rad", strength.twist(side));
            number("critical_rpm", strength.shaft(side).criticalSpeed());
            number("inner_life_h", strength.innerLife(side));
            number("outer_life_h", strength.outerLife(side));
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void parts() throws IOException {
        json.writeArrayFieldStart("parts");
        for (Side side : sides) {
            for (ShaftPart part : ShaftPart.values()) {
                part(part.words(), side.word(), strength.shaft(side).capacity(part));
            }
        }
        for (SharedPart part : SharedPart.values()) {
            part(part.words(), "both", strength.capacity(part));
        }
        json.writeEndArray();
    }

    private void part(String words, String side, OptionalDouble capacity) throws IOException {
        if (capacity.isEmpty()) {
            return;
        }
        json.writeStartObject();
        json.writeStringField("part", words);
        json.writeStringField("side", side);
        number("torque_nm", capacity);
        number("factor", strength.factor(capacity));
        json.writeEndObject();
    }

    private void number(String name, OptionalDouble value) throws IOException {
        JsonReport.number(json, name, value.orElse(Double.NaN));
    }
}
