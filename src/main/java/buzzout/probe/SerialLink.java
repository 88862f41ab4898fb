package buzzout.probe;

import com.fazecast.jSerialComm.SerialPort;

/** A serial port of this machine, open. No listeners: after an unplug they fire without end. */
final class SerialLink implements ByteLink {
    /** How long a read waits; what else is asked for is ignored, because a port's timer is coarse. */
    static final int READ_MILLIS = 200;

    private static final int WRITE_TRIES = 50;

    private final String path;
    private final SerialPort port;

    SerialLink(String path, SerialPort port) {
        this.path = path;
        this.port = port;
    }

    @Override
    public int read(byte[] into, int timeoutMillis) throws LinkDown {
        int count = port.readBytes(into, into.length);
        if (count < 0) {
            throw new LinkDown(PortTrouble.unplugged(path));
        }
        return count;
    }

    @Override
    public void write(byte[] bytes) throws LinkDown {
        int written = 0;
        for (int tries = 0; written < bytes.length; tries++) {
            int count = port.writeBytes(bytes, bytes.length - written, written);
            if (count < 0) {
                throw new LinkDown(PortTrouble.unplugged(path));
            }
            if (tries == WRITE_TRIES) {
                throw new LinkDown(PortTrouble.takesNothing(path));
            }
            written += count;
        }
    }

    @Override
    public void close() {
        port.closePort();
    }
}
