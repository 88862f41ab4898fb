package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.journal.LogNotWritten;
import buzzout.journal.LogProblem;
import buzzout.journal.ResumedLog;
import buzzout.journal.SessionLog;
import buzzout.journal.WrittenTime;
import buzzout.probe.Printable;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Stage;
import java.io.Closeable;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A session taken up again from its log, which goes on in the same file. */
record Resumption(LoadedPlan loaded, Optional<String> unit, Journal journal, Past past) implements Closeable {
    private static final int MOST_QUOTED = 120;

    /** @param plan what the person says the plan is; it must be the log's */
    static Resumption of(Surroundings surroundings, String name, Optional<LoadedPlan> plan)
            throws Failure, LogNotWritten {
        ResumedLog resumed = ResumedLog.open(surroundings.resolve(name));
        try {
            for (LogProblem problem : resumed.file().problems()) {
                surroundings.console().complain(problem.toString());
            }
            SessionLog log = resumed.file()
                    .log()
                    .orElseThrow(() -> new Failure(Status.USAGE, name + ": there is nothing here to go on with."));
            if (plan.isPresent() && !plan.get().plan().equals(log.plan())) {
                throw new Failure(
                        Status.USAGE,
                        name + ": this session was held with another plan than "
                                + plan.get().fileName()
                                + "; leave the plan out to go on with the log's own, or begin a new session.");
            }
            return goneOn(surroundings, name, resumed, log);
        } catch (Failure | LogNotWritten | RuntimeException e) {
            resumed.close();
            throw e;
        }
    }

    private static Resumption goneOn(Surroundings surroundings, String name, ResumedLog resumed, SessionLog log)
            throws LogNotWritten {
        OffsetDateTime now = surroundings.now().truncatedTo(ChronoUnit.SECONDS);
        Past past = Past.of(log, now);
        ResumedLog.Continued on = resumed.goOn(log.plan());
        List<Event> joint = joint(log, past.millis(), note(now, on.tornLine()));
        on.journal().append(joint);
        List<Event> events = new ArrayList<>(log.events());
        events.addAll(joint);
        LoadedPlan loaded = new LoadedPlan(
                log.plan(), log.header().planFile().orElse(name), log.header().planText(), false);
        return new Resumption(
                loaded, log.header().unit(), on.journal(), new Past(events, past.millis(), past.micros()));
    }

    /** What stands between both parts: whatever was going on is over, and the probe must be found again. */
    private static List<Event> joint(SessionLog log, long millis, String note) {
        List<Event> joint = new ArrayList<>();
        joint.add(new Event.ByPerson(millis, new Action.Noted(note)));
        joint.add(new Event.FromProbe(
                millis, new ProbeEvent.LinkLost("The session goes on; it waits for the probe to answer.")));
        if (log.replayed().stage() != Stage.ENDED) {
            joint.add(new Event.ByPerson(millis, new Action.Ended()));
        }
        return joint;
    }

    private static String note(OffsetDateTime now, Optional<String> torn) {
        return "Taken up again " + WrittenTime.of(now) + " by Buzzout " + Version.NUMBER
                + torn.map(line -> "; the last line was torn and was cut off: "
                                + Printable.of(line.length() > MOST_QUOTED ? line.substring(0, MOST_QUOTED) : line))
                        .orElse("");
    }

    @Override
    public void close() throws LogNotWritten {
        journal.close();
    }
}
