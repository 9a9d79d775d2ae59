/**
 * Checks the ledger again from its stored bytes. Written apart from {@link org.tidegate.ledger} on purpose: it shares the
 * format on paper, not the code, so that one mistake cannot hide in both.
 */
@NullMarked
package org.tidegate.ledger.audit;

import org.jspecify.annotations.NullMarked;
