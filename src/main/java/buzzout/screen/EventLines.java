package buzzout.screen;

import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Lead;
import buzzout.session.Press;
import buzzout.session.Retest;
import buzzout.session.Session;
import buzzout.session.Touch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What happened lately, in words: like the session, a pure fold over its events. */
public record EventLines(List<Line> lines) {
    public static final EventLines NONE = new EventLines(List.of());

    /** More than the tallest terminal shows. */
    private static final int MOST = 200;

    /** A touch that meets more after this long, as when a key goes down, gets one more line. */
    private static final int SETTLING_MILLIS = 100;

    /** What may still grow, so that its line must be told anew. */
    enum Growing {
        NOTHING,
        PRESS,
        TOUCH
    }

    /**
     * One line of words.
     *
     * @param growing what it tells, where that may still grow
     */
    public record Line(long atMillis, String text, Growing growing) {}

    public EventLines {
        lines = List.copyOf(lines);
    }

    /** The lines after one more event, which made the session {@code before} into {@code after}. */
    public EventLines after(Session before, Event event, Session after) {
        EventLines told = afterTouches(before, event, after).told(before, event, after);
        Optional<Retest.Result> result = Retest.result(after);
        if (result.isEmpty() || result.equals(Retest.result(before))) {
            return told;
        }
        Line line = new Line(event.atMillis(), RetestWords.of(after, result.get()), Growing.NOTHING);
        return told.lastSays(line.text()) ? told : told.with(line);
    }

    /** A key that bounces as it is let go ends a retest more than once. */
    private boolean lastSays(String text) {
        return !lines.isEmpty() && lines.get(lines.size() - 1).text().equals(text);
    }

    private EventLines afterTouches(Session before, Event event, Session after) {
        Optional<Touch> touch = after.lead().last();
        return touch.isPresent() && !before.lead().equals(after.lead())
                ? withTouch(before.lead(), after.lead(), event.atMillis(), LeadWords.of(after.plan(), touch.get()))
                : this;
    }

    private EventLines told(Session before, Event event, Session after) {
        int known = before.presses().size();
        int now = after.presses().size();
        if (event instanceof Event.ByPerson by && by.action() instanceof Action.ReadThroughEnded) {
            return words(after, event)
                    .map(text -> withoutGrowing().with(new Line(event.atMillis(), text, Growing.NOTHING)))
                    .orElse(this);
        }
        if (now > 0 && now == known && !lastPress(after).equals(lastPress(before))) {
            return withPress(after);
        }
        if (now > known) {
            return with(new Line(event.atMillis(), PressWords.of(after.plan(), lastPress(after)), Growing.PRESS));
        }
        EventLines told = HeldLines.noLonger(before, after).map(this::without).orElse(this);
        EventLines kept = now < known ? told.withoutGrowing() : told;
        Optional<String> held = HeldLines.of(before, after);
        if (held.isPresent()) {
            return kept.with(new Line(event.atMillis(), held.get(), Growing.NOTHING));
        }
        return words(after, event)
                .map(text -> kept.with(new Line(event.atMillis(), text, Growing.NOTHING)))
                .orElse(kept);
    }

    /** The newest lines, oldest first. */
    public List<Line> last(int most) {
        return lines.subList(Math.max(0, lines.size() - Math.max(0, most)), lines.size());
    }

    private static Press lastPress(Session session) {
        return session.presses().get(session.presses().size() - 1);
    }

    private static Optional<String> words(Session after, Event event) {
        if (event instanceof Event.FromProbe from) {
            return EventWords.of(from.event());
        }
        return event instanceof Event.ByPerson by ? EventWords.of(after.plan(), by.action()) : Optional.empty();
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
                .map(line -> new Line(line.atMillis(), line.text(), Growing.NOTHING))
                .toList());
    }

    /** The last press turned out to close more, or something else, than it did at first. */
    private EventLines withPress(Session after) {
        String text = PressWords.of(after.plan(), lastPress(after));
        int index = lastOf(Growing.PRESS);
        return index < 0 ? this : replaced(index, text);
    }

    /** A new touch, or one that meets more than it did at first. */
    private EventLines withTouch(Lead before, Lead after, long atMillis, String text) {
        int index = lastOf(Growing.TOUCH);
        boolean isNew = after.touches().size() > before.touches().size();
        if (after.touches().size() < before.touches().size()
                || (!isNew && (index < 0 || lines.get(index).text().equals(text)))) {
            return this;
        }
        boolean tellsAnew = isNew || atMillis - lines.get(index).atMillis() > SETTLING_MILLIS;
        return tellsAnew ? with(new Line(atMillis, text, Growing.TOUCH)) : replaced(index, text);
    }

    private int lastOf(Growing kind) {
        int index = lines.size() - 1;
        while (index >= 0 && lines.get(index).growing() != kind) {
            index--;
        }
        return index;
    }

    private EventLines replaced(int index, String text) {
        List<Line> changed = new ArrayList<>(lines);
        changed.set(
                index,
                new Line(lines.get(index).atMillis(), text, lines.get(index).growing()));
        return new EventLines(changed);
    }
}
