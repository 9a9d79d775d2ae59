package org.tidegate.mailbox;

import java.time.Duration;

/**
 * One mailbox to watch.
 *
 * @param name what the configuration calls it
 * @param server the IMAP server
 * @param login user and password or token
 * @param folder the folder that mail arrives in
 * @param marking how a taken message is marked on the server
 * @param connections how many connections fetch at once
 * @param poll how often to look where the server does not tell by itself, and the longest wait where it does
 */
public record ImapAccount(
        String name, Server server, Login login, String folder, Marking marking, int connections, Duration poll) {

    /** With {@code $TidegateTaken}, three connections, a look every five minutes. */
    public static ImapAccount of(String name, Server server, Login login, String folder) {
        return new ImapAccount(
                name, server, login, folder, new Marking.Keyword("$TidegateTaken"), 3, Duration.ofMinutes(5));
    }
}
