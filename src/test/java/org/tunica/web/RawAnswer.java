package org.tunica.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What came back over a socket.
 *
 * @param status 0 when the server only closed the connection
 */
record RawAnswer(int status, String head, String body) {
    private static final int LONGEST_WAIT_MS = 60_000;

    /** A request line without a version is answered without a head (HTTP/0.9). */
    private static final Pattern BARE_PROBLEM = Pattern.compile("\\{\"title\".*\"status\":(\\d{3}).*");

    private static final String END_OF_HEAD = "\r\n\r\n";

    /** Sends bytes and reads until the server closes; a server that does neither answer nor close in time is a fault. */
    static RawAnswer to(int port, byte[] request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(LONGEST_WAIT_MS);
            try {
                socket.getOutputStream().write(request);
                socket.shutdownOutput();
            } catch (IOException e) {
                // the server may answer and close before it has read everything
            }
            return of(read(socket.getInputStream()));
        } catch (SocketTimeoutException e) {
            throw new AssertionError("no answer to " + HostileRequest.shown(request), e);
        } catch (IOException e) {
            throw new AssertionError("broken off: " + HostileRequest.shown(request), e);
        }
    }

    /** What came before the connection ended; one that ends hard after an answer is no fault. */
    private static String read(InputStream in) throws IOException {
        StringBuilder text = new StringBuilder();
        byte[] buffer = new byte[8_192];
        try {
            for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
                text.append(new String(buffer, 0, count, StandardCharsets.ISO_8859_1));
            }
        } catch (SocketTimeoutException e) {
            throw e;
        } catch (IOException e) {
            if (text.isEmpty()) {
                throw e;
            }
        }
        return text.toString();
    }

    private static RawAnswer of(String text) {
        Matcher bare = BARE_PROBLEM.matcher(text);
        if (bare.matches()) {
            return new RawAnswer(Integer.parseInt(bare.group(1)), "content-type: application/problem+json", text);
        }
        int end = text.indexOf(END_OF_HEAD);
        if (!text.startsWith("HTTP/1.1 ") || end < 0) {
            return new RawAnswer(0, text, "");
        }
        return new RawAnswer(
                Integer.parseInt(text.substring(9, 12)),
                text.substring(0, end),
                text.substring(end + END_OF_HEAD.length()));
    }

    /** A page for people, with the caution every page has. */
    boolean isPage() {
        return head.toLowerCase(Locale.ROOT).contains("content-type: text/html") && body.contains("specialist decides");
    }

    /** Nothing came but the end. */
    boolean isSilent() {
        return head.isEmpty() && body.isEmpty();
    }

    /** A refusal without a body, or one in the form of problem details or of an OperationOutcome. */
    boolean isEmptyOrTells() {
        String lower = head.toLowerCase(Locale.ROOT);
        boolean problem =
                lower.contains("content-type: application/problem+json") && body.contains("\"status\":" + status);
        boolean outcome = body.contains("\"resourceType\":\"OperationOutcome\"")
                && (lower.contains("content-type: application/fhir+json")
                        || lower.contains("content-type: application/json"));
        return problem || outcome || body.isEmpty();
    }
}
