package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.Boot;
import shaftwright.joint.BootStretch;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.BootStrain;
import shaftwright.study.MatingFacts.UnmatedFlange;

/** What of a side's parts goes together, as JSON. */
final class MatingReport {
    private final JsonGenerator json;
    private final Sizing sizing;

    MatingReport(JsonGenerator json, Sizing sizing) {
        this.json = json;
        this.sizing = sizing;
    }

    /** Both ends, each with what is known of it. */
    void side(SideResult result) throws IOException {
        for (ShaftEnd end : ShaftEnd.values()) {
            MountedJoint joint = result.setup().joint(end);
            spline(result, joint, end);
            flange(joint, end);
            boot(result, joint.boot(), end);
        }
    }

    private void spline(SideResult result, MountedJoint joint, ShaftEnd end) throws IOException {
        String name = end.word() + "_spline_compared";
        if (result.plan().isEmpty()) {
            json.writeNullField(name);
        } else {
            json.writeBooleanField(
                    name,
                    result.plan()
                            .get()
                            .blank()
                            .end(end)
                            .form()
                            .comparesWith(joint.joint().mating().spline()));
        }
    }

    private void flange(MountedJoint joint, ShaftEnd end) throws IOException {
        String name = end.word() + "_flange";
        BoltPattern flange = sizing.drivenFlange(end);
        if (!joint.joint().mating().bolts().comparesWith(flange)) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        Optional<UnmatedFlange> differs = UnmatedFlange.withoutAdapter(joint, flange);
        if (differs.isPresent()) {
            json.writeStringField("differs", differs.get().part().name());
            number("joint", differs.get().jointHas());
            number("flange", differs.get().flangeHas());
        } else {
            json.writeNullField("differs");
        }
        json.writeBooleanField("adapter", differs.isPresent() && joint.cupSpacer() > 0);
        json.writeEndObject();
    }

    private void boot(SideResult result, Boot boot, ShaftEnd end) throws IOException {
        String name = end.word() + "_boot";
        if (!boot.isJudged()) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        number("shortest_fibre_mm", result.shortestFibre(end));
        number("longest_fibre_mm", result.greatestOfBoot(end, BootStretch::longest).value());
        number("angle_rad", result.greatestOfBoot(end, BootStretch::angle).value());
        number("takes_shortest_mm", boot.shortestFibre().orElse(Double.NaN));
        number("takes_longest_mm", boot.longestFibre().orElse(Double.NaN));
        number("takes_angle_rad", boot.limits().angle().orElse(Double.NaN));
        Optional<BootStrain> strain = BootStrain.of(result, end);
        if (strain.isPresent()) {
            json.writeStringField("strain", strain.get().kind().name());
            number("over", strain.get().worst().value());
            number("travel_mm", strain.get().worst().travel());
        } else {
            json.writeNullField("strain");
        }
        json.writeEndObject();
    }

    private void number(String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(name, value);
        } else {
            json.writeNullField(name);
        }
    }
}
