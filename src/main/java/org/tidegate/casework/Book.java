package org.tidegate.casework;

import org.jspecify.annotations.Nullable;
import org.tidegate.examination.OpenTests;
import org.tidegate.store.Tx;

/** The tests of the book as the store holds them, indexed anew only when the book changed. */
final class Book {

    private record Indexed(String stamp, OpenTests tests) {}

    private volatile @Nullable Indexed indexed;

    OpenTests tests(Tx tx) {
        String stamp = tx.tests().stamp();
        Indexed known = indexed;
        if (known == null || !known.stamp().equals(stamp)) {
            known = new Indexed(stamp, OpenTests.of(tx.tests().book().tests()));
            indexed = known;
        }
        return known.tests();
    }
}
