/**
 * From raw bytes to {@link org.tidegate.message.MailMessage}: RFC 5322 and MIME however malformed, the times that each mail
 * server wrote, authentication results, and every attached file told by its content. Malformed input becomes a recorded
 * {@link org.tidegate.message.Problem} beside whatever could be read; nothing here decides what a problem means.
 */
@NullMarked
package org.tidegate.message;

import org.jspecify.annotations.NullMarked;
