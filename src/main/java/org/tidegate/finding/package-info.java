/**
 * The vocabulary that the rooms below share: clues and clocks, verdicts, discrepancies and their codes, and
 * {@link org.tidegate.finding.Findings}, what one message shows by itself. Plain immutable data; no logic beyond its own shape.
 */
@NullMarked
package org.tidegate.finding;

import org.jspecify.annotations.NullMarked;
