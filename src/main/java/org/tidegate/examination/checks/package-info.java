/** Turns findings, match and time verdicts into discrepancies: one small named rule each, root causes hiding their consequences. */
@NullMarked
package org.tidegate.examination.checks;

import org.jspecify.annotations.NullMarked;
