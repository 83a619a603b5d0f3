package org.tunica.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** Publishes keys on loopback: as they should be, behind a redirect, far too long, and never. */
public final class KeyServer implements AutoCloseable {
    private final HttpServer server;
    private final AtomicInteger asked = new AtomicInteger();
    private final CountDownLatch closed = new CountDownLatch(1);

    private KeyServer(HttpServer server) {
        this.server = server;
    }

    /** One that publishes a set of keys. */
    public static KeyServer of(String keys) {
        try {
            HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
            server.setExecutor(Executors.newCachedThreadPool());
            KeyServer published = new KeyServer(server);
            server.createContext("/keys", exchange -> published.keys(exchange, keys));
            server.createContext("/moved", published::moved);
            server.createContext("/huge", exchange -> published.keys(exchange, keys + " ".repeat(100_000)));
            server.createContext("/never", published::never);
            server.start();
            return published;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void keys(HttpExchange exchange, String keys) throws IOException {
        asked.incrementAndGet();
        byte[] bytes = keys.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", "application/json");
        exchange.sendResponseHeaders(200, bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private void moved(HttpExchange exchange) throws IOException {
        exchange.getResponseHeaders().set("Location", at("/keys"));
        exchange.sendResponseHeaders(302, -1);
        exchange.close();
    }

    private void never(HttpExchange exchange) {
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        exchange.close();
    }

    /** How often the keys were asked for. */
    public int asked() {
        return asked.get();
    }

    /** The address of a path. */
    public String at(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + path;
    }

    @Override
    public void close() {
        closed.countDown();
        server.stop(0);
    }
}
