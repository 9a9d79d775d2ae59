/** Watches and takes from IMAP, sends by SMTP. */
@NullMarked
package org.tidegate.mailbox;

import org.jspecify.annotations.NullMarked;
