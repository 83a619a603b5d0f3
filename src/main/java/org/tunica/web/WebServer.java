package org.tunica.web;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.support.AbstractBeanDefinition;
import org.springframework.boot.Banner;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.security.oauth2.client.registration.ClientRegistrationRepository;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;
import org.tunica.Tunica;
import org.tunica.accounts.FirstStart;
import org.tunica.accounts.GivenLink;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.couch.SharedIndex;
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
     * @throws FaultyInput when others could reach it in the clear, or somebody else listens there
     */
    public static WebServer start(Tunica tunica, Store store, ServerSettings settings, Clock clock) {
        settings.checkReach();
        ApplicationContextInitializer<GenericApplicationContext> frontDoor = context -> {
            context.registerBean(Tunica.class, () -> tunica);
            context.registerBean(
                    Store.class,
                    () -> store,
                    definition -> ((AbstractBeanDefinition) definition).setDestroyMethodName(""));
            context.registerBean(ServerSettings.class, () -> settings);
            context.registerBean(SharedIndex.class, () -> new SharedIndex(settings.caseIndex()));
            context.registerBean(Clock.class, () -> clock);
            doors(context, settings);
            store.sessions().ifPresent(sessions -> SharedSessions.in(sessions, settings, context));
        };
        SpringApplicationBuilder server = new SpringApplicationBuilder(WebConfiguration.class)
                .bannerMode(Banner.Mode.OFF)
                .initializers(frontDoor)
                .registerShutdownHook(false)
                .logStartupInfo(false)
                .properties(BootSettings.of(settings));
        try {
            return new WebServer(server.run());
        } catch (PortInUseException e) {
            throw new FaultyInput(
                    "settings", List.of(new Fault("port", e.getPort() + " is taken; another program listens there")));
        }
    }

    /** The doors this site has: its own passwords, the hospital's accounts, or both. */
    private static void doors(GenericApplicationContext context, ServerSettings settings) {
        if (settings.passwords()) {
            context.registerBean(
                    LocalSignIn.class,
                    () -> Doors.localSignIn(
                            context.getBean(Store.class),
                            context.getBean(PasswordHashing.class),
                            settings,
                            context.getBean(SignInCounts.class),
                            context.getBean(Clock.class)));
        }
        settings.hospital().ifPresent(hospital -> {
            context.registerBean(ClientRegistrationRepository.class, () -> HospitalSignIn.registrations(hospital));
            context.registerBean(
                    HospitalSignIn.class,
                    () -> new HospitalSignIn(
                            hospital, context.getBean(Store.class).audit(), context.getBean(SignInCounts.class)));
        });
    }

    /** A link that makes the first administrator, when nobody is known yet and users of this server may sign in. */
    public Optional<GivenLink> firstLink() {
        return context.getBean(ServerSettings.class).passwords()
                ? context.getBean(FirstStart.class).link()
                : Optional.empty();
    }

    /** Every place where an address is tied to what answers it. */
    Collection<RequestMappingInfoHandlerMapping> mappings() {
        return context.getBeansOfType(RequestMappingInfoHandlerMapping.class).values();
    }

    /** Its address for somebody on this machine, without a path. */
    public String address() {
        ServerSettings settings = context.getBean(ServerSettings.class);
        String host = settings.listening().address();
        return (settings.protection().tls().isPresent() ? "https://" : "http://")
                + (host.contains(":") ? "[" + host + "]" : host) + ":" + port();
    }

    /** A link that makes another administrator, for when none of them can sign in any more. */
    public GivenLink linkForAnotherAdministrator() {
        return context.getBean(FirstStart.class).linkForAnother();
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
