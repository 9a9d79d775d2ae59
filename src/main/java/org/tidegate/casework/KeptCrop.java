package org.tidegate.casework;

import org.tidegate.examination.picture.CropShape;

/**
 * A cassette by itself that a submission has.
 *
 * @param number by which its picture is asked for
 * @param message number of the message that it came with
 * @param path the picture that it was cut from; that may be forgotten
 * @param cassette which of the picture's cassettes, from 0
 */
public record KeptCrop(long number, long message, String path, int cassette, CropShape shape) {}
