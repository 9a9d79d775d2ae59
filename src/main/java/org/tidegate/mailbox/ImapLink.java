package org.tidegate.mailbox;

import jakarta.mail.Flags;
import jakarta.mail.Folder;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.angus.mail.iap.ProtocolException;
import org.eclipse.angus.mail.iap.Response;
import org.eclipse.angus.mail.imap.IMAPFolder;
import org.eclipse.angus.mail.imap.IMAPStore;
import org.eclipse.angus.mail.imap.protocol.FetchResponse;
import org.eclipse.angus.mail.imap.protocol.IMAPProtocol;
import org.eclipse.angus.mail.imap.protocol.IMAPResponse;

/** One logged-in connection with the folder selected. Used by one thread at a time. */
final class ImapLink implements AutoCloseable {

    private static final Duration ANSWER = Duration.ofMinutes(2);

    private final ImapAccount account;
    private final IMAPStore store;
    private final IMAPFolder folder;
    private final long uidValidity;

    private ImapLink(ImapAccount account, IMAPStore store, IMAPFolder folder, long uidValidity) {
        this.account = account;
        this.store = store;
        this.folder = folder;
        this.uidValidity = uidValidity;
    }

    static ImapLink open(ImapAccount account) throws MessagingException {
        String protocol = MailSessions.protocol("imap", account.server());
        long answerMillis = ANSWER.plus(account.poll()).toMillis();
        Session session = MailSessions.session(protocol, account.server(), Optional.of(account.login()), answerMillis);
        IMAPStore store = (IMAPStore) session.getStore(protocol);
        try {
            store.connect(
                    account.server().host(),
                    account.server().port(),
                    account.login().user(),
                    account.login().secret().get());
            IMAPFolder folder = (IMAPFolder) store.getFolder(account.folder());
            folder.open(Folder.READ_WRITE);
            ImapLink link = new ImapLink(account, store, folder, folder.getUIDValidity());
            link.checkMarking();
            return link;
        } catch (MessagingException | RuntimeException e) {
            close(store);
            throw e;
        }
    }

    private void checkMarking() throws MessagingException {
        if (account.marking() instanceof Marking.Keyword keyword) {
            Flags allowed = folder.getPermanentFlags();
            if (allowed != null && !allowed.contains(Flags.Flag.USER) && !allowed.contains(keyword.keyword())) {
                throw new MailboxException("The server of " + account.name() + " keeps no keyword in folder "
                        + account.folder() + ": mark taken messages by moving them to a folder instead.");
            }
        } else if (!store.hasCapability("MOVE")) {
            throw new MailboxException(
                    "The server of " + account.name() + " cannot move messages: mark them by a keyword instead.");
        }
    }

    long uidValidity() {
        return uidValidity;
    }

    /** UIDs of everything not yet marked, ascending. */
    List<Long> unmarked() throws MessagingException {
        String criterion = account.marking() instanceof Marking.Keyword k ? "UNKEYWORD " + k.keyword() : "ALL";
        List<Long> uids = new ArrayList<>();
        for (Response response : command("UID SEARCH " + criterion)) {
            if (response instanceof IMAPResponse r && r.keyEquals("SEARCH")) {
                for (long uid = r.readLong(); uid >= 0; uid = r.readLong()) {
                    uids.add(uid);
                }
            }
        }
        uids.sort(Long::compare);
        return uids;
    }

    /** {@code UID FETCH}; one response a message that is still there. */
    List<FetchResponse> fetch(String uids, String items) throws MessagingException {
        List<FetchResponse> found = new ArrayList<>();
        for (Response response : command("UID FETCH " + uids + " (UID " + items + ")")) {
            if (response instanceof FetchResponse f) {
                found.add(f);
            }
        }
        return found;
    }

    void mark(String uids) throws MessagingException {
        if (account.marking() instanceof Marking.Keyword k) {
            command("UID STORE " + uids + " +FLAGS.SILENT (" + k.keyword() + ")");
        } else if (account.marking() instanceof Marking.Move m) {
            command("UID MOVE " + uids + " \"" + m.folder().replace("\"", "") + "\"");
        }
    }

    /** Whether the server can tell by itself that mail came (RFC 2177). */
    boolean canIdle() throws MessagingException {
        return store.hasCapability("IDLE");
    }

    /** Waits until the server tells something, or another thread calls {@link #wake()}. */
    void idle() throws MessagingException {
        folder.idle(true);
    }

    /** Ends an {@link #idle()} of another thread. */
    void wake() {
        try {
            folder.getMessageCount();
        } catch (MessagingException | IllegalStateException e) {
            close();
        }
    }

    private Response[] command(String command) throws MessagingException {
        Object answer = folder.doCommand(protocol -> run(protocol, command));
        return (Response[]) answer;
    }

    private static Response[] run(IMAPProtocol protocol, String command) throws ProtocolException {
        Response[] responses = protocol.command(command, null);
        Response last = responses[responses.length - 1];
        protocol.handleResult(last);
        return responses;
    }

    @Override
    public void close() {
        close(store);
    }

    /** Never expunges: the folder is dropped with the connection. */
    private static void close(IMAPStore store) {
        try {
            store.close();
        } catch (MessagingException e) {
            // The connection is gone already, which is what was wanted.
        }
    }
}
