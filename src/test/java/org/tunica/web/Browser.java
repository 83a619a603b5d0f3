package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody at a browser: keeps cookies, fills in forms, follows nothing by itself. */
public final class Browser {
    private static final Pattern FORM_TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Pattern JSON_TOKEN = Pattern.compile("\"csrfToken\":\"([^\"]+)\"");

    static final String IN_PART = "Not everything is computed yet";

    private final URI server;
    private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
    private final HttpClient client;

    Browser(URI server) {
        this.server = server;
        this.client = HttpClient.newBuilder()
                .cookieHandler(cookies)
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
    }

    public HttpResponse<String> get(String path) throws Exception {
        return send(at(path).GET());
    }

    /** The advice page once everything on it is computed; the server itself makes each look wait a moment. */
    public String whole(String path) throws Exception {
        String page = get(path).body();
        for (int looks = 0; looks < 600 && page.contains(IN_PART); looks++) {
            page = get(path).body();
        }
        assertFalse(page.contains(IN_PART), page);
        return page;
    }

    HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(server.resolve(path));
    }

    HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    public HttpResponse<byte[]> bytes(String path) throws Exception {
        return client.send(at(path).build(), BodyHandlers.ofByteArray());
    }

    /** Opens a page and sends its form. */
    HttpResponse<String> fillIn(String page, Map<String, String> fields) throws Exception {
        return fillIn(page, page, fields);
    }

    HttpResponse<String> fillIn(String page, String action, Map<String, String> fields) throws Exception {
        HttpResponse<String> form = get(page);
        Matcher token = FORM_TOKEN.matcher(form.body());
        assertTrue(token.find(), () -> page + " " + form.statusCode() + " has no form: " + form.body());
        return form(action, token.group(1), fields);
    }

    /** Sends fields as they were read from a form, each with every value it has. */
    public HttpResponse<String> send(String action, Map<String, List<String>> fields) throws Exception {
        return posted(
                action,
                fields.entrySet().stream()
                        .flatMap(field ->
                                field.getValue().stream().map(value -> encoded(field.getKey()) + "=" + encoded(value)))
                        .collect(Collectors.joining("&")));
    }

    HttpResponse<String> form(String action, String token, Map<String, String> fields) throws Exception {
        return posted(
                action,
                fields.entrySet().stream()
                                .map(field -> field.getKey() + "=" + encoded(field.getValue()))
                                .collect(Collectors.joining("&"))
                        + "&_csrf=" + encoded(token));
    }

    private HttpResponse<String> posted(String action, String body) throws Exception {
        return send(at(action)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body)));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    HttpResponse<String> signIn(String name, String password) throws Exception {
        return fillIn("/sign-in", Map.of("name", name, "password", password));
    }

    /** The token that every change must carry. */
    String token() throws Exception {
        Matcher token = JSON_TOKEN.matcher(get("/api/session").body());
        assertTrue(token.find());
        return token.group(1);
    }

    /** Sends JSON with the token of the session. */
    HttpResponse<String> json(String method, String path, String body, String... headers) throws Exception {
        HttpRequest.Builder request = at(path).header("Content-Type", "application/json")
                .header("X-CSRF-TOKEN", token())
                .method(method, BodyPublishers.ofString(body));
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return send(request);
    }

    /** The cookie of the session, when there is one. */
    Optional<HttpCookie> session() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().endsWith("tunica"))
                .findFirst();
    }

    /** Takes a cookie along that somebody else gave it. */
    void carry(HttpCookie cookie) {
        cookies.getCookieStore().add(server, cookie);
    }
}
