package buzzout.journal;

import buzzout.plan.Plan;
import buzzout.session.Event;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The log of a session while it is being written.
 *
 * <p>What was appended is in the file when the method returns, so that it survives this program, whatever ends that. Not
 * before {@link #sync} or {@link #close} is it on the disk, where it survives a power cut too.
 */
public final class Journal implements Closeable {
    /** Sessions of one board that begin in the same second. */
    private static final int MOST_TRIES = 100;

    private final Path path;
    private final FileChannel channel;
    private final EventWriter writer;
    private final AtomicBoolean unsynced = new AtomicBoolean();

    private Journal(Path path, FileChannel channel, Plan plan) {
        this.path = path;
        this.channel = channel;
        this.writer = new EventWriter(plan);
    }

    /** Begins a log in a new file; an existing one is an error, never overwritten. */
    public static Journal create(Path path, LogHeader header, Plan plan) throws LogNotWritten {
        try {
            return begin(path, header, plan);
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }

    /** Begins a log in a folder, which is made where needed, under a name that tells board, unit and time. */
    public static Journal createIn(Path folder, LogHeader header, Plan plan) throws LogNotWritten {
        OffsetDateTime started = header.started().orElseGet(OffsetDateTime::now);
        Path path = folder;
        try {
            Files.createDirectories(folder);
            for (int number = 1; ; number++) {
                path = LogName.in(folder, plan.name(), header.unit(), started, number);
                try {
                    return begin(path, header, plan);
                } catch (FileAlreadyExistsException e) {
                    if (number == MOST_TRIES) {
                        throw e;
                    }
                }
            }
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }

    private static Journal begin(Path path, LogHeader header, Plan plan) throws IOException {
        FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        WriterLock.take(channel);
        return begin(path, channel, header, plan);
    }

    /** Goes on at the channel's end, which must be the end of a line. */
    static Journal goingOn(Path path, FileChannel channel, Plan plan) throws IOException {
        channel.position(channel.size());
        return new Journal(path, channel, plan);
    }

    static Journal begin(Path path, FileChannel channel, LogHeader header, Plan plan) throws IOException {
        Journal journal = new Journal(path, channel, plan);
        try {
            journal.put(HeaderLine.write(header) + "\n");
            return journal;
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    public Path path() {
        return path;
    }

    /** Writes one event down. */
    public void append(Event event) throws LogNotWritten {
        append(List.of(event));
    }

    /** Writes several events down at the price of one. */
    public void append(List<Event> events) throws LogNotWritten {
        StringBuilder text = new StringBuilder();
        events.forEach(event -> text.append(writer.line(event)).append('\n'));
        try {
            put(text.toString());
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }

    private void put(String text) throws IOException {
        long before = channel.position();
        try {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            unsynced.set(true);
        } catch (IOException e) {
            if (channel.isOpen()) {
                channel.truncate(before);
            }
            throw e;
        }
    }

    /** Has the system put on the disk what was appended; another thread may append meanwhile. */
    public void sync() throws LogNotWritten {
        if (unsynced.getAndSet(false)) {
            try {
                channel.force(false);
            } catch (IOException e) {
                throw new LogNotWritten(path, e);
            }
        }
    }

    /** Closes the log and takes it away; for one in which nothing was worth keeping. */
    public void discard() throws LogNotWritten {
        close();
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }

    @Override
    public void close() throws LogNotWritten {
        try (channel) {
            sync();
        } catch (IOException e) {
            throw new LogNotWritten(path, e);
        }
    }
}
