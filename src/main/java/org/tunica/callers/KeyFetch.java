package org.tunica.callers;

import com.nimbusds.jose.util.DefaultResourceRetriever;
import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URL;

/** Fetches public keys from an address of the site's list, and from nowhere that address might point to. */
final class KeyFetch extends DefaultResourceRetriever {
    private static final int LONGEST_WAIT_MS = 2_000;

    /** Some thirty keys. */
    private static final int LARGEST_BYTES = 50_000;

    KeyFetch() {
        super(LONGEST_WAIT_MS, LONGEST_WAIT_MS, LARGEST_BYTES);
    }

    @Override
    protected HttpURLConnection openHTTPConnection(URL url) throws IOException {
        HttpURLConnection connection = super.openHTTPConnection(url);
        connection.setInstanceFollowRedirects(false);
        return connection;
    }
}
