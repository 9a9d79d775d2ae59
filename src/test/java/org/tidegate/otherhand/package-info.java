/**
 * A second painter of photos, made without a look at the first or at the finder: a check that the finder has not merely
 * learned one renderer. All lengths are millimetres on the table, angles radians, colours the reflectance in sRGB code.
 * {@link org.tidegate.otherhand.OtherHand} is the door.
 */
@NullMarked
package org.tidegate.otherhand;

import org.jspecify.annotations.NullMarked;
