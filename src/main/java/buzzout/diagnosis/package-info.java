/** Evidence to ranked findings, and the best next press or touch. */
@NullMarked
package buzzout.diagnosis;

import org.jspecify.annotations.NullMarked;
