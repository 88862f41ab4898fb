/** Reading of TOML, as https://toml.io/en/v1.1.0 says, with the place of everything that stands in a file. */
@NullMarked
package buzzout.toml;

import org.jspecify.annotations.NullMarked;
