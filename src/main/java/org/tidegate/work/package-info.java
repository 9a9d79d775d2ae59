/** Records of casework: submission, judgement, reading, reply, user, work item. */
@NullMarked
package org.tidegate.work;

import org.jspecify.annotations.NullMarked;
