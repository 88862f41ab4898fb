/** What conducts, for a plan, a set of faults and the keys held. */
@NullMarked
package buzzout.circuit;

import org.jspecify.annotations.NullMarked;
