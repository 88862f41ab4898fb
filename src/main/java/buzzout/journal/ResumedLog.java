package buzzout.journal;

import buzzout.plan.Plan;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A log that goes on in the same file, after a crash, an empty battery or an end too early. No other program can write
 * it meanwhile. Nothing is changed before {@link #goOn}.
 */
public final class ResumedLog implements Closeable {
    private static final int CHUNK = 1 << 16;

    private final Path path;
    private final FileChannel channel;
    private final LogFile file;

    private ResumedLog(Path path, FileChannel channel, LogFile file) {
        this.path = path;
        this.channel = channel;
        this.file = file;
    }

    /**
     * Opens a log to read it and to write more.
     *
     * @throws LogNotWritten also where another program is writing it
     */
    public static ResumedLog open(Path path) throws LogNotWritten {
        try {
            if (!Files.isRegularFile(path)) {
                throw new NoSuchFileException(path.toString());
            }
            FileChannel channel = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (!WriterLock.take(channel)) {
                channel.close();
                throw LogNotWritten.elsewhere(path);
            }
            return new ResumedLog(path, channel, JournalReader.read(path.toString(), Channels.newInputStream(channel)));
        } catch (LogNotWritten e) {
            throw e;
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }

    /** What is in the log. */
    public LogFile file() {
        return file;
    }

    /** The log to write on, and the half line that was cut off its end: one that was never acknowledged. */
    public record Continued(Journal journal, Optional<String> tornLine) {}

    /**
     * Goes on behind the last whole line.
     *
     * @param plan the plan of this log
     */
    public Continued goOn(Plan plan) throws LogNotWritten {
        try {
            Optional<String> torn = Optional.empty();
            long end = endOfWholeLines();
            if (end < channel.size()) {
                String last = text(end, channel.size() - end);
                if (isEvent(plan, last)) {
                    channel.write(ByteBuffer.wrap(new byte[] {'\n'}), channel.size());
                } else {
                    torn = Optional.of(last);
                    channel.truncate(end);
                }
            }
            return new Continued(Journal.goingOn(path, channel, plan), torn);
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }

    private static boolean isEvent(Plan plan, String line) {
        try {
            new EventReader(plan).event(JournalReader.object(new LogLines.Line(1, line, false)));
            return true;
        } catch (UnusableLine torn) {
            return false;
        }
    }

    private long endOfWholeLines() throws IOException {
        for (long end = channel.size(); end > 0; end -= Math.min(end, CHUNK)) {
            long from = Math.max(end - CHUNK, 0);
            byte[] chunk = bytes(from, end - from);
            for (int at = chunk.length - 1; at >= 0; at--) {
                if (chunk[at] == '\n') {
                    return from + at + 1;
                }
            }
        }
        return channel.size();
    }

    private String text(long from, long length) throws IOException {
        return new String(bytes(from, Math.min(length, LogLines.MOST_BYTES + 1L)), StandardCharsets.UTF_8);
    }

    private byte[] bytes(long from, long length) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate((int) length);
        while (bytes.hasRemaining() && channel.read(bytes, from + bytes.position()) > 0) {
            // The file may hand out less than was asked for.
        }
        return bytes.array();
    }

    /** Also ends the journal, where there is one. */
    @Override
    public void close() throws LogNotWritten {
        try {
            channel.close();
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }
}
