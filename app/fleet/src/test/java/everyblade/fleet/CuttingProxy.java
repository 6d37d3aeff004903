package everyblade.fleet;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A stretch of network between a program and a server, which breaks after so many pieces of what passes through it, in
 * either direction: that one does not arrive any more.
 */
final class CuttingProxy implements Closeable {

    private final ServerSocket listening;
    private final int server;
    private final int cutAfter;
    private final AtomicInteger passed = new AtomicInteger();

    /**
     * Opens a port.
     *
     * @param server port of the server
     * @param cutAfter how many pieces pass; those of all connections count
     */
    CuttingProxy(int server, int cutAfter) throws IOException {
        this.server = server;
        this.cutAfter = cutAfter;
        this.listening = new ServerSocket(0, 10, InetAddress.getLoopbackAddress());
        start(this::accept);
    }

    int port() {
        return listening.getLocalPort();
    }

    /** Whether everything passed. */
    boolean isWhole() {
        return passed.get() <= cutAfter;
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "proxy");
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        while (!listening.isClosed()) {
            try {
                Socket client = listening.accept();
                Socket to = new Socket(InetAddress.getLoopbackAddress(), server);
                start(() -> pass(client, to));
                start(() -> pass(to, client));
            } catch (IOException over) {
                // closed, or the server does not answer: then neither do we
            }
        }
    }

    private void pass(Socket from, Socket to) {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            byte[] piece = new byte[1 << 16];
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                if (passed.incrementAndGet() > cutAfter) {
                    return;
                }
                out.write(piece, 0, read);
                out.flush();
            }
        } catch (IOException cut) {
            // which is what this is for
        }
    }

    @Override
    public void close() throws IOException {
        listening.close();
    }
}
