package org.tunica;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A key of a server on this machine, made for one test, and who trusts it. */
public final class ServerKeys {
    /** Of both stores. */
    public static final String PASSWORD = "not-a-secret";

    private static final String ALIAS = "server";

    private final Path file;
    private final KeyStore keys;

    private ServerKeys(Path file, KeyStore keys) {
        this.file = file;
        this.keys = keys;
    }

    /** Makes a key for {@code localhost} and {@code 127.0.0.1} with the tool of the Java installation. */
    public static ServerKeys make(Path folder) throws IOException, GeneralSecurityException, InterruptedException {
        Path file = folder.resolve("server.p12");
        Process made = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        ALIAS,
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "san=dns:localhost,ip:127.0.0.1",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        file.toString(),
                        "-storepass",
                        PASSWORD)
                .redirectErrorStream(true)
                .start();
        String said = new String(made.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (made.waitFor() != 0) {
            throw new IllegalStateException(said);
        }
        return new ServerKeys(file, KeyStore.getInstance(file.toFile(), PASSWORD.toCharArray()));
    }

    /** The key and its certificate, PKCS 12. */
    public Path file() {
        return file;
    }

    /** For the server. */
    public SSLContext own() throws GeneralSecurityException {
        KeyManagerFactory managers = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        managers.init(keys, PASSWORD.toCharArray());
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(managers.getKeyManagers(), null, null);
        return context;
    }

    /** For a client in this process. */
    public SSLContext trusting() throws GeneralSecurityException, IOException {
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted());
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context;
    }

    /** For a client in another process: a store of certificates it may be told to trust. */
    public Path trustStore(Path folder) throws GeneralSecurityException, IOException {
        Path store = folder.resolve("trusted.p12");
        try (OutputStream out = Files.newOutputStream(store)) {
            trusted().store(out, PASSWORD.toCharArray());
        }
        return store;
    }

    private KeyStore trusted() throws GeneralSecurityException, IOException {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry(ALIAS, keys.getCertificate(ALIAS));
        return trusted;
    }
}
