package buzzout.report;

import buzzout.circuit.Fault;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.NextStep;
import buzzout.diagnosis.Step;
import buzzout.diagnosis.Suspect;
import buzzout.journal.LogProblem;
import buzzout.journal.OneLineJson;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Findings as JSON: format {@code buzzout-diagnosis}, version 1, as DIAGNOSIS-JSON.md describes it. */
public final class DiagnosisJson {
    public static final String FORMAT = "buzzout-diagnosis";
    public static final int VERSION = 1;

    private static final double DECIMALS = 1e4;

    private DiagnosisJson() {}

    /** One document on one line, without a line break. */
    public static String of(String log, Optional<Outcome> outcome, List<LogProblem> problems) {
        JsonObject document = new JsonObject();
        document.addProperty("format", FORMAT);
        document.addProperty("version", VERSION);
        document.addProperty("log", log);
        document.addProperty(
                "verdict", outcome.map(known -> known.verdict().word()).orElse("unreadable"));
        outcome.ifPresent(known -> put(document, known));
        document.add(
                "problems",
                JsonValues.texts(problems.stream().map(LogProblem::toString).toList()));
        return OneLineJson.of(document);
    }

    private static void put(JsonObject document, Outcome outcome) {
        Plan plan = outcome.plan();
        document.addProperty("board", plan.name());
        document.add("unit", JsonValues.orNull(outcome.unit()));
        document.add("started", JsonValues.time(outcome.started()));
        List<KeyState> states = outcome.session().states();
        document.add("states", counts(states));
        document.add("keys", keys(plan, states));
        JsonArray findings = new JsonArray();
        outcome.diagnosis().findings().forEach(finding -> findings.add(finding(plan, finding)));
        document.add("findings", findings);
        JsonArray next = new JsonArray();
        outcome.diagnosis().next().forEach(step -> next.add(next(plan, step)));
        document.add("next", next);
        document.addProperty("unexplored", rounded(outcome.diagnosis().unexplored()));
        document.add("troubles", JsonValues.texts(outcome.diagnosis().troubles()));
        document.add("flexed", HeldJson.flexed(plan, outcome.session().flex()));
        document.add("together", HeldJson.together(outcome.session()));
        document.add("bounce", BounceJson.of(plan, outcome.session().bounces()));
    }

    private static JsonObject counts(List<KeyState> states) {
        JsonObject counts = new JsonObject();
        for (KeyState state : KeyState.values()) {
            counts.addProperty(state.word(), Collections.frequency(states, state));
        }
        return counts;
    }

    private static JsonObject keys(Plan plan, List<KeyState> states) {
        JsonObject words = new JsonObject();
        for (Key key : plan.keys()) {
            words.addProperty(key.name(), states.get(key.index()).word());
        }
        return words;
    }

    private static JsonObject finding(Plan plan, Finding finding) {
        JsonObject object = new JsonObject();
        object.addProperty("probability", rounded(finding.probability()));
        object.add("suspects", suspects(plan, finding.suspects()));
        object.add("otherwise", suspects(plan, finding.otherwise()));
        object.add("because", JsonValues.texts(finding.because()));
        object.add("settle", JsonValues.orNull(finding.settle()));
        object.addProperty("repair", finding.first().fault().repair(plan));
        return object;
    }

    private static JsonObject next(Plan plan, NextStep next) {
        JsonObject object = new JsonObject();
        if (next.step() instanceof Step.Press press) {
            object.addProperty("step", "press");
            object.addProperty("key", plan.keys().get(press.key()).name());
        } else if (next.step() instanceof Step.Touch touch) {
            object.addProperty("step", "touch");
            object.addProperty("net", plan.nets().get(touch.joint().net(plan)).name());
            object.addProperty("key", plan.keys().get(touch.joint().key()).name());
        } else {
            object.addProperty("step", "measure");
        }
        object.addProperty("says", next.says());
        object.addProperty("effort", rounded(next.effort()));
        return object;
    }

    private static JsonArray suspects(Plan plan, List<Suspect> suspects) {
        JsonArray array = new JsonArray();
        suspects.forEach(suspect -> array.add(suspect(plan, suspect)));
        return array;
    }

    private static JsonObject suspect(Plan plan, Suspect suspect) {
        Fault fault = suspect.fault();
        JsonObject object = new JsonObject();
        object.addProperty("code", fault.code(plan));
        object.addProperty("kind", fault.kind().code());
        object.addProperty("says", fault.says(plan));
        object.addProperty("repair", fault.repair(plan));
        object.addProperty("probability", rounded(suspect.probability()));
        return object;
    }

    private static double rounded(double probability) {
        return Math.round(probability * DECIMALS) / DECIMALS;
    }
}
