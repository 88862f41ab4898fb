package buzzout.probe;

/** Bytes to and from a probe. One thread reads and writes; any may close. */
public interface ByteLink extends AutoCloseable {
    /**
     * Waits for bytes.
     *
     * @param timeoutMillis about how long to wait; a port's timer is coarse
     * @return how many came, 0 after the time-out
     * @throws LinkDown if the link is gone
     */
    int read(byte[] into, int timeoutMillis) throws LinkDown;

    /**
     * Sends bytes.
     *
     * @throws LinkDown if the link is gone or does not take the bytes
     */
    void write(byte[] bytes) throws LinkDown;

    @Override
    void close();
}
