package org.tidegate.message;

import java.util.List;

/**
 * One message as read from its raw bytes.
 *
 * @param envelope header fields and text
 * @param attachments every file at every depth, in order of appearance
 * @param problems what was malformed, over a limit or unsafe
 */
public record MailMessage(Envelope envelope, List<Attachment> attachments, List<Problem> problems) {}
