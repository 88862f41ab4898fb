package buzzout.probe;

import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Asks a probe how long each of a plan's pins takes to rise. Begins anew, a few times, when an answer is garbled. */
public final class RiseMeasurement {
    private static final int TRIES = 8;
    private static final long ANSWER_MICROS = 600_000;

    private final Plan plan;
    private final LinkSource.Opened opened;
    private final Stopwatch time;
    private final LineDecoder decoder = new LineDecoder();
    private final byte[] buffer = new byte[512];

    private RiseMeasurement(Plan plan, LinkSource.Opened opened, Stopwatch time) {
        this.plan = plan;
        this.opened = opened;
        this.time = time;
    }

    /**
     * What came of it.
     *
     * @param nanos by pin, in the plan's order; none for a pin that something holds low
     * @param settleMicros the settle time that the probe takes for them by itself
     */
    public record Measured(List<OptionalLong> nanos, int settleMicros) {
        public Measured {
            nanos = List.copyOf(nanos);
        }
    }

    /** The answer that was waited for did not come. */
    private static final class NoAnswer extends Exception {
        private static final long serialVersionUID = 1;
    }

    /**
     * Measures.
     *
     * @throws LinkDown if no probe answers, or if it cannot do this; its sentence says what to do
     */
    public static Measured of(Plan plan, LinkSource source) throws LinkDown {
        LinkSource.Opened opened = source.open();
        try (ByteLink link = opened.link()) {
            link.write(Line.END_OF_ANY);
            return new RiseMeasurement(plan, opened, source.time()).measured();
        }
    }

    private Measured measured() throws LinkDown {
        boolean answered = false;
        for (int tries = 0; tries < TRIES; tries++) {
            try {
                Identity identity = identity();
                answered = true;
                return measured(identity);
            } catch (NoAnswer garbled) {
                // A board that resets when its port is opened says nothing for some seconds.
            }
        }
        throw new LinkDown(answered ? Sentences.doesNotFollow(opened.port()) : Sentences.noAnswer(opened.port(), 0));
    }

    private Identity identity() throws LinkDown, NoAnswer {
        ProbeMessage answer = ask(Handshake.WHO);
        if (answer instanceof ProbeMessage.OtherProtocol other) {
            throw new LinkDown(Sentences.otherProtocol(other.protocol()));
        }
        if (answer instanceof ProbeMessage.Iam iam) {
            return iam.identity();
        }
        throw new NoAnswer();
    }

    private Measured measured(Identity identity) throws LinkDown, NoAnswer {
        for (Handshake.Step step : Handshake.listing(plan)) {
            follow(identity, step);
        }
        List<OptionalLong> nanos = new ArrayList<>();
        for (int pin = 0; pin < plan.pins().size(); pin++) {
            nanos.add(rise(identity, pin));
        }
        String settle = follow(identity, SettleTime.MEASURED.step());
        return new Measured(nanos, (int) number(settle.replaceFirst("ok settle ", "")));
    }

    private OptionalLong rise(Identity identity, int pin) throws LinkDown, NoAnswer {
        String command = "rise " + pin;
        ProbeMessage answer = ask(command);
        if (answer instanceof ProbeMessage.No no
                && no.verb().equals("rise")
                && no.reason().equals("low")) {
            return OptionalLong.empty();
        }
        if (answer instanceof ProbeMessage.No no
                && no.verb().equals("?")
                && no.reason().equals("verb")) {
            throw new LinkDown(Sentences.measuresNoRises(identity));
        }
        if (answer instanceof ProbeMessage.No no && no.reason().equals("index")) {
            throw new NoAnswer(); // it was reset on the way
        }
        return OptionalLong.of(number(done(identity, new Handshake.Step(command, "ok " + command), answer)
                .replaceFirst("ok " + command + " ", "")));
    }

    private String follow(Identity identity, Handshake.Step step) throws LinkDown, NoAnswer {
        return done(identity, step, ask(step.command()));
    }

    private String done(Identity identity, Handshake.Step step, ProbeMessage answer) throws LinkDown, NoAnswer {
        if (answer instanceof ProbeMessage.Ok ok && step.isAnsweredBy(ok.answer())) {
            return ok.answer();
        }
        if (answer instanceof ProbeMessage.No no && Sentences.isRefusal(plan, no)) {
            throw new LinkDown(Sentences.refused(plan, identity, step.command(), no));
        }
        throw new NoAnswer();
    }

    /** Newer probes may say more behind it. */
    private static long number(String words) throws NoAnswer {
        String digits = words.replaceFirst(" .*", "");
        if (!digits.matches("[0-9]{1,9}")) {
            throw new NoAnswer();
        }
        return Long.parseLong(digits);
    }

    private ProbeMessage ask(String command) throws LinkDown, NoAnswer {
        opened.link().write(Line.encode(command));
        long end = time.micros() + ANSWER_MICROS;
        for (long now = time.micros(); now < end; now = time.micros()) {
            int count = opened.link().read(buffer, (int) Math.max(1, (end - now) / 1000));
            for (Received received : decoder.take(buffer, count)) {
                Optional<ProbeMessage> answer = answer(received, command.replaceFirst(" .*", ""));
                if (answer.isPresent()) {
                    return answer.get();
                }
            }
        }
        throw new NoAnswer();
    }

    /** Older answers may still be on their way, and a board that was reset greets by itself. */
    private static Optional<ProbeMessage> answer(Received received, String verb) {
        return received instanceof Received.Good line
                ? Optional.of(ProbeMessages.parse(line.body())).filter(message -> answers(message, verb))
                : Optional.empty();
    }

    private static boolean answers(ProbeMessage message, String verb) {
        if (message instanceof ProbeMessage.Iam || message instanceof ProbeMessage.OtherProtocol) {
            return Handshake.WHO.startsWith(verb);
        }
        return (message instanceof ProbeMessage.Ok ok && ok.answer().startsWith("ok " + verb))
                || (message instanceof ProbeMessage.No no
                        && (no.verb().equals(verb) || no.verb().equals("?")));
    }
}
