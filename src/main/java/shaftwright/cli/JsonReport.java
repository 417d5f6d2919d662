package shaftwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.doubt.SlackChances;
import shaftwright.filling.Filling;
import shaftwright.jobs.ScenarioTexts;
import shaftwright.joint.Joint;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideLinkage;
import shaftwright.reading.SidePath;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.ViewAngles;
import shaftwright.shaft.WheelMove;
import shaftwright.study.CardPrint;
import shaftwright.study.Cautions;
import shaftwright.study.Finding;
import shaftwright.study.Price;
import shaftwright.study.SetCost;
import shaftwright.study.StopsAlone;
import shaftwright.study.Verdict;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.NextReading;
import shaftwright.suspension.OffsetEstimate;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.suspension.SuspectReading;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelRange;
import shaftwright.units.LengthUnit;

/**
 * Results as JSON. Keys stay as they are while {@code contract} does; new ones may be added.
 *
 * <pre>
 * contract, file, unit
 * inputs      name: text, number or list, as typed; what --inputs reads
 * scenarios   used ones, each:
 *   letter, name, verdict
 *   left, right (what --side leaves):
 *     finding   the gravest finding's name (see shaftwright.study.Finding), FITS when there is none
 *     verdict   all findings in one text; end_to_end_mm and what follows are missing while it has
 *               no shaft to tell of
 *     findings  the gravest first: name, severity (No verdict, Does not fit, Measure again before
 *               cutting or Fits, but), sentence; empty when it fits
 *     card      what the findings let the shop card print: NOTHING (do not cut), WINDOW, LENGTHS,
 *               ALL_WITH_NOTE or ALL; the numbers stand below whatever it says
 *     end_to_end_mm, clip_to_clip_mm, race_spacing_mm
 *     shortest_end_to_end_mm, longest_end_to_end_mm, window_mm (negative: short by)
 *     blank (null: none), inner_cut_mm, outer_cut_mm, inner_stub_mm, outer_stub_mm,
 *     inner_groove, outer_groove (NEW or EXISTING), inner_groove_outer_wall_mm, …_inner_wall_mm,
 *     inner_old_groove_outer_wall_mm, … of an existing groove that is left beside a new one
 *     slack_in_mm, slack_in_travel_mm, slack_out_mm, slack_out_travel_mm, free_play_mm,
 *     plunge_used_mm, bump_mm, droop_mm (below zero)
 *     all_states  null where one state is asked for; else the shaft in all of them, which lengths,
 *                 window and slack above then go by: states (their names), shortest, longest (each
 *                 race_spacing_mm, clip_to_clip_mm, end_to_end_mm, travel_mm, state), window_mm,
 *                 slack_in, slack_out, free_play (each mm, travel_mm, state), inner_steepest,
 *                 outer_steepest (each rad, travel_mm, state), inner_ride_rad, outer_ride_rad
 *                 (hubs straight ahead), mouth (null, or mm, end, travel_mm, state)
 *     travel_up_mm, travel_down_mm (what the shaft allows from ride, both 0 or more),
 *     travel_up_stop, travel_down_stop (BOTTOMS, PULLS_OUT, SOFT_STOP, TOUCHES_CUP, INNER_ANGLE,
 *     OUTER_ANGLE, DAMPER_CLOSED, DAMPER_OPEN, STRAP_TIGHT, BUMP_STOP_FLAT, BOOT_TOUCHES,
 *     BOOT_LIMIT, HEIGHTS
 *     or LINKAGE: as far as readings or linkage go), travel_empty (whether a stop is met at ride already)
 *     stops_alone  where each thing would end the travel were it the only one, from ride: those that
 *                 are known of BOTTOMS, PULLS_OUT, SOFT_STOP, TOUCHES_CUP, INNER_ANGLE,
 *                 OUTER_ANGLE, RESTRAINT, BOOT, BOOT_LIMIT, GROUND, each up_mm, down_mm (null: not met as far
 *                 as the path is known)
 *     longest_travel  whatever travel is wanted, of any blank with margins kept: null, or
 *                 total_mm, up_mm, down_mm, up_stop, down_stop (the same words, MARGIN_INWARD and
 *                 MARGIN_OUTWARD for the first two), blank, end_to_end_mm, clip_to_clip_mm
 *     stopped_up_mm, stopped_down_mm, stopped_up_by, stopped_down_by (the same words; null: dampers
 *     and straps let all of the wanted travel), restraints (rows worked out over that travel: row,
 *     longest_mm, longest_travel_mm, shortest_mm, shortest_travel_mm), inner_boot_gap,
 *     outer_boot_gap (null: boot or tubes not known; else tube_row, least_mm (negative: they
 *     touch), travel_mm, ride_mm)
 *     inner_spline_compared (whether more than the count was; null: no blank), inner_flange (null:
 *     nothing known of joint and flange; else differs (null, CIRCLE, COUNT, SIZE or PILOT), joint,
 *     flange (mm or a count), adapter (whether a cup spacer is taken for one)), inner_boot (null:
 *     neither seats nor angle known; else over travel and float shortest_fibre_mm,
 *     longest_fibre_mm, angle_rad, takes_shortest_mm, takes_longest_mm, takes_angle_rad, strain
 *     (null, TOO_SHORT, TOO_LONG or BENT_TOO_FAR), over (mm or rad), travel_mm); outer_…
 *     inner_angle_bump_rad, …_ride_rad, …_droop_rad, …_limit_rad, …_running_limit_rad; outer_…
 *     positions   from droop to bump: travel_mm, distance_mm, slack_in_mm, slack_out_mm,
 *                 free_play_mm, doubt_mm, inner_angle_rad, outer_angle_rad, and of these
 *                 angles in front view (shaft rising outward +) and in plan (shaft running
 *                 forward +) inner_front_rad, inner_plan_rad, outer_front_rad, outer_plan_rad;
 *                 camber_rad, toe_rad, wheel_rise_mm (wheel centre above ride), track_mm (this
 *                 side's part of the change of track from ride)
 *     derivation  with --explain only, how the length came about: steps in order, each step (see
 *                 shaftwright.study.DerivationStep), words, formula, figures (of: the end or the
 *                 limiting position that it belongs to; mm, rad, number or count)
 *   tyre_diameter_mm, clearance_ride_mm, clearance_bump_mm, track_mm, overall_width_mm
 *   cost   in the builder's currency: shafts, joints, boots, total, spares (each null where a blank
 *             or a price is missing), not_priced (what the total lacks: shafts, joints, boots)
 *   strength  of one shaft: torque_engine_nm, torque_clutch_nm, torque_grip_nm,
 *             torque_landing_nm, torque_reversing_nm (null: no larger ratio), torque_braking_nm
 *             (null: brakes not inboard), torque_needed_nm (with the shock factor), weakest_part
 *             (null: none known), least_factor, parts: part, side (left, right or both), torque_nm,
 *             factor, of those known; left, right: twist_rad, critical_rpm, inner_life_h,
 *             outer_life_h, inner_rpm_degrees, outer_rpm_degrees; fatigue: reversed_nm,
 *             repeated_nm (without shock), most_tired (null: none known), least_factor, sections
 *             (section, side, notch_factor, factor, notch_on_mean, of those known), caution
 *   in left and right: own_linkage  null, or of a scenario with pick-up points of its own:
 *             length_error_mm, angle_error_rad (its curves off that linkage)
 *   in left and right: chances  null when no trials were asked for; else trials, bottoming,
 *             bottoming_at_bump, bottoming_at_droop, pull_out, pull_out_at_bump,
 *             pull_out_at_droop (each 0 to 1), window_mean_mm, window_spread_mm
 * paths       left, right (what --side leaves):
 *   source    measured or linkage
 *   low_mm, high_mm (travel that it covers), doubt_ride_mm
 *   contradiction  whether the readings contradict each other, placed or not
 *   suspect_rows   numbers of the rows, as typed, whose distance or height the others speak against
 *   suspects  all readings that they speak against: row, quantity (distance, fore_aft, camber or
 *             toe), repeat (which reading of the row's distance is mistyped; null: the row's as a
 *             whole), read_mm, expected_mm (angles: read_rad, expected_rad)
 *   linkage   null when there is none; else low_mm, high_mm, length_error_mm, angle_error_rad
 *             (curves off the linkage), readings (null, or how tape and linkage agree: rows,
 *             left_out (suspect rows), agreement WITHIN_TAPE, WITH_OFFSETS or DIFFERENT, off_mm, tape_mm,
 *             off_with_offsets_mm, flange_out_mm, flange_up_mm, datum_out_mm (null: not told alone)
 *             and of each …_uncertainty_mm (one standard uncertainty), together (what is told of
 *             several: coefficients flange_out, flange_up, datum_out of the sum, its value_mm,
 *             uncertainty_mm), singular_values)
 *   restraints  dampers, straps and bump stops that could be worked out: row, name, kind (DAMPER,
 *             STRAP or BUMP_STOP), closed_mm, open_mm, length_ride_mm, length_per_height (negative:
 *             shorter in bump), stops_up_mm, stops_down_mm (null: it does not)
 * warnings    sentences on what is doubtful, cell by cell
 * caution     what to keep in mind beside every verdict, in one line
 * </pre>
 *
 * A number that is not known is null. A comparison gives contract, file and books: one such object
 * for each sizing workbook in it.
 */
