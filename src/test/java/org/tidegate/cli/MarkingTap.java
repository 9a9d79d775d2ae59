package org.tidegate.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Stands before an IMAP server and stops all traffic exactly before a message is marked there, or before the answer to it. */
final class MarkingTap implements AutoCloseable {

    /** Where traffic stops. */
    enum Stop {
        NEVER,
        /** The client has asked to mark; the server does not hear it. */
        BEFORE,
        /** The server has marked; the client does not hear it. */
        AFTER
    }

    private final ServerSocket listening;
    private final int target;
    private Stop stop = Stop.NEVER;
    private CountDownLatch reached = new CountDownLatch(1);
    private CountDownLatch connected = new CountDownLatch(1);
    private boolean frozen;
    private int generation;

    MarkingTap(int target) throws IOException {
        this.target = target;
        this.listening = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        start(this::accept);
    }

    int port() {
        return listening.getLocalPort();
    }

    /** Lets traffic pass again, for the next client. */
    synchronized void arm(Stop next) {
        stop = next;
        reached = new CountDownLatch(1);
        connected = new CountDownLatch(1);
        frozen = false;
        generation++;
        notifyAll();
    }

    boolean awaitStop(long seconds) throws InterruptedException {
        return latch(true).await(seconds, TimeUnit.SECONDS);
    }

    boolean awaitClient(long seconds) throws InterruptedException {
        return latch(false).await(seconds, TimeUnit.SECONDS);
    }

    private synchronized CountDownLatch latch(boolean stopped) {
        return stopped ? reached : connected;
    }

    @Override
    public void close() throws IOException {
        listening.close();
        arm(Stop.NEVER);
    }

    private void accept() {
        try {
            while (true) {
                Socket client = listening.accept();
                latch(false).countDown();
                Line line = new Line(client, new Socket(InetAddress.getLoopbackAddress(), target));
                start(() -> line.pump(client, line.server, true));
                start(() -> line.pump(line.server, client, false));
            }
        } catch (IOException e) {
            // Closed by the test.
        }
    }

    private final class Line {
        private final Socket client;
        private final Socket server;
        private final int born;
        private boolean marking;

        Line(Socket client, Socket server) {
            this.client = client;
            this.server = server;
            synchronized (MarkingTap.this) {
                this.born = generation;
            }
        }

        void pump(Socket from, Socket to, boolean asking) {
            try (client;
                    server) {
                InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream();
                byte[] buffer = new byte[8192];
                for (int n = in.read(buffer); n >= 0 && passes(buffer, n, asking); n = in.read(buffer)) {
                    out.write(buffer, 0, n);
                    out.flush();
                }
            } catch (IOException e) {
                // One side is gone; closing both is all there is to do.
            }
        }

        private boolean passes(byte[] bytes, int length, boolean asking) {
            synchronized (MarkingTap.this) {
                boolean store =
                        asking && new String(bytes, 0, length, StandardCharsets.ISO_8859_1).contains("UID STORE");
                boolean here = stop == Stop.BEFORE ? store : stop == Stop.AFTER && marking && !asking;
                marking |= store;
                if (here && born == generation && !frozen) {
                    frozen = true;
                    reached.countDown();
                }
                while (frozen && born == generation) {
                    waitQuietly();
                }
                return born == generation;
            }
        }

        private void waitQuietly() {
            try {
                MarkingTap.this.wait();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                frozen = false;
            }
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "marking-tap");
        thread.setDaemon(true);
        thread.start();
    }
}
