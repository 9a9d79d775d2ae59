/** Figures, handover, export. */
@NullMarked
package org.tidegate.report;

import org.jspecify.annotations.NullMarked;
