/** Bytes to pairs: the line protocol, the serial link, and the simulated board that speaks it too. */
@NullMarked
package buzzout.probe;

import org.jspecify.annotations.NullMarked;