final class JsonReport {
    static final String CONTRACT = "contract";
    static final String FILE = "file";

    private final String file;
    private final List<Problem> problems;
    private final Sizing sizing;
    private final List<Side> sides;
    private final List<ScenarioOutcome> scenarios;
    private final Explained explained;
    private JsonGenerator json;

    JsonReport(
            String file, Filling.Report report, List<Side> sides, List<ScenarioOutcome> scenarios) {
        this(
                file,
                report.problems(),
                report.sizing().orElseThrow(),
                sides,
                scenarios,
                Explained.NOTHING);
    }

    private JsonReport(
            String file,
            List<Problem> problems,
            Sizing sizing,
            List<Side> sides,
            List<ScenarioOutcome> scenarios,
            Explained explained) {
        this.file = file;
        this.problems = problems;
        this.sizing = sizing;
        this.sides = sides;
        this.scenarios = scenarios;
        this.explained = explained;
    }

    /** What is said of how figures came about. */
    private enum Explained {
        NOTHING,
        LENGTHS
    }

    /** The same with how each length came about. */
    JsonReport withDerivations() {
        return new JsonReport(file, problems, sizing, sides, scenarios, Explained.LENGTHS);
    }

    /** Writes it; the stream stays open. */
    void print(OutputStream out) throws IOException {
        try (JsonGenerator generator = generator(out)) {
            object(generator);
        }
        newLine(out);
    }

