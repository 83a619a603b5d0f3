package org.tunica.web;

import jakarta.servlet.DispatcherType;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.session.web.http.CookieHttpSessionIdResolver;
import org.springframework.session.web.http.DefaultCookieSerializer;
import org.springframework.session.web.http.SessionRepositoryFilter;

/** Sessions that every server over one database knows, so that a request may go to any of them. */
final class SharedSessions {
    private SharedSessions() {}

    /** Has sessions kept there, with the same cookie as sessions of one process have. */
    static void in(JdbcIndexedSessionRepository sessions, ServerSettings settings, GenericApplicationContext context) {
        sessions.setDefaultMaxInactiveInterval(settings.signIn().idle());
        sessions.setConversionService(SessionBytes.conversion());
        context.registerBean(JdbcIndexedSessionRepository.class, () -> sessions);
        context.registerBean("sharedSessions", FilterRegistrationBean.class, () -> filter(sessions, settings));
    }

    private static <S extends Session> FilterRegistrationBean<SessionRepositoryFilter<S>> filter(
            SessionRepository<S> sessions, ServerSettings settings) {
        CookieHttpSessionIdResolver ids = new CookieHttpSessionIdResolver();
        ids.setCookieSerializer(cookie(settings));
        SessionRepositoryFilter<S> filter = new SessionRepositoryFilter<>(sessions);
        filter.setHttpSessionIdResolver(ids);
        FilterRegistrationBean<SessionRepositoryFilter<S>> registered = new FilterRegistrationBean<>(filter);
        registered.setOrder(SessionRepositoryFilter.DEFAULT_ORDER);
        registered.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ASYNC, DispatcherType.ERROR);
        return registered;
    }

    private static DefaultCookieSerializer cookie(ServerSettings settings) {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName(BootSettings.cookieName(settings));
        cookie.setCookiePath("/");
        cookie.setUseHttpOnlyCookie(true);
        cookie.setUseSecureCookie(settings.protection().given());
        cookie.setSameSite(BootSettings.sameSite(settings));
        return cookie;
    }
}
