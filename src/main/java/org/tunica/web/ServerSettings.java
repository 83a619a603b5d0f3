package org.tunica.web;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.cluster.EngineAddress;
import org.tunica.knowledge.YamlText;

/**
 * Everything a site can say of its server. Each part reads its own fields and has its own usual values.
 *
 * @param listening where it listens
 * @param protection what stands between it and a network
 * @param signIn how people stay signed in
 * @param hospital the hospital's accounts, where they are used
 * @param adviceWithoutSignIn whether programs on this machine may ask for advice and plans, of which nothing is kept,
 *     without signing in
 * @param recordSystems which record systems may call
 * @param limits how much anyone may ask
 * @param caseIndex the search engine on which the index of past segments stands; none where it is made here
 */
public record ServerSettings(
        Listening listening,
        Protection protection,
        SignInRules signIn,
        Optional<OpenIdConnect> hospital,
        boolean adviceWithoutSignIn,
        RecordSystems recordSystems,
        Limits limits,
        Optional<EngineAddress> caseIndex) {
    /** The word a file of settings must carry under {@code format}. */
    public static final String FORMAT = "tunica-server/1";

    /** @throws FaultyInput when one part of them forbids another */
    public ServerSettings {
        if (recordSystems.calls() == RecordSystems.Calls.UNSIGNED_FOR_TESTS && !listening.isLoopback()) {
            throw new FaultyInput(
                    "settings",
                    List.of(new Fault(
                            "recordSystems.calls", "unsigned calls are for tests, on a loopback address alone")));
        }
    }

    /** What holds where nobody said anything. */
    public static ServerSettings usual() {
        return new ServerSettings(
                Listening.USUAL,
                Protection.NONE,
                SignInRules.USUAL,
                Optional.empty(),
                false,
                RecordSystems.NONE,
                Limits.USUAL,
                Optional.empty());
    }

    /**
     * Reads a file of settings.
     *
     * @param what the name of the input, for messages
     * @param bytes YAML in UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault and its place
     */
    public static ServerSettings read(String what, byte[] bytes) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(YamlText.parse(what, bytes), what + ":", faults);
        ServerSettings settings = read(reader);
        reader.done();
        faults.throwIfAny(what);
        return settings;
    }

    private static ServerSettings read(FieldReader reader) {
        String format = reader.requiredText("format");
        if (!format.isEmpty() && !format.equals(FORMAT)) {
            reader.fault("format", "must be \"" + FORMAT + "\"");
        }
        return new ServerSettings(
                Listening.read(reader),
                Protection.read(reader),
                reader.object("signIn").map(SignInRules::read).orElse(SignInRules.USUAL),
                reader.object("openIdConnect").map(OpenIdConnect::read),
                reader.flag("adviceWithoutSignIn").orElse(false),
                reader.object("recordSystems").map(RecordSystems::read).orElse(RecordSystems.NONE),
                reader.object("limits").map(Limits::read).orElse(Limits.USUAL),
                reader.text("caseIndex").flatMap(address -> caseIndex(reader, address)));
    }

    private static Optional<EngineAddress> caseIndex(FieldReader reader, String address) {
        try {
            return Optional.of(EngineAddress.of(address, System.getenv()));
        } catch (FaultyInput e) {
            e.faults().forEach(fault -> reader.fault("caseIndex", fault.toString()));
            return Optional.empty();
        }
    }

    /** The same settings, with an index of past segments on a search engine. */
    ServerSettings with(EngineAddress index) {
        return new ServerSettings(
                listening,
                protection,
                signIn,
                hospital,
                adviceWithoutSignIn,
                recordSystems,
                limits,
                Optional.of(index));
    }

    /** The same settings, listening elsewhere. */
    public ServerSettings with(Listening other) {
        return new ServerSettings(
                other, protection, signIn, hospital, adviceWithoutSignIn, recordSystems, limits, caseIndex);
    }

    /** The same settings, with other record systems. */
    public ServerSettings with(RecordSystems others) {
        return new ServerSettings(
                listening, protection, signIn, hospital, adviceWithoutSignIn, others, limits, caseIndex);
    }

    /** The same settings, with other limits. */
    public ServerSettings with(Limits others) {
        return new ServerSettings(
                listening, protection, signIn, hospital, adviceWithoutSignIn, recordSystems, others, caseIndex);
    }

    /** The same settings, protected otherwise. */
    ServerSettings with(Protection other) {
        return new ServerSettings(
                listening, other, signIn, hospital, adviceWithoutSignIn, recordSystems, limits, caseIndex);
    }

    /** The same settings, with other rules of signing in. */
    ServerSettings with(SignInRules others) {
        return new ServerSettings(
                listening, protection, others, hospital, adviceWithoutSignIn, recordSystems, limits, caseIndex);
    }

    /** The same settings, with the accounts of a hospital. */
    ServerSettings with(OpenIdConnect accounts) {
        return new ServerSettings(
                listening,
                protection,
                signIn,
                Optional.of(accounts),
                adviceWithoutSignIn,
                recordSystems,
                limits,
                caseIndex);
    }

    /** The same settings, and programs on this machine may ask for advice without signing in. */
    public ServerSettings withAdviceForAll() {
        return new ServerSettings(listening, protection, signIn, hospital, true, recordSystems, limits, caseIndex);
    }

    /** Whether users of this server sign in with passwords kept here. */
    boolean passwords() {
        return hospital.map(OpenIdConnect::localAccounts).orElse(true);
    }

    /**
     * Refuses to listen to a network that nothing keeps others from reading along.
     *
     * @throws FaultyInput when the address is no loopback address and neither TLS nor a trusted proxy is named
     */
    public void checkReach() {
        if (!listening.isLoopback() && !protection.given()) {
            throw new FaultyInput(
                    "settings",
                    List.of(new Fault(
                            "address",
                            "\"" + listening.address() + "\" can be reached from other machines, or is no address:"
                                    + " passwords and patients' data would cross the network in the clear. Name a key"
                                    + " store under tls, or the proxy that speaks TLS under trustedProxies")));
        }
    }
}
