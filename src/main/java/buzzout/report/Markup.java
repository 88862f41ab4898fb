package buzzout.report;

import buzzout.probe.Printable;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * HTML with SVG in it, written so that nothing from a plan, a log or a probe can become markup, and that every element
 * is closed.
 */
final class Markup {
    private final StringBuilder html = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are names and values in turn. */
    Markup open(String element, String... attributes) {
        tag(element, attributes);
        open.push(element);
        return this;
    }

    /** Closes the element that was opened last. */
    Markup close() {
        html.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element that has no content and needs no end, such as {@code meta}. */
    Markup lone(String element, String... attributes) {
        tag(element, attributes);
        return this;
    }

    /** An element with nothing but text in it. */
    Markup put(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    Markup text(String text) {
        html.append(escaped(text));
        return this;
    }

    Markup line() {
        html.append('\n');
        return this;
    }

    /** A style sheet of the program's own, which is no text from outside. */
    Markup style(String css) {
        html.append("<style>").append(css).append("</style>");
        return this;
    }

    private void tag(String element, String... attributes) {
        html.append('<').append(element);
        for (int at = 0; at < attributes.length; at += 2) {
            html.append(' ').append(attributes[at]).append("=\"");
            html.append(escaped(attributes[at + 1])).append('"');
        }
        html.append('>');
    }

    private static String escaped(String text) {
        return Printable.of(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** The whole document. */
    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("not closed: " + open);
        }
        return "<!DOCTYPE html>\n" + html;
    }
}
