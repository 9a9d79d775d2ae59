/** Finds the one test that a message belongs to, by probabilistic record linkage (Fellegi and Sunter 1969), and says why. */
@NullMarked
package org.tidegate.examination.linkage;

import org.jspecify.annotations.NullMarked;
