package org.tunica.web;

import java.time.Clock;
import java.util.Map;
import org.springframework.beans.factory.support.AbstractBeanDefinition;
import org.springframework.boot.Banner;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.tunica.Tunica;
import org.tunica.store.Store;

/** A server that is up. Closing it lets running requests end first. */
public final class WebServer implements AutoCloseable {
    private final ConfigurableApplicationContext context;

    private WebServer(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /**
     * Starts a server and returns when it answers.
     *
     * @param store what is kept; whoever opened it closes it, after the server
     * @param clock tells when things happen
     */
    public static WebServer start(Tunica tunica, Store store, ServerSettings settings, Clock clock) {
        Listening listening = settings.listening();
        ApplicationContextInitializer<GenericApplicationContext> frontDoor = context -> {
            context.registerBean(Tunica.class, () -> tunica);
            context.registerBean(
                    Store.class,
                    () -> store,
                    definition -> ((AbstractBeanDefinition) definition).setDestroyMethodName(""));
            context.registerBean(ServerSettings.class, () -> settings);
            context.registerBean(Clock.class, () -> clock);
        };
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