    /** Writes those of a comparison as one object; the stream stays open. */
    static void printBooks(OutputStream out, String file, List<JsonReport> books)
            throws IOException {
        try (JsonGenerator generator = generator(out)) {
            generator.writeStartObject();
            generator.writeNumberField(CONTRACT, Contract.VERSION);
            generator.writeStringField(FILE, file);
            generator.writeArrayFieldStart("books");
            for (JsonReport book : books) {
                book.object(generator);
            }
            generator.writeEndArray();
            generator.writeEndObject();
        }
        newLine(out);
    }

    private static JsonGenerator generator(OutputStream out) throws IOException {
        JsonFactory factory =
                JsonFactory.builder()
                        .configure(StreamWriteFeature.AUTO_CLOSE_TARGET, false)
                        .build();
        return factory.createGenerator(out).useDefaultPrettyPrinter();
    }

    private static void newLine(OutputStream out) throws IOException {
        out.write(System.lineSeparator().getBytes(StandardCharsets.UTF_8));
    }

    private void object(JsonGenerator generator) throws IOException {
        json = generator;
        json.writeStartObject();
        json.writeNumberField(CONTRACT, Contract.VERSION);
        json.writeStringField(FILE, file);
        json.writeStringField("unit", sizing.unit() == LengthUnit.INCH ? "inch" : "mm");
        inputs();
        json.writeArrayFieldStart("scenarios");
        for (ScenarioOutcome scenario : scenarios) {
            scenario(scenario);
        }
        json.writeEndArray();
        paths();
        json.writeArrayFieldStart("warnings");
        for (Problem problem : problems) {
            json.writeString(problem.toString());
        }
        json.writeEndArray();
        json.writeStringField("caution", Cautions.LINE);
        json.writeEndObject();
    }

