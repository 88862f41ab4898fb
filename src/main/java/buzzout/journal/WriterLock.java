package buzzout.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;

/** Keeps a second program from writing the same log; it ends with the channel, or with the program. */
final class WriterLock {
    /** Behind any log's end: some systems let nobody read what is locked, and a log may be read while it grows. */
    private static final long BEHIND_THE_END = Long.MAX_VALUE - 1;

    private WriterLock() {}

    /** Whether this program may write; where a file system knows no locks, it may. */
    static boolean take(FileChannel channel) {
        try {
            return channel.tryLock(BEHIND_THE_END, 1, false) != null;
        } catch (OverlappingFileLockException here) {
            return false;
        } catch (IOException unknown) {
            return true;
        }
    }
}
