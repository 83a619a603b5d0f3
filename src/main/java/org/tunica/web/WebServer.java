package org.tunica.web;

import java.util.Map;
import org.springframework.boot.Banner;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.tunica.Tunica;

/** A server that is up. Closing it lets running requests end first. */
public final class WebServer implements AutoCloseable {
    private final ConfigurableApplicationContext context;

    private WebServer(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /**
     * Where to listen.
     *
     * @param address of this machine to bind, such as 127.0.0.1
     * @param port 0 takes a free one
     */
    public record Listening(String address, int port) {}

    /** Starts a server and returns when it answers. */
    public static WebServer start(Tunica tunica, Listening listening) {
        ApplicationContextInitializer<GenericApplicationContext> frontDoor =
                context -> context.registerBean(Tunica.class, () -> tunica);
        return new WebServer(new SpringApplicationBuilder(WebConfiguration.class)
                .bannerMode(Banner.Mode.OFF)
                .initializers(frontDoor)
                .properties(Map.of("server.address", listening.address(), "server.port", listening.port()))
                .run());
    }

    /** The port it listens on. */
    public int port() {
        return ((ServletWebServerApplicationContext) context).getWebServer().getPort();
    }

    @Override
    public void close() {
        context.close();
    }
}
