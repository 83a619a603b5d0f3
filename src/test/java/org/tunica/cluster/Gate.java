package org.tunica.cluster;

import com.sun.net.httpserver.BasicAuthenticator;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.security.GeneralSecurityException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.tunica.ServerKeys;

/** Stands before a node, as in a hospital: speaks TLS, and lets nobody through without name and password. */
public final class Gate implements AutoCloseable {
    public static final String USER = "tunica-index";
    public static final String PASSWORD = "kept in: the environment";

    private final URI node;
    private final HttpsServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final HttpClient client = HttpClient.newHttpClient();

    /** @param node that is asked, in the clear and on this machine */
    public Gate(URI node, ServerKeys keys) throws IOException, GeneralSecurityException {
        this.node = node;
        this.server = HttpsServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setHttpsConfigurator(new HttpsConfigurator(keys.own()));
        server.setExecutor(threads);
        server.createContext("/", this::pass).setAuthenticator(new BasicAuthenticator("index") {
            @Override
            public boolean checkCredentials(String user, String password) {
                return user.equals(USER) && password.equals(PASSWORD);
            }
        });
        server.start();
    }

    public String address() {
        return "https://localhost:" + server.getAddress().getPort();
    }

    private void pass(HttpExchange exchange) throws IOException {
        byte[] body = exchange.getRequestBody().readAllBytes();
        HttpRequest.Builder request = HttpRequest.newBuilder(node.resolve(exchange.getRequestURI()))
                .method(exchange.getRequestMethod(), HttpRequest.BodyPublishers.ofByteArray(body));
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type != null) {
            request.header("Content-Type", type);
        }
        try {
            HttpResponse<byte[]> answer = client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
            answer.headers()
                    .firstValue("Content-Type")
                    .ifPresent(said -> exchange.getResponseHeaders().set("Content-Type", said));
            byte[] bytes = answer.body();
            exchange.sendResponseHeaders(answer.statusCode(), bytes.length == 0 ? -1 : bytes.length);
            exchange.getResponseBody().write(bytes);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            exchange.close();
        }
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
