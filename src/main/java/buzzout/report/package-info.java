/** Findings and plans as plain text and JSON. */
@NullMarked
package buzzout.report;

import org.jspecify.annotations.NullMarked;
