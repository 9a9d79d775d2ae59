package org.tidegate.examination.picture.mrz;

/** Something dark on its own, perhaps a letter: the middle and the size of its upright box, in pixels of the patch. */
record Mark(double x, double y, double width, double height) {}
