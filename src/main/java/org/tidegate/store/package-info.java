/** SQL and migrations: SQLite embedded by default, PostgreSQL for several machines. */
@NullMarked
package org.tidegate.store;

import org.jspecify.annotations.NullMarked;
