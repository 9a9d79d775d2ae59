package org.tidegate.mailbox;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicInteger;

/** Stands before a server and cuts its first connections after a given number of bytes from the server. */
public final class CuttingProxy implements AutoCloseable {

    private final ServerSocket listening;
    private final int target;
    private final int cutAfter;
    private final AtomicInteger cutsLeft;

    public CuttingProxy(int target, int cutAfter, int cuts) throws IOException {
        this.target = target;
        this.cutAfter = cutAfter;
        this.cutsLeft = new AtomicInteger(cuts);
        this.listening = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        start(this::accept);
    }

    public int port() {
        return listening.getLocalPort();
    }

    public int cutsLeft() {
        return Math.max(0, cutsLeft.get());
    }

    @Override
    public void close() throws IOException {
        listening.close();
    }

    private void accept() {
        try {
            while (true) {
                Socket client = listening.accept();
                Socket server = new Socket(InetAddress.getLoopbackAddress(), target);
                boolean cutting = cutsLeft.getAndDecrement() > 0;
                start(() -> pump(client, server, Long.MAX_VALUE));
                start(() -> pump(server, client, cutting ? cutAfter : Long.MAX_VALUE));
            }
        } catch (IOException e) {
            // Closed by the test.
        }
    }

    private static void pump(Socket from, Socket to, long most) {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            byte[] buffer = new byte[4096];
            long left = most;
            while (left > 0) {
                int count = in.read(buffer, 0, (int) Math.min(buffer.length, left));
                if (count < 0) {
                    return;
                }
                out.write(buffer, 0, count);
                out.flush();
                left -= count;
            }
        } catch (IOException e) {
            // One side is gone; closing both is all there is to do.
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "cutting-proxy");
        thread.setDaemon(true);
        thread.start();
    }
}
