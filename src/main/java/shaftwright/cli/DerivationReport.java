package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import shaftwright.study.Derivation;
import shaftwright.study.DerivationLine;
import shaftwright.study.DerivationStep.Kind;
import shaftwright.study.DerivationStep.Topic;

/** How a side's length came about, as JSON; figures that are not known are left out. */
record DerivationReport(JsonGenerator json, Derivation derivation) {

    void write() throws IOException {
        json.writeArrayFieldStart("derivation");
        for (Topic topic : Topic.values()) {
            for (DerivationLine line : DerivationLine.of(topic)) {
                if (derivation.tells(line)) {
                    step(line);
                }
            }
        }
        json.writeEndArray();
    }

    private void step(DerivationLine line) throws IOException {
        json.writeStartObject();
        json.writeStringField("step", line.step().name());
        json.writeStringField("words", line.step().words());
        json.writeStringField("formula", line.step().formula());
        double[] figures = derivation.figures(line);
        json.writeArrayFieldStart("figures");
        for (int place = 0; place < DerivationLine.PLACES; place++) {
            if (!Double.isNaN(figures[place])) {
                figure(line, place, figures[place]);
            }
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void figure(DerivationLine line, int place, double figure) throws IOException {
        Topic topic = line.step().topic();
        json.writeStartObject();
        json.writeStringField("of", DerivationLine.isFirst(place) ? topic.first() : topic.second());
        json.writeNumberField(key(line.kind(place).orElseThrow()), figure);
        json.writeEndObject();
    }

    private static String key(Kind kind) {
        return switch (kind) {
            case LENGTH -> "mm";
            case ANGLE -> "rad";
            case NUMBER -> "number";
            case COUNT -> "count";
        };
    }
}
