/** Keys, and the encrypted raw messages and pictures; destroying a key forgets a message. */
@NullMarked
package org.tidegate.vault;

import org.jspecify.annotations.NullMarked;
