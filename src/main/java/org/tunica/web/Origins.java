package org.tunica.web;

import jakarta.servlet.Filter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.web.cors.CorsConfiguration;
import org.springframework.web.cors.DefaultCorsProcessor;
import org.springframework.web.cors.UrlBasedCorsConfigurationSource;
import org.springframework.web.filter.CorsFilter;

/** Which pages in browsers may call; a page's question whether it may is answered without a token. */
final class Origins extends DefaultCorsProcessor {
    private static final Duration ASKED_AGAIN_AFTER = Duration.ofMinutes(10);

    private Origins() {}

    static Filter filter(List<String> origins) {
        CorsConfiguration configuration = new CorsConfiguration();
        configuration.setAllowedOrigins(origins);
        configuration.setAllowedMethods(List.of("GET", "POST", "OPTIONS"));
        configuration.setAllowedHeaders(List.of("Authorization", "Content-Type"));
        configuration.setAllowCredentials(false);
        configuration.setMaxAge(ASKED_AGAIN_AFTER);
        UrlBasedCorsConfigurationSource everywhere = new UrlBasedCorsConfigurationSource();
        everywhere.registerCorsConfiguration("/**", configuration);
        CorsFilter filter = new CorsFilter(everywhere);
        filter.setCorsProcessor(new Origins());
        return filter;
    }

    @Override
    protected void rejectRequest(ServerHttpResponse response) throws IOException {
        response.setStatusCode(HttpStatus.FORBIDDEN);
        response.getHeaders().setContentType(MediaType.APPLICATION_PROBLEM_JSON);
        response.getBody()
                .write(Refusals.problem(HttpStatus.FORBIDDEN, "pages of that origin may not call", List.of())
                        .toString()
                        .getBytes(StandardCharsets.UTF_8));
        response.flush();
    }
}
