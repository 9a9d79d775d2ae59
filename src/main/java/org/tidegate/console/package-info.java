/** The web pages. */
@NullMarked
package org.tidegate.console;

import org.jspecify.annotations.NullMarked;
