/** Commands, wiring, configuration, and the only reader of the system clock. */
@NullMarked
package org.tidegate.cli;

import org.jspecify.annotations.NullMarked;
