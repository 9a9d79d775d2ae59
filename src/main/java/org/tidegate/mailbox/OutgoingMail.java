package org.tidegate.mailbox;

import java.util.List;

/**
 * A message ready to be sent.
 *
 * @param envelopeFrom RFC 5321 MAIL FROM; an empty string is the null path
 * @param recipients RFC 5321 RCPT TO
 * @param raw the whole message, byte for byte
 */
public record OutgoingMail(String envelopeFrom, List<String> recipients, byte[] raw) {

    public OutgoingMail {
        recipients = List.copyOf(recipients);
    }
}
