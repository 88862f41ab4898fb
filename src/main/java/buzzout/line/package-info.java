/** The words of a command line: what a command takes, what was given, and the help that says so. */
@NullMarked
package buzzout.line;

import org.jspecify.annotations.NullMarked;
