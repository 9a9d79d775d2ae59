/** The two pure functions of the program, {@code inspect} and {@code assess}, composed of the rooms below. */
@NullMarked
package org.tidegate.examination;

import org.jspecify.annotations.NullMarked;
