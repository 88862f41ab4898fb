package buzzout.probe;

import java.io.IOException;

/** A link cannot be opened, or is gone; the message is a sentence for the person. */
public final class LinkDown extends IOException {
    private static final long serialVersionUID = 1;

    public LinkDown(String why) {
        super(why);
    }

    /** The sentence. */
    public String why() {
        String why = getMessage();
        return why == null ? "The link is down." : why;
    }
}
