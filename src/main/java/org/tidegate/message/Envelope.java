package org.tidegate.message;

import java.util.List;
import java.util.Optional;

/**
 * Everything a message's own header fields and text say: plain data that is stored with the findings.
 *
 * @param subject the decoded subject; where several stand, the one that DKIM signs, else the first
 * @param from mailboxes of From (RFC 5322 §3.6.2)
 * @param replyTo mailboxes of Reply-To
 * @param to mailboxes of To and Cc
 * @param returnPath the envelope sender recorded at delivery; an empty string means the null path {@code <>}
 * @param date the Date field
 * @param messageId without angle brackets
 * @param references In-Reply-To and References, oldest first, without angle brackets
 * @param hops Received lines, topmost first
 * @param authentication all Authentication-Results, topmost first
 * @param dkim all DKIM-Signature fields
 * @param nature person, automatic reply, bounce or list
 * @param natureReason the header or sign that decided {@code nature}; empty for PERSONAL
 * @param mailProgram X-Mailer or User-Agent
 * @param text what the sender wrote in the body as plain text (HTML rendered to text), quoted and forwarded text left in
 * @param language the first of Content-Language, where given
 */
public record Envelope(
        Optional<String> subject,
        List<Mailbox> from,
        List<Mailbox> replyTo,
        List<Mailbox> to,
        Optional<String> returnPath,
        Optional<HeaderDate> date,
        Optional<String> messageId,
        List<String> references,
        List<TraceHop> hops,
        List<AuthenticationResult> authentication,
        List<DkimSignature> dkim,
        Nature nature,
        Optional<String> natureReason,
        Optional<String> mailProgram,
        String text,
        Optional<String> language) {}
