/**
 * What people and the daemon do. {@link org.tidegate.casework.Desk} wires the room from one {@link
 * org.tidegate.casework.DeskConfig}: {@link org.tidegate.casework.IntakeService} takes messages in and returns only when they
 * are durable; {@link org.tidegate.casework.ExaminationWorker} draws work and inspects; {@code Assessing}
 * joins messages to submissions in the order of taking, whoever finishes first, and appends
 * assessments; {@link org.tidegate.casework.Casebook} shows what waits for a person, in order; {@code RequestWriter} merges all
 * discrepancies into one suggested letter.
 */
@NullMarked
package org.tidegate.casework;

import org.jspecify.annotations.NullMarked;
