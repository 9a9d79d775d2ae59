/** The appointment book: who was booked for which test, when, with which kit. Read from CSV, iCalendar or JSON; every fault named with its line. */
@NullMarked
package org.tidegate.booking;

import org.jspecify.annotations.NullMarked;
