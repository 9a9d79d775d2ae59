/**
 * One append-only log of everything that was done, as a Merkle tree of RFC 9162 (hashes of RFC 6962 §2.1). A {@link
 * org.tidegate.ledger.LedgerEvent} becomes the bytes of a leaf by {@link org.tidegate.ledger.LeafFormat}, which is final:
 * stored leaves outlive the program. {@link org.tidegate.ledger.Frontier} grows the tree in O(log n);
 * {@link org.tidegate.ledger.Proofs} proves inclusion and consistency; {@link org.tidegate.ledger.HeadSigner} signs heads.
 * Events carry codes and keyed references, never personal data. {@link org.tidegate.ledger.audit} checks all of it again.
 */
@NullMarked
package org.tidegate.ledger;

import org.jspecify.annotations.NullMarked;
