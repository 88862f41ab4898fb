package buzzout.probe;

/** Where a link to a probe is to be had, and had again after an unplug. */
public interface LinkSource {
    /**
     * A link, opened.
     *
     * @throws LinkDown if there is none now; its sentence says what to do
     */
    Opened open() throws LinkDown;

    /** The time that its links live in. */
    default Stopwatch time() {
        return Stopwatch.real();
    }

    /** An open link and the port it goes through. */
    record Opened(String port, ByteLink link) {}
}
