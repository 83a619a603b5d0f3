package org.tunica.callers;

import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads the callers of a site's settings. */
public final class CallerReader {
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]{0,39}");
    private static final Pattern ON_THIS_MACHINE = Pattern.compile("http://(127\\.0\\.0\\.1|localhost)(:\\d{1,5})?/.*");

    private CallerReader() {}

    /** The callers of the list under a field; every fault is noted with its place. */
    public static List<Caller> read(FieldReader reader, String field) {
        List<Caller> callers = new ArrayList<>();
        Set<String> names = new HashSet<>();
        Set<String> issuers = new HashSet<>();
        for (FieldReader one : reader.objects(field).orElse(List.of())) {
            Caller caller = caller(one);
            if (!names.add(caller.name())) {
                one.fault("name", "stands twice");
            }
            if (!issuers.add(caller.issuer())) {
                one.fault("issuer", "stands twice; an issuer is one caller");
            }
            callers.add(caller);
        }
        return callers;
    }

    private static Caller caller(FieldReader reader) {
        String name = reader.requiredText("name");
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            reader.fault("name", "must be lower-case letters, digits, dots and dashes, at most 40");
        }
        String issuer = reader.requiredText("issuer");
        Optional<String> tenant = reader.text("tenant");
        List<String> addresses = reader.texts("keyAddresses");
        addresses.stream()
                .filter(address -> !fetchable(address))
                .forEach(address -> reader.fault(
                        "keyAddresses", "\"" + address + "\" must be an https address (http on this machine alone)"));
        Optional<String> keys = reader.text("keys");
        if (addresses.isEmpty() == keys.isEmpty()) {
            reader.fault("keys", "either keys or keyAddresses must be given, and not both");
        }
        keys.ifPresent(set -> KnownKeys.faults(set).forEach(fault -> reader.fault("keys", fault)));
        return new Caller(name, issuer, tenant, addresses, keys);
    }

    private static boolean fetchable(String address) {
        try {
            URI uri = new URI(address);
            boolean secure = "https".equals(uri.getScheme())
                    || ON_THIS_MACHINE.matcher(address).matches();
            return secure && uri.getHost() != null && uri.getUserInfo() == null;
        } catch (java.net.URISyntaxException e) {
            return false;
        }
    }
}
