package org.tidegate.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against a server of a few lines that answers, refuses or breaks off where the case says. */
class SmtpSenderTest {

    private static final byte[] MAIL = "From: intake@skarrasound.example\r\nSubject: x\r\n\r\nHello\r\n.dot\r\n"
            .getBytes(StandardCharsets.US_ASCII);

    @ParameterizedTest
    @CsvSource({
        "none, 250, Accepted",
        "MAIL, 451, Refused temporary",
        "RCPT, 550, Refused permanent",
        "RCPT, 450, Refused temporary",
        "DATA, 554, Refused permanent",
        "END, 452, Refused temporary",
        "END, 554, Refused permanent",
        "END, cut, Uncertain",
        "DATA, cut, Uncertain",
        "GREETING, cut, Refused temporary",
        "GREETING, 421, Refused temporary"
    })
    void tellsHowItEnded(String at, String answer, String end) throws Exception {
        try (Script script = new Script(at, answer)) {
            Server server = new Server("127.0.0.1", script.port(), TlsMode.PLAIN, Optional.empty());
            SendResult result = new SmtpSender(server, Optional.empty())
                    .send(new OutgoingMail("intake@skarrasound.example", List.of("crew@tarnmail.example"), MAIL));
            assertThat(name(result)).as("%s %s: %s", at, answer, result).isEqualTo(end);
            if (result instanceof SendResult.Accepted) {
                assertThat(String.join("\r\n", script.lines)).contains("Subject: x\r\n\r\nHello\r\n..dot\r\n.");
            }
        }
    }

    private static String name(SendResult result) {
        return result instanceof SendResult.Refused r
                ? "Refused " + (r.permanent() ? "permanent" : "temporary")
                : result.getClass().getSimpleName();
    }

    private static final class Script implements AutoCloseable {
        private final ServerSocket listening = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
        private final List<String> lines = Collections.synchronizedList(new ArrayList<>());
        private final String at;
        private final String answer;

        Script(String at, String answer) throws IOException {
            this.at = at;
            this.answer = answer;
            Thread thread = new Thread(this::serve, "smtp-script");
            thread.setDaemon(true);
            thread.start();
        }

        int port() {
            return listening.getLocalPort();
        }

        private void serve() {
            try (Socket socket = listening.accept();
                    BufferedReader in = new BufferedReader(
                            new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))) {
                OutputStream out = socket.getOutputStream();
                boolean open = reply(out, "GREETING", "220");
                boolean data = false;
                for (String line = open ? in.readLine() : null;
                        line != null && open;
                        line = open ? in.readLine() : null) {
                    lines.add(line);
                    if (data && !line.equals(".")) {
                        continue;
                    }
                    String step = data ? "END" : line.split("[ :]", 2)[0];
                    data = step.equals("DATA");
                    open = reply(out, step, data ? "354" : "250");
                    data &= !step.equals(at);
                }
            } catch (IOException e) {
                // The client is gone.
            }
        }

        private boolean reply(OutputStream out, String step, String usual) throws IOException {
            if (step.equals(at) && answer.equals("cut")) {
                return false;
            }
            String code = step.equals(at) ? answer : usual;
            out.write((code + " as the case says\r\n").getBytes(StandardCharsets.US_ASCII));
            out.flush();
            return true;
        }

        @Override
        public void close() throws IOException {
            listening.close();
        }
    }
}
