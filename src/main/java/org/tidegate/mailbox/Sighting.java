package org.tidegate.mailbox;

import java.time.Instant;
import java.util.Optional;

/**
 * Where a message was seen. One message may be sighted several times, for example after UIDVALIDITY changed (RFC 3501 §2.3.1.1).
 *
 * @param account name of the account in the configuration
 * @param folder mailbox folder
 * @param uidValidity the folder's UIDVALIDITY
 * @param uid the message's UID under it
 * @param internalDate the server's INTERNALDATE; it means the delivery time only where the operator says that the server keeps it so
 */
public record Sighting(String account, String folder, long uidValidity, long uid, Optional<Instant> internalDate) {}
