package org.tunica.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.core.StandardHost;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;

/**
 * What is answered to a request so malformed that it reaches no filter: problem details, and not the page of the server
 * underneath. It must be public with a plain constructor, for that server makes it.
 */
public final class BareRefusals extends ErrorReportValve {
    /** Puts it in the place of the usual page. */
    static WebServerFactoryCustomizer<TomcatServletWebServerFactory> customizer() {
        return factory -> factory.addContextCustomizers(context -> {
            if (context.getParent() instanceof StandardHost host) {
                host.setErrorReportValveClass(BareRefusals.class.getName());
                host.getPipeline().addValve(new BareRefusals());
            }
        });
    }

    @Override
    protected void report(Request request, Response response, @Nullable Throwable thrown) {
        int code = response.getStatus();
        @Nullable HttpStatus status = HttpStatus.resolve(code);
        if (code < HttpStatus.BAD_REQUEST.value() || status == null || response.getContentWritten() > 0) {
            return;
        }
        try {
            byte[] body = Refusals.problem(status, "the request cannot be understood", List.of())
                    .toString()
                    .getBytes(StandardCharsets.UTF_8);
            response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
            response.getOutputStream().write(body);
            response.finishResponse();
        } catch (IOException e) {
            response.setSuspended(true); // whoever asked is gone
        }
    }
}
