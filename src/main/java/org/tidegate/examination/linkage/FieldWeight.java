package org.tidegate.examination.linkage;

/**
 * One line of the explanation.
 *
 * @param field the compared field, as named in the rules
 * @param level the agreement level found
 * @param weight log2(m/u) of that level
 * @param words what was compared with what, in plain English
 */
public record FieldWeight(String field, String level, double weight, String words) {}
