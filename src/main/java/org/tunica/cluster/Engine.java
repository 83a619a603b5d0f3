package org.tunica.cluster;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.Set;
import org.apache.hc.core5.http.Header;
import org.apache.hc.core5.http.HttpHost;
import org.apache.hc.core5.http.message.BasicHeader;
import org.apache.hc.core5.util.Timeout;
import org.opensearch.client.opensearch.generic.Bodies;
import org.opensearch.client.opensearch.generic.Body;
import org.opensearch.client.opensearch.generic.OpenSearchGenericClient;
import org.opensearch.client.opensearch.generic.Requests;
import org.opensearch.client.opensearch.generic.Response;
import org.opensearch.client.transport.OpenSearchTransport;
import org.opensearch.client.transport.httpclient5.ApacheHttpClient5TransportBuilder;
import org.opensearch.client.transport.httpclient5.ResponseException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Speaks to a search engine in JSON; when a node does not answer, the next is asked. Safe for several threads. */
final class Engine implements AutoCloseable {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String NDJSON = "application/x-ndjson";
    private static final Timeout LONGEST_WAIT = Timeout.ofSeconds(60);
    private static final int OK = 200;
    private static final int REFUSED = 400;
    private static final Set<Integer> NOT_LET_IN = Set.of(401, 403);
    private static final int NOT_FOUND = 404;
    private static final int TOO_MANY = 429;
    private static final int BROKEN = 500;
    private static final int MOST_SHOWN = 400;

    private final OpenSearchTransport transport;
    private final OpenSearchGenericClient client;

    private Engine(OpenSearchTransport transport) {
        this.transport = transport;
        this.client = new OpenSearchGenericClient(transport);
    }

    static Engine at(EngineAddress address) {
        HttpHost[] hosts = address.nodes().stream()
                .map(node -> new HttpHost(node.getScheme(), node.getHost(), port(node.getScheme(), node.getPort())))
                .toArray(HttpHost[]::new);
        Header[] headers = address.login().map(Engine::authorization).stream().toArray(Header[]::new);
        return new Engine(ApacheHttpClient5TransportBuilder.builder(hosts)
                .setDefaultHeaders(headers)
                .setRequestConfigCallback(request -> request.setResponseTimeout(LONGEST_WAIT))
                .build());
    }

    private static int port(String scheme, int port) {
        return port >= 0 ? port : scheme.equals("https") ? 443 : 80;
    }

    private static Header authorization(EngineAddress.Login login) {
        byte[] both = (login.user() + ":" + login.password()).getBytes(StandardCharsets.UTF_8);
        return new BasicHeader("Authorization", "Basic " + Base64.getEncoder().encodeToString(both));
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** What came back, whatever it was. */
    record Answer(int status, JsonNode body) {
        boolean missing() {
            return status == NOT_FOUND;
        }

        boolean overloaded() {
            return status == TOO_MANY || status >= BROKEN;
        }

        /** What the engine gives as its reason. */
        String reason() {
            String type = body.path("error").path("type").asString("");
            String reason = body.path("error").path("reason").asString(body.toString());
            String all = "status " + status + (type.isEmpty() ? "" : ", " + type) + ": " + reason;
            return all.substring(0, Math.min(MOST_SHOWN, all.length()));
        }
    }

    /**
     * Asks, and wants success.
     *
     * @throws EngineUnavailable when no node answers or the engine cannot do it now
     */
    JsonNode ask(String method, String path, ObjectNode body) {
        Answer answer = send(method, path, Map.of(), body.isEmpty() ? null : Bodies.json(body.toString()));
        if (answer.status() < OK || answer.status() >= REFUSED) {
            throw new EngineUnavailable("The search engine refused " + method + " " + path + ": " + answer.reason());
        }
        return answer.body();
    }

    /** Asks, and takes any answer. */
    Answer tryTo(String method, String path, ObjectNode body) {
        return send(method, path, Map.of(), body.isEmpty() ? null : Bodies.json(body.toString()));
    }

    /** Sends lines of JSON. */
    Answer lines(String path, String lines) {
        return send("POST", path, Map.of(), Body.from(lines.getBytes(StandardCharsets.UTF_8), NDJSON));
    }

    private Answer send(
            String method, String path, Map<String, String> query, @org.jspecify.annotations.Nullable Body body) {
        Requests.JsonBodyBuilder request =
                Requests.builder().method(method).endpoint(path).query(query);
        try (Response response = client.execute(
                body == null ? request.build() : request.body(body).build())) {
            byte[] bytes = response.getBody().map(Body::bodyAsBytes).orElse(new byte[0]);
            return new Answer(response.getStatus(), bytes.length == 0 ? object() : JSON.readTree(bytes));
        } catch (IOException e) {
            throw new EngineUnavailable(why(e), e);
        } catch (JacksonException e) {
            throw new EngineUnavailable("What answers at " + path + " is no search engine we know", e);
        }
    }

    /** A name or password that is wrong, or may not do this, comes as a failed call with the answer somewhere below it. */
    private static String why(IOException e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof ResponseException response && NOT_LET_IN.contains(response.status())) {
                return "The search engine does not let us do this (status " + response.status() + "): look at "
                        + EngineAddress.USER + " and " + EngineAddress.PASSWORD
                        + ", and at what that user may do there";
            }
        }
        return "The search engine does not answer: " + e.getMessage();
    }

    @Override
    public void close() {
        try {
            transport.close();
        } catch (IOException e) {
            throw new EngineUnavailable("The search engine could not be left in peace: " + e.getMessage(), e);
        }
    }
}
