/** What people and the daemon do: intake, triage, judging, replying, reading, certifying, closing, forgetting. */
@NullMarked
package org.tidegate.casework;

import org.jspecify.annotations.NullMarked;
