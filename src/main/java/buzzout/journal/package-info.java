/** The append-only log of a session, and its replay. */
@NullMarked
package buzzout.journal;

import org.jspecify.annotations.NullMarked;
