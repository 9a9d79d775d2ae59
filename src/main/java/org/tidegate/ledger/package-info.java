/** One append-only log (RFC 9162 Merkle tree) of everything that was done, with proofs and signed heads. */
@NullMarked
package org.tidegate.ledger;

import org.jspecify.annotations.NullMarked;
