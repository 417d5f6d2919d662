package shaftwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.MockUpUse;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.StickReading;
import shaftwright.mockup.UnusableReading;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideMockUp;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CorrectionLine;
import shaftwright.study.MockUpWording;
import shaftwright.study.SideStudy;
import shaftwright.study.Wording;

/** Mock-up sticks beside the plan, for people and as JSON. */
final class MockUpReport {
    private MockUpReport() {}

    /** A paragraph on the sticks of these sides, nothing without any. */
    static void print(ResultPage page, Sizing sizing, List<Side> sides) {
        boolean any = false;
        for (Side side : sides) {
            String said = said(sizing, side);
            if (!said.isEmpty()) {
                if (!any) {
                    page.title("Mock-up");
                }
                any = true;
                page.row(side.word(), said);
                sizing.mockUp(side).check().ifPresent(check -> readings(page, sizing, check));
            }
        }
        if (any) {
            page.gap();
        }
    }

    private static String said(Sizing sizing, Side side) {
        SideMockUp mockUp = sizing.mockUp(side);
        if (!mockUp.trouble().isEmpty()) {
            return MockUpWording.NOT_COMPARED.formatted(mockUp.trouble());
        }
        return mockUp.check()
                .map(
                        check ->
                                "As scenario "
                                        + letter(mockUp)
                                        + ": "
                                        + MockUpWording.summary(check)
                                        + corrected(sizing, side, check))
                .orElse("");
    }

    private static String letter(SideMockUp mockUp) {
        return ScenarioOutcome.letter(mockUp.scenario().orElseThrow());
    }

    private static String corrected(Sizing sizing, Side side, MockUpCheck check) {
        List<String> letters =
                sizing.scenarios().stream()
                        .filter(scenario -> isCorrected(scenario, side))
                        .map(ScenarioOutcome::letter)
                        .toList();
        return letters.isEmpty()
                ? ""
                : " Corrects "
                        + String.join(", ", letters)
                        + ". "
                        + MockUpWording.correction(check, sizing.unit());
    }

    private static boolean isCorrected(ScenarioOutcome scenario, Side side) {
        return scenario.side(side)
                .study()
                .flatMap(SideStudy::mockUp)
                .filter(MockUpUse::corrects)
                .isPresent();
    }

    private static void readings(ResultPage page, Sizing sizing, MockUpCheck check) {
        for (UnusableReading each : check.unusable()) {
            page.item(
                    row(each.reading(), sizing)
                            + MockUpWording.NOT_USED
                            + MockUpWording.unusable(each, sizing.unit()));
        }
        for (StickComparison each : check.comparisons()) {
            page.item(row(each.reading(), sizing) + MockUpWording.said(each, sizing.unit()));
        }
    }

    private static String row(StickReading reading, Sizing sizing) {
        return "row "
                + (reading.row() + 1)
                + ", "
                + Wording.travel(reading.travel(), sizing.unit())
                + ": ";
    }

    /** A side's stick. */
    static void write(JsonGenerator json, SideMockUp mockUp) throws IOException {
        if (!mockUp.isTyped()) {
            json.writeNullField("mock_up");
            return;
        }
        json.writeObjectFieldStart("mock_up");
        json.writeStringField("trouble", mockUp.trouble());
        if (mockUp.scenario().isPresent()) {
            json.writeStringField("scenario", letter(mockUp));
        } else {
            json.writeNullField("scenario");
        }
        json.writeArrayFieldStart("readings");
        for (StickComparison each :
                mockUp.check().map(MockUpCheck::comparisons).orElse(List.of())) {
            json.writeStartObject();
            json.writeNumberField("row", each.reading().row() + 1);
            json.writeStringField("end", each.end().word());
            number(json, "travel_mm", each.reading().travel());
            number(json, "holes_mm", each.expected() + each.difference());
            number(json, "expected_mm", each.expected());
            number(json, "difference_mm", each.difference());
            number(json, "left_mm", each.left());
            number(json, "allowed_mm", each.allowed());
            json.writeBooleanField("contradicts", each.contradicts(false));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("unusable");
        for (UnusableReading each : mockUp.check().map(MockUpCheck::unusable).orElse(List.of())) {
            json.writeStartObject();
            json.writeNumberField("row", each.reading().row() + 1);
            json.writeStringField("flaw", each.flaw().name().toLowerCase(Locale.ROOT));
            number(json, "travel_mm", each.reading().travel());
            number(json, "holes_mm", each.longest());
            number(json, "most_mm", each.most());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (mockUp.check().isPresent()) {
            correction(json, mockUp.check().get());
        } else {
            json.writeNullField("correction");
        }
        json.writeEndObject();
    }

    private static void correction(JsonGenerator json, MockUpCheck check) throws IOException {
        json.writeObjectFieldStart("correction");
        line(json, "in", check.correction().inward());
        line(json, "out", check.correction().outward());
        number(json, "doubt_mm", check.correction().doubt());
        json.writeEndObject();
    }

    private static void line(JsonGenerator json, String end, Optional<CorrectionLine> read)
            throws IOException {
        if (read.isEmpty()) {
            json.writeNullField(end);
            return;
        }
        CorrectionLine line = read.get();
        json.writeObjectFieldStart(end);
        number(json, "low_travel_mm", line.from());
        number(json, "low_mm", line.at(line.from()));
        number(json, "high_travel_mm", line.to());
        number(json, "high_mm", line.at(line.to()));
        json.writeEndObject();
    }

    private static void number(JsonGenerator json, String name, double value) throws IOException {
        JsonReport.number(json, name, value);
    }

    /** Whether a scenario's window on a side is corrected by its stick. */
    static void writeUse(JsonGenerator json, ScenarioOutcome scenario, Side side)
            throws IOException {
        json.writeBooleanField("corrected_by_mock_up", isCorrected(scenario, side));
    }
}
