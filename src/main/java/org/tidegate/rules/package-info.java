/** The {@code rules/} folder as one immutable, validated value: clinics, protocols, weights, tolerances, checks, texts, limits. Every fault is reported with file, line and hint. */
@NullMarked
package org.tidegate.rules;

import org.jspecify.annotations.NullMarked;
