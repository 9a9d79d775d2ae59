/**
 * What the service tells about itself: the handover at the end of a night, as a value that the console shows and the
 * commands print. Everything here is computed from the store at one moment and names submissions by reference, never people.
 */
@NullMarked
package org.tidegate.report;

import org.jspecify.annotations.NullMarked;
