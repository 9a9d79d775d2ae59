/** Verdicts on time as proofs in a simple temporal network (Dechter, Meiri, Pearl 1991). */
@NullMarked
package org.tidegate.examination.timing;

import org.jspecify.annotations.NullMarked;
