/** What a photo shows: capture times, legibility, cassettes and their lines, identity documents, fingerprints. It never decides a result. */
@NullMarked
package org.tidegate.examination.picture;

import org.jspecify.annotations.NullMarked;
