package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Side;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.TorquePath;
import shaftwright.strength.WeakestPart;
import shaftwright.study.Cautions;
import shaftwright.study.FatiguePart;
import shaftwright.study.ShaftFatigue;
import shaftwright.study.ShaftPart;
import shaftwright.study.SharedPart;
import shaftwright.study.StrengthFacts;
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
        number("torque_reversing_nm", torques.reversing());
        number("torque_braking_nm", torques.braking());
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
            number("inner_life_h", strength.life(side, ShaftEnd.INNER));
            number("outer_life_h", strength.life(side, ShaftEnd.OUTER));
            number("inner_rpm_degrees", strength.speedAngle(side, ShaftEnd.INNER));
            number("outer_rpm_degrees", strength.speedAngle(side, ShaftEnd.OUTER));
            json.writeEndObject();
        }
        fatigue();
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

    private void fatigue() throws IOException {
        Optional<StrengthFacts.Weakest> tired = strength.mostTired();
        json.writeObjectFieldStart("fatigue");
        number("reversed_nm", cycle(strength.cycles().reversed()));
        number("repeated_nm", cycle(strength.cycles().repeated()));
        json.writeStringField("most_tired", tired.map(StrengthFacts.Weakest::part).orElse(null));
        number("least_factor", tired.stream().mapToDouble(StrengthFacts.Weakest::factor).findAny());
        json.writeArrayFieldStart("sections");
        for (Side side : sides) {
            for (FatiguePart part : FatiguePart.values()) {
                section(part, side, strength.fatigue(side));
            }
        }
        json.writeEndArray();
        json.writeStringField("caution", Cautions.FATIGUE);
        json.writeEndObject();
    }

    private static OptionalDouble cycle(double torque) {
        return torque > 0 ? OptionalDouble.of(torque) : OptionalDouble.empty();
    }

    private void section(FatiguePart part, Side side, ShaftFatigue fatigue) throws IOException {
        if (fatigue.factor(part).isEmpty()) {
            return;
        }
        json.writeStartObject();
        json.writeStringField("section", part.words());
        json.writeStringField("side", side.word());
        number("notch_factor", fatigue.notch(part));
        number("factor", fatigue.factor(part));
        json.writeBooleanField("notch_on_mean", fatigue.notchesMean());
        json.writeEndObject();
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
