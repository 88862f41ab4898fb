/** Commands and exit codes. */
@NullMarked
package buzzout.cli;

import org.jspecify.annotations.NullMarked;
