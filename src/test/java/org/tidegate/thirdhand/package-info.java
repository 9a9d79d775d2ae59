/**
 * A third painter of photos, written by someone who knew neither the finder nor the other painters. It traces rays over a height
 * field, so walls, shadows and glare come from the shapes. Lengths are millimetres on the table, angles radians, colours linear
 * light, unless said. {@link org.tidegate.thirdhand.ThirdHand} is the door.
 */
@NullMarked
package org.tidegate.thirdhand;

import org.jspecify.annotations.NullMarked;
