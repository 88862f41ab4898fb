package buzzout.cli;

import buzzout.probe.Printable;
import java.io.PrintWriter;

/** The two streams of the command line. What passes through cannot move a cursor or start an escape. */
final class Console {
    private final PrintWriter out;
    private final PrintWriter err;

    Console(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /** One result, or several lines of it. */
    void say(String text) {
        print(out, text);
    }

    /** One thing that went wrong. */
    void complain(String text) {
        print(err, text);
    }

    private static void print(PrintWriter stream, String text) {
        String lines = text.replace("\r\n", "\n");
        String ended = lines.endsWith("\n") ? lines : lines + "\n";
        for (int from = 0; from < ended.length(); ) {
            int end = ended.indexOf('\n', from);
            stream.println(Printable.of(ended.substring(from, end)));
            from = end + 1;
        }
        stream.flush();
    }
}
