/** Events to evidence and coverage, and the ways of pressing. */
@NullMarked
package buzzout.session;

import org.jspecify.annotations.NullMarked;