    private void inputs() throws IOException {
        json.writeObjectFieldStart("inputs");
        for (String name : Contract.definedNames()) {
            Input input = Contract.named(name);
            List<String> texts = sizing.inputs().typed(name);
            json.writeFieldName(name);
            if (input.grid().rows() == 1 && !input.grid().perScenario()) {
                typed(input, texts.isEmpty() ? "" : texts.get(0));
            } else {
                json.writeStartArray();
                for (String text : texts) {
                    typed(input, text);
                }
                json.writeEndArray();
            }
        }
        json.writeEndObject();
    }

    /** A length is always a text, since most are: a reader need not tell two cases apart. */
    private void typed(Input input, String text) throws IOException {
        if (input.kind().numeric() && input.kind() != InputKind.LENGTH && !text.isEmpty()) {
            json.writeNumber(text);
        } else {
            json.writeString(text);
        }
    }

    private void paths() throws IOException {
        json.writeObjectFieldStart("paths");
        for (Side side : sides) {
            SidePath path = sizing.path(side);
            json.writeObjectFieldStart(side.word());
            json.writeStringField("source", path.linkage().isChosen() ? "linkage" : "measured");
            boolean known = path.chosen().isPresent();
            number("low_mm", known ? path.chosen().get().tMin() : Double.NaN);
            number("high_mm", known ? path.chosen().get().tMax() : Double.NaN);
            number("doubt_ride_mm", known ? path.chosen().get().at(0).doubt() : Double.NaN);
            if (path.linkage().path().isPresent()) {
                linkage(path.linkage(), path.linkage().path().get());
            } else {
                json.writeNullField("linkage");
            }
            contradiction(path.readings().contradiction());
            next(path.readings().path().flatMap(MeasuredPath::nextReading));
            MockUpReport.write(json, sizing.mockUp(side));
            new RestraintReport(json).rows(path.restraints());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void contradiction(Optional<ReadingContradiction> found) throws IOException {
        json.writeBooleanField("contradiction", found.isPresent() && found.get().exists());
        json.writeArrayFieldStart("suspect_rows");
        for (int row : found.map(ReadingContradiction::suspectRows).orElse(List.of())) {
            json.writeNumber(row);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("suspects");
        for (SuspectReading suspect : found.map(ReadingContradiction::suspects).orElse(List.of())) {
            String unit = suspect.quantity().isAngle() ? "_rad" : "_mm";
            json.writeStartObject();
            json.writeNumberField("row", suspect.row());
            json.writeStringField("quantity", suspect.quantity().name().toLowerCase(Locale.ROOT));
            if (suspect.isRepeat()) {
                json.writeNumberField("repeat", suspect.repeat());
            } else {
                json.writeNullField("repeat");
            }
            number("read" + unit, suspect.read());
            number("expected" + unit, suspect.expected());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void next(Optional<NextReading> found) throws IOException {
        if (found.isEmpty()) {
            json.writeNullField("next_reading");
            return;
        }
        NextReading next = found.get();
        json.writeObjectFieldStart("next_reading");
        number("height_mm", next.height());
        number("doubt_largest_mm", next.doubt());
        number("doubt_largest_then_mm", next.doubtThen());
        json.writeEndObject();
    }

    private void linkage(SideLinkage linkage, LinkagePath path) throws IOException {
        json.writeObjectFieldStart("linkage");
        number("low_mm", path.path().tMin());
        number("high_mm", path.path().tMax());
        number("length_error_mm", path.lengthError());
        number("angle_error_rad", path.angleError());
        if (linkage.calibration().isPresent()) {
            calibration(linkage.calibration().get());
        } else {
            json.writeNullField("readings");
        }
        json.writeEndObject();
    }

    private void calibration(Calibration calibration) throws IOException {
        json.writeObjectFieldStart("readings");
        json.writeNumberField("rows", calibration.rows());
        json.writeArrayFieldStart("left_out");
        for (int row : calibration.leftOut()) {
            json.writeNumber(row);
        }
        json.writeEndArray();
        json.writeStringField("agreement", calibration.agreement().name());
        number("off_mm", calibration.offBefore());
        number("tape_mm", calibration.tape());
        number("off_with_offsets_mm", calibration.offAfter());
        offset("flange_out", calibration.flangeOut());
        offset("flange_up", calibration.flangeUp());
        offset("datum_out", calibration.datumOut());
        json.writeArrayFieldStart("together");
        for (OffsetEstimate together : calibration.together()) {
            json.writeStartObject();
            number("flange_out", together.flangeOut());
            number("flange_up", together.flangeUp());
            number("datum_out", together.datumOut());
            number("value_mm", together.value());
            number("uncertainty_mm", together.uncertainty());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("singular_values");
        for (double value : calibration.singularValues()) {
            json.writeNumber(value);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** What the readings don't tell has no number. */
    private void offset(String name, OffsetEstimate offset) throws IOException {
        number(name + "_mm", offset.isTold() ? offset.value() : Double.NaN);
        number(name + "_uncertainty_mm", offset.uncertainty());
    }

    private void ownLinkage(Optional<SidePath> own) throws IOException {
        Optional<LinkagePath> path = own.flatMap(points -> points.linkage().path());
        if (path.isEmpty()) {
            json.writeNullField("own_linkage");
            return;
        }
        json.writeObjectFieldStart("own_linkage");
        number("length_error_mm", path.get().lengthError());
        number("angle_error_rad", path.get().angleError());
        json.writeEndObject();
    }

    private void scenario(ScenarioOutcome scenario) throws IOException {
        ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
        json.writeStartObject();
        json.writeStringField("letter", scenario.letter());
        json.writeStringField("name", texts.name());
        json.writeStringField("verdict", texts.verdict());
        for (Side side : sides) {
            json.writeObjectFieldStart(side.word());
            Optional<Verdict> verdict = sizing.verdict(new Index(side, scenario.number(), 0));
            json.writeStringField("finding", finding(verdict));
            json.writeStringField("verdict", texts.verdict(side));
            findings(verdict);
            json.writeStringField(
                    "card", verdict.map(Verdict::card).orElse(CardPrint.NOTHING).name());
            ownLinkage(sizing.ownPath(side, scenario.number()));
            MockUpReport.writeUse(json, scenario, side);
            Optional<SideResult> found = scenario.side(side).result();
            if (found.isPresent()) {
                SideResult result = found.get();
                shaft(result);
                slack(result);
                new StatesReport(json).write(result);
                allowed(scenario.side(side).travelAllowed().orElseThrow());
                alone(scenario.side(side).stopsAlone().orElseThrow());
                longest(scenario.side(side).longestTravel());
                new RestraintReport(json)
                        .stops(scenario.side(side), sizing.path(side).restraints());
                new MatingReport(json, sizing).side(result);
                chances(scenario.side(side).chances());
                angles(ShaftEnd.INNER, result);
                angles(ShaftEnd.OUTER, result);
                positions(result, scenario.wheelArm());
                if (explained == Explained.LENGTHS) {
                    derivation(new Index(side, scenario.number(), 0));
                }
            }
            json.writeEndObject();
        }
        vehicle(scenario);
        new StrengthReport(json, scenario.strength(), sides).write();
        json.writeEndObject();
    }

    private void derivation(Index index) throws IOException {
        new DerivationReport(json, sizing.derivation(index).orElseThrow()).write();
    }

    /** Name of the gravest finding. */
    private static String finding(Optional<Verdict> verdict) {
        if (verdict.isEmpty()) {
            return "UNUSED";
        }
        return verdict.get().leading().map(Finding::name).orElse("FITS");
    }

    private void findings(Optional<Verdict> verdict) throws IOException {
        json.writeArrayFieldStart("findings");
        if (verdict.isPresent()) {
            for (Finding finding : verdict.get().findings()) {
                json.writeStartObject();
                json.writeStringField("name", finding.name());
                json.writeStringField("severity", finding.severity().words());
                json.writeStringField("sentence", verdict.get().sentence(finding, sizing.unit()));
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private void chances(Optional<SlackChances> counted) throws IOException {
        if (counted.isEmpty()) {
            json.writeNullField("chances");
            return;
        }
        SlackChances chances = counted.get();
        json.writeObjectFieldStart("chances");
        json.writeNumberField("trials", chances.trials());
        number("bottoming", chances.bottoming());
        number("bottoming_at_bump", chances.bottomingAtBump());
        number("bottoming_at_droop", chances.bottomingAtDroop());
        number("pull_out", chances.pullOut());
        number("pull_out_at_bump", chances.pullOutAtBump());
        number("pull_out_at_droop", chances.pullOutAtDroop());
        number("window_mean_mm", chances.windowMean());
        number("window_spread_mm", chances.windowSpread());
        json.writeEndObject();
    }

    private void shaft(SideResult r) throws IOException {
        number("end_to_end_mm", r.length().endToEnd());
        number("clip_to_clip_mm", r.length().clipToClip());
        number("race_spacing_mm", r.length().spacing());
        number("shortest_end_to_end_mm", r.choice().shortest().endToEnd());
        number("longest_end_to_end_mm", r.choice().longest().endToEnd());
        number("window_mm", r.window().width());
        Optional<CutPlan> plan = r.plan();
        if (plan.isEmpty()) {
            json.writeNullField("blank");
        } else {
            json.writeStringField("blank", plan.get().blank().name());
            json.writeStringField("blank_treatment", plan.get().blank().treatment().words());
            end("inner", plan.get().inner());
            end("outer", plan.get().outer());
        }
    }

    private void end(String which, EndCut cut) throws IOException {
        number(which + "_cut_mm", cut.cut());
        number(which + "_stub_mm", cut.stub());
        json.writeStringField(which + "_groove", cut.groove().name());
        number(which + "_groove_outer_wall_mm", cut.outerWall());
        number(which + "_groove_inner_wall_mm", cut.innerWall());
        double outer = cut.oldGroove().map(GrooveWalls::outer).orElse(Double.NaN);
        double inner = cut.oldGroove().map(GrooveWalls::inner).orElse(Double.NaN);
        number(which + "_old_groove_outer_wall_mm", outer);
        number(which + "_old_groove_inner_wall_mm", inner);
    }

    private void slack(SideResult r) throws IOException {
        bound("slack_in", r.leastSlackIn());
        bound("slack_out", r.leastSlackOut());
        number("free_play_mm", r.leastFreePlay().value());
        number("plunge_used_mm", r.plungeUsed());
        number("bump_mm", r.setup().bump());
        number("droop_mm", r.setup().droop());
    }

    private void allowed(TravelRange range) throws IOException {
        number("travel_up_mm", range.up());
        json.writeStringField("travel_up_stop", range.upStop().name());
        number("travel_down_mm", range.down());
        json.writeStringField("travel_down_stop", range.downStop().name());
        json.writeBooleanField("travel_empty", range.empty());
    }

    private void alone(StopsAlone stops) throws IOException {
        json.writeObjectFieldStart("stops_alone");
        for (StopsAlone.Thing thing : StopsAlone.Thing.values()) {
            Optional<StopAlone> alone = stops.of(thing);
            if (alone.isPresent()) {
                json.writeObjectFieldStart(thing.name());
                number("up_mm", alone.get().up());
                number("down_mm", alone.get().down());
                json.writeEndObject();
            }
        }
        json.writeEndObject();
    }

    private void longest(Optional<LongestTravel> found) throws IOException {
        if (found.isEmpty()) {
            json.writeNullField("longest_travel");
            return;
        }
        LongestTravel longest = found.get();
        TravelRange range = longest.range();
        json.writeObjectFieldStart("longest_travel");
        number("total_mm", range.total());
        number("up_mm", range.up());
        json.writeStringField("up_stop", range.upStop().name());
        number("down_mm", range.down());
        json.writeStringField("down_stop", range.downStop().name());
        json.writeStringField("blank", longest.plan().blank().name());
        number("end_to_end_mm", longest.plan().length().endToEnd());
        number("clip_to_clip_mm", longest.plan().length().clipToClip());
        json.writeEndObject();
    }

    private void bound(String name, Binding binding) throws IOException {
        number(name + "_mm", binding.value());
        number(name + "_travel_mm", binding.travel());
    }

    private void angles(ShaftEnd end, SideResult r) throws IOException {
        Joint joint = r.setup().joint(end).joint();
        String name = end.word() + "_angle_";
        number(name + "bump_rad", r.atBump().angle(end));
        number(name + "ride_rad", r.atRide().angle(end));
        number(name + "droop_rad", r.atDroop().angle(end));
        number(name + "limit_rad", joint.angleMax());
        number(name + "running_limit_rad", joint.angleContinuous());
    }

    private void positions(SideResult r, double wheelArm) throws IOException {
        json.writeArrayFieldStart("positions");
        for (FittedPosition position : r.fitted()) {
            json.writeStartObject();
            number("travel_mm", position.travel());
            number("distance_mm", position.position().distance());
            number("slack_in_mm", position.slackIn());
            number("slack_out_mm", position.slackOut());
            number("free_play_mm", position.freePlay());
            number("doubt_mm", position.position().doubt());
            number("inner_angle_rad", position.innerAngle());
            number("outer_angle_rad", position.outerAngle());
            views("inner", position.views(ShaftEnd.INNER));
            views("outer", position.views(ShaftEnd.OUTER));
            HubPoint hub = position.position().hub();
            number("camber_rad", hub.camber());
            number("toe_rad", hub.toe());
            WheelMove wheel = WheelMove.of(r.atRide().position().hub(), hub, wheelArm);
            number("wheel_rise_mm", wheel.rise());
            number("track_mm", wheel.outward());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void views(String end, ViewAngles angles) throws IOException {
        number(end + "_front_rad", angles.front());
        number(end + "_plan_rad", angles.plan());
    }

    private void vehicle(ScenarioOutcome scenario) throws IOException {
        number("tyre_diameter_mm", scenario.tyreDiameter());
        number("clearance_ride_mm", scenario.clearanceAtRide());
        number("clearance_bump_mm", scenario.clearanceAtBump());
        number("track_mm", scenario.track());
        number("overall_width_mm", scenario.overallWidth());
        SetCost cost = scenario.cost();
        json.writeObjectFieldStart("cost");
        price("shafts", cost.shafts());
        price("joints", cost.joints());
        price("boots", cost.boots());
        price("total", cost.total());
        price("spares", cost.spares());
        json.writeArrayFieldStart("not_priced");
        for (String what : cost.missing()) {
            json.writeString(what);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void price(String name, Price price) throws IOException {
        number(name, price.amount().orElse(Double.NaN));
    }

    private void number(String name, double value) throws IOException {
        number(json, name, value);
    }

    /** JSON has neither infinities nor NaN. */
    static void number(JsonGenerator json, String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(name, value);
        } else {
            json.writeNullField(name);
        }
    }
}
