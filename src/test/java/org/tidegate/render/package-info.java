/**
 * Draws photos of tests: cassettes, cards and passport pages on tables, seen through a simulated camera. It shares nothing with the finder.
 *
 * <p>The optical model, in this order. Everything flat is painted in sRGB at a known scale (pixels a millimetre) and laid on a table plane. A
 * pinhole camera (height, tilt, roll) gives the perspective; each picture pixel takes the mean of four samples. From here on light is linear
 * (sRGB decoding, IEC 61966-2-1): light falling off across the table, soft shadows, a burnt-out reflection, white balance as gains of the
 * channels, exposure; then defocus (a disc, drawn as three box means), motion (a straight smear), noise of the light (its variance grows with
 * the signal) and of the sensor; then clipping, sRGB coding and JPEG.
 *
 * <p>A line of strength s lowers the coded green of the membrane by the share s; red and blue less, by the dye. No text uses an installed font, so
 * a seed gives the same picture on every machine with the same JPEG encoder. All names are invented.
 */
package org.tidegate.render;
