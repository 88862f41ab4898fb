package buzzout.screen;

import buzzout.session.Event;
import buzzout.session.Press;
import buzzout.session.Retest;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What happened lately, in words: like the session, a pure fold over its events. */
public record EventLines(List<Line> lines) {
    public static final EventLines NONE = new EventLines(List.of());

    /** More than the tallest terminal shows. */
    private static final int MOST = 200;

    /**
     * One line of words.
     *
     * @param press whether it tells the last press, which may still grow
     */
    public record Line(long atMillis, String text, boolean press) {}

    public EventLines {
        lines = List.copyOf(lines);
    }

    /** The lines after one more event, which made the session {@code before} into {@code after}. */
    public EventLines after(Session before, Event event, Session after) {
        EventLines told = told(before, event, after);
        Optional<Retest.Result> result = Retest.result(after);
        if (result.isEmpty() || result.equals(Retest.result(before))) {
            return told;
        }
        Line line = new Line(event.atMillis(), RetestWords.of(after, result.get()), false);
        return told.lastSays(line.text()) ? told : told.with(line);
    }

    /** A key that bounces as it is let go ends a retest more than once. */
    private boolean lastSays(String text) {
        return !lines.isEmpty() && lines.get(lines.size() - 1).text().equals(text);
    }

    private EventLines told(Session before, Event event, Session after) {
        int known = before.presses().size();
        int now = after.presses().size();
        if (now > 0 && now == known && !lastPress(after).equals(lastPress(before))) {
            return withPress(after);
        }
        if (now > known) {
            return with(new Line(event.atMillis(), PressWords.of(after.plan(), lastPress(after)), true));
        }
        EventLines told = HeldLines.noLonger(before, after).map(this::without).orElse(this);
        EventLines kept = now < known ? told.withoutGrowing() : told;
        Optional<String> held = HeldLines.of(before, after);
        if (held.isPresent()) {
            return kept.with(new Line(event.atMillis(), held.get(), false));
        }
        return words(event)
                .map(text -> kept.with(new Line(event.atMillis(), text, false)))
                .orElse(kept);
    }

    /** The newest lines, oldest first. */
    public List<Line> last(int most) {
        return lines.subList(Math.max(0, lines.size() - Math.max(0, most)), lines.size());
    }

    private static Press lastPress(Session session) {
        return session.presses().get(session.presses().size() - 1);
    }

    private static Optional<String> words(Event event) {
        if (event instanceof Event.FromProbe from) {
            return EventWords.of(from.event());
        }
        return event instanceof Event.ByPerson by ? EventWords.of(by.action()) : Optional.empty();
    }

    private EventLines with(Line line) {
        List<Line> more = new ArrayList<>(last(MOST - 1));
        more.add(line);
        return new EventLines(more);
    }

    /** Without the newest line of this text. */
    private EventLines without(String text) {
        List<Line> fewer = new ArrayList<>(lines);
        for (int index = fewer.size() - 1; index >= 0; index--) {
            if (fewer.get(index).text().equals(text)) {
                fewer.remove(index);
                return new EventLines(fewer);
            }
        }
        return this;
    }

    /** The last press is no longer one that a line tells. */
    private EventLines withoutGrowing() {
        return new EventLines(lines.stream()
                .map(line -> new Line(line.atMillis(), line.text(), false))
                .toList());
    }

    /** The last press turned out to close more, or something else, than it did at first. */
    private EventLines withPress(Session after) {
        String text = PressWords.of(after.plan(), lastPress(after));
        for (int index = lines.size() - 1; index >= 0; index--) {
            if (lines.get(index).press()) {
                List<Line> changed = new ArrayList<>(lines);
                changed.set(index, new Line(lines.get(index).atMillis(), text, true));
                return new EventLines(changed);
            }
        }
        return this;
    }
}
