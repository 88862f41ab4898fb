package buzzout.probe;

import buzzout.circuit.Pair;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * One side of the talk with a probe: lines and the time go in, lines to send and events come out. Knows no link and no
 * clock, so that a test can play any of it. All times are microseconds.
 */
final class Conversation {
    /** Silence after which a command is said again. */
    static final long RETRY = 500_000;

    /** Silence after which a probe that swept counts as gone; it beats every 250 ms. */
    static final long QUIET = 1_500_000;

    /** Bootloaders hold a board for some seconds after it is plugged in; only then is silence worth a word. */
    private static final int ASKED_OFTEN = 10;

    private static final int GARBAGE_PACE = 250_000;

    private enum Stage {
        ASKING,
        LISTING,
        SWEEPING,
        REFUSED
    }

    private final Plan plan;
    private final List<Handshake.Step> steps;
    private final ProbeClock clock = new ProbeClock();
    private final GarbageCount garbage = new GarbageCount(GARBAGE_PACE);
    private final PairWatch watch = new PairWatch(this::tell);

    private List<String> lines = new ArrayList<>();
    private List<ProbeEvent> events = new ArrayList<>();
    private Stage stage = Stage.ASKING;
    private Identity identity = new Identity(0, "", "", 0, 0);
    private String port = "";
    private int step;
    private int tries;
    private long deadline;
    private long lastHeard;
    private long unknown;

    /** The first line on a link may be the end of an old one. */
    private boolean mayBeCut;

    Conversation(Plan plan, SettleTime settle) {
        this.plan = plan;
        this.steps = Handshake.of(plan, settle);
    }

    /** What to send, as bodies of lines, and what to report. */
    record Turn(List<String> lines, List<ProbeEvent> events) {}

    /** A link has been opened. Delivered times go on from those before. */
    Turn opened(String openedPort, long now) {
        port = openedPort;
        mayBeCut = true;
        ask(now);
        return turn();
    }

    /** Messages that this version does not know, since the beginning. */
    long unknownMessages() {
        return unknown;
    }

    /** A line came. */
    Turn heard(Received received, long now) {
        if (received instanceof Received.Good line) {
            lastHeard = now;
            hear(ProbeMessages.parse(line.body()), now);
        } else if (received instanceof Received.Garbage line && !mayBeCut) {
            garbled(line.sample());
        }
        mayBeCut = false;
        return turn();
    }

    /** Time passed; call at least every 250 ms. */
    Turn tick(long now) {
        garbage.report(now).ifPresent(this::tell);
        switch (stage) {
            case ASKING -> {
                if (now >= deadline) {
                    askAgain(now);
                }
            }
            case LISTING -> {
                if (now >= deadline) {
                    listAgain(now);
                }
            }
            case SWEEPING -> {
                if (now - lastHeard >= QUIET) {
                    tell(new ProbeEvent.LinkLost(Sentences.wentQuiet(port)));
                    ask(now);
                } else if (watch.isWaiting() && now >= deadline) {
                    askForState(now);
                }
            }
            case REFUSED -> {}
        }
        return turn();
    }

    private void hear(ProbeMessage message, long now) {
        if (message instanceof ProbeMessage.Iam iam) {
            introduced(iam.identity(), now);
        } else if (message instanceof ProbeMessage.OtherProtocol other) {
            refuse(Sentences.otherProtocol(other.protocol()));
        } else if (message instanceof ProbeMessage.Unknown) {
            unknown++;
        } else if (message instanceof ProbeMessage.Malformed malformed) {
            garbled(malformed.body());
        } else if (stage == Stage.LISTING) {
            hearAnswer(message, now);
        } else if (stage == Stage.SWEEPING) {
            hearSweep(message, now);
        }
    }

    private void introduced(Identity introduced, long now) {
        if (stage == Stage.SWEEPING) {
            tell(new ProbeEvent.LinkLost(Sentences.startedAgain(port)));
        }
        identity = introduced;
        if (plan.pins().size() > identity.mostPins()) {
            refuse(Sentences.tooManyPins(plan, identity));
        } else {
            tries = 0;
            list(now);
        }
    }

    private void hearAnswer(ProbeMessage message, long now) {
        if (message instanceof ProbeMessage.Ok ok && steps.get(step).isAnsweredBy(ok.answer())) {
            step++;
            if (step < steps.size()) {
                say(steps.get(step).command(), now);
            } else {
                stage = Stage.SWEEPING;
                clock.restart();
                watch.begin();
                deadline = now + RETRY;
                tell(new ProbeEvent.Found(identity, port));
            }
        } else if (message instanceof ProbeMessage.No no && Sentences.isRefusal(plan, no)) {
            refuse(Sentences.refused(plan, identity, steps.get(step).command(), no));
        }
    }

    private void hearSweep(ProbeMessage message, long now) {
        boolean uncertain = false;
        if (message instanceof ProbeMessage.Change change && isListed(change.pair())) {
            uncertain = watch.change(change, clock.micros(change.micros(), now));
        } else if (message instanceof ProbeMessage.Conducts conducts && isListed(conducts.pair())) {
            watch.conducts(conducts.pair());
            deadline = now + RETRY;
        } else if (message instanceof ProbeMessage.Full full) {
            uncertain = watch.full(full, clock.micros(full.micros(), now));
        } else if (message instanceof ProbeMessage.Beat beat) {
            clock.micros(beat.micros(), now);
            uncertain = watch.beat(beat);
        } else if (message instanceof ProbeMessage.Lost lost) {
            watch.lost(lost);
            deadline = now + RETRY;
        } else if (message instanceof ProbeMessage.No no && no.verb().equals("state")) {
            tell(new ProbeEvent.LinkLost(Sentences.startedAgain(port)));
            ask(now);
        }
        if (uncertain) {
            askForState(now);
        }
    }

    private boolean isListed(Pair pair) {
        return Math.max(pair.low(), pair.reads()) < plan.pins().size();
    }

    private void ask(long now) {
        stage = Stage.ASKING;
        tries = 0;
        say(Handshake.WHO, now);
    }

    private void askAgain(long now) {
        tries++;
        if (tries == ASKED_OFTEN) {
            tell(new ProbeEvent.LinkLost(Sentences.noAnswer(port, garbage.total())));
        }
        say(Handshake.WHO, now);
    }

    /** From the top, because a pin that is listed twice is refused. */
    private void list(long now) {
        stage = Stage.LISTING;
        step = 0;
        say(steps.get(0).command(), now);
    }

    private void listAgain(long now) {
        tries++;
        if (tries < ASKED_OFTEN) {
            list(now);
        } else {
            tell(new ProbeEvent.LinkLost(Sentences.doesNotFollow(port)));
            ask(now);
        }
    }

    private void askForState(long now) {
        watch.expectWholeState();
        say("state", now);
    }

    private void refuse(String why) {
        if (stage != Stage.REFUSED) {
            tell(new ProbeEvent.Refused(why));
        }
        stage = Stage.REFUSED;
    }

    private void garbled(String sample) {
        garbage.add(sample);
        watch.garbled();
    }

    private void say(String body, long now) {
        lines.add(body);
        deadline = now + RETRY;
    }

    private void tell(ProbeEvent event) {
        events.add(event);
    }

    private Turn turn() {
        Turn turn = new Turn(lines, events);
        lines = new ArrayList<>();
        events = new ArrayList<>();
        return turn;
    }
}
