/**
 * Records of casework: submission, judgement, reading, reply, user, work item. Plain data that the store keeps and the
 * console shows; what may be done with it lives in casework.
 */
@NullMarked
package org.tidegate.work;

import org.jspecify.annotations.NullMarked;
