package buzzout.report;

import buzzout.journal.OneLineJson;
import buzzout.session.KeyState;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** Batches as JSON: format {@code buzzout-history}, version 1, as HISTORY-JSON.md describes it. */
public final class BatchJson {
    public static final String FORMAT = "buzzout-history";
    public static final int VERSION = 1;

    private static final MathContext DIGITS = new MathContext(4);

    private BatchJson() {}

    /**
     * One document on one line, without a line break.
     *
     * @param problems what could not be used of the logs
     */
    public static String of(List<Batch> batches, List<String> problems) {
        JsonObject document = new JsonObject();
        document.addProperty("format", FORMAT);
        document.addProperty("version", VERSION);
        JsonArray boards = new JsonArray();
        batches.forEach(batch -> boards.add(board(batch)));
        document.add("boards", boards);
        document.add("problems", JsonValues.texts(problems));
        return OneLineJson.of(document);
    }

    private static JsonObject board(Batch batch) {
        JsonObject object = new JsonObject();
        object.addProperty("board", batch.board());
        object.addProperty("tested", batch.units().size());
        object.addProperty("passed", batch.passed());
        object.addProperty("passedAtFirstTry", batch.count(UnitHistory.Standing.PASSED_AT_FIRST_TRY));
        object.addProperty("open", batch.count(UnitHistory.Standing.OPEN));
        JsonArray units = new JsonArray();
        batch.units().forEach(unit -> units.add(unit(unit)));
        object.add("units", units);
        JsonObject kinds = new JsonObject();
        batch.faultsByKind().forEach((kind, count) -> kinds.addProperty(kind.code(), count));
        object.add("faultsByKind", kinds);
        JsonArray again = new JsonArray();
        batch.again().forEach(place -> again.add(again(place)));
        object.add("again", again);
        JsonArray priors = new JsonArray();
        ProposedPrior.of(batch).forEach(prior -> priors.add(prior(prior)));
        object.add("priors", priors);
        object.add(
                "unmarked",
                JsonValues.texts(batch.unmarked().stream().map(WeighedLog::name).toList()));
        return object;
    }

    private static JsonObject unit(UnitHistory unit) {
        JsonObject object = new JsonObject();
        object.addProperty("unit", unit.unit());
        object.addProperty("standing", unit.standing().words());
        object.add("notGood", JsonValues.texts(unit.notGood()));
        object.add("untested", JsonValues.texts(unit.keys(KeyState.UNTESTED)));
        JsonArray sessions = new JsonArray();
        unit.sessions().forEach(log -> sessions.add(session(log)));
        object.add("sessions", sessions);
        JsonArray faults = new JsonArray();
        unit.faults().forEach(fault -> faults.add(fault(fault)));
        object.add("faults", faults);
        return object;
    }

    static JsonObject session(WeighedLog log) {
        JsonObject object = new JsonObject();
        object.addProperty("log", log.name());
        object.add("started", JsonValues.time(log.started()));
        object.addProperty("verdict", log.outcome().verdict().word());
        return object;
    }

    private static JsonObject fault(FaultFound fault) {
        JsonObject object = new JsonObject();
        object.addProperty("code", fault.code());
        object.addProperty("kind", fault.kind().code());
        object.addProperty("says", fault.says());
        object.addProperty("settled", fault.settled());
        object.addProperty("times", fault.times());
        return object;
    }

    private static JsonObject again(Batch.Again place) {
        JsonObject object = new JsonObject();
        object.addProperty("code", place.code());
        object.addProperty("says", place.says());
        object.add("units", JsonValues.texts(place.units()));
        object.addProperty("times", place.times());
        return object;
    }

    private static JsonObject prior(ProposedPrior prior) {
        JsonObject object = new JsonObject();
        object.addProperty("kind", prior.kind().code());
        object.addProperty("found", prior.found());
        object.addProperty("places", prior.places());
        object.addProperty("judged", rounded(prior.judged()));
        object.addProperty("proposed", rounded(prior.proposed()));
        object.addProperty("low", rounded(prior.low()));
        object.addProperty("high", rounded(prior.high()));
        return object;
    }

    private static BigDecimal rounded(double probability) {
        return new BigDecimal(probability).round(DIGITS).stripTrailingZeros();
    }
}
