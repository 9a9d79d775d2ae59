package org.tidegate.booking;

/**
 * One thing wrong in an appointment book.
 *
 * @param line from 1, the line on which the row ends; 0 where the file as a whole is meant
 * @param column the column's or field's name; empty where the row or file as a whole is meant
 * @param what plain English
 * @param hint what to write instead
 */
public record BookFault(long line, String column, String what, String hint) {

    @Override
    public String toString() {
        String place = line == 0 ? "" : "line " + line + ": ";
        String where = column.isEmpty() ? "" : column + ": ";
        return place + where + what + (hint.isEmpty() ? "" : " (" + hint + ")");
    }
}
