/** Findings and plans as text, JSON and drawings. */
@NullMarked
package buzzout.report;

import org.jspecify.annotations.NullMarked;
