/**
 * SQL and migrations: SQLite embedded by default, PostgreSQL for several machines. A {@link org.tidegate.store.Store} runs
 * work in transactions; a {@link org.tidegate.store.Tx} gives access to the tables by subject and collects ledger events,
 * which are appended and signed as the last statements of the same transaction. What the two databases do differently stands
 * in {@link org.tidegate.store.Dialect}, nowhere else.
 */
@NullMarked
package org.tidegate.store;

import org.jspecify.annotations.NullMarked;
