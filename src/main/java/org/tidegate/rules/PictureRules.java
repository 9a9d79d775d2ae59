package org.tidegate.rules;

import java.util.List;

@Doc("Thresholds of picture evidence.")
public record PictureRules(
        @Doc("Pixels of one picture that are decoded at most; larger ones are subsampled.")
        long maxPixels,

        @Doc(
                "Sharpness below this cannot be read: steepest part of an edge as a share of its contrast, 0.5 for an ideal edge.")
        double minSharpness,

        @Doc("Mean luma below this is too dark.") double minBrightness,
        @Doc("Mean luma above this is too bright.") double maxBrightness,

        @Doc("Share of burnt-out pixels above this is glare.")
        double maxClipped,

        @Doc("Shorter side in pixels below this is too small to read.")
        int minSide,

        @Doc("Stated probability from which a cassette counts as found, 0–1.")
        double cassetteAt,

        @Doc("Stated probability from which an identity document counts as in view, 0–1.")
        double documentAt,

        @Doc("Line strength from which a line counts as present.")
        double lineAt,

        @Doc("Finer bits of 256 that may differ between the fingerprints of two pictures that count as the same.")
        int sameWithin,

        @Doc("Bits of 512 that may differ between what is written on two cassettes that count as the same.")
        int sameWritingWithin,

        @Doc("Show a proposed reading to a reader after the reader's own.")
        boolean proposeReading,

        @Doc("A photo without any capture time is held, not only noted.")
        boolean holdWithoutCaptureTime,

        @Doc(
                "File names that camera programs give: regular expressions whose groups are year, month, day, hour, minute, second.")
        List<String> fileNameTimes) {}
