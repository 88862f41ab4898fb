/** The terminal screen. */
@NullMarked
package buzzout.screen;

import org.jspecify.annotations.NullMarked;
