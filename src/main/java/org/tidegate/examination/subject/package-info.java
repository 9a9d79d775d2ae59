/** Reads name, test time and clinic out of what people really type: candidates over tokens, each with a span and a cost, ranked together. */
@NullMarked
package org.tidegate.examination.subject;

import org.jspecify.annotations.NullMarked;
