/** Machine-readable zones of identity documents (ICAO Doc 9303, 8th edition 2021): their text, their check digits, their characters on a picture. */
@NullMarked
package org.tidegate.examination.picture.mrz;

import org.jspecify.annotations.NullMarked;
