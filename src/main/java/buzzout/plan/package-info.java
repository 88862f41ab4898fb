/** The board as designed: keys, nets, joints, leads and pins, and the reading and checking of the TOML file that says so. */
@NullMarked
package buzzout.plan;

import org.jspecify.annotations.NullMarked;
