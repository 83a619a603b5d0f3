package org.tunica.web;

import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.store.Role;
import org.tunica.store.UserState;

/** What a user is to be, as an administrator writes it. */
record WantedUser(Set<Role> roles, UserState state) {
    /** @throws org.tunica.casefile.FaultyInput with every fault and its place */
    static WantedUser read(byte[] json) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse("body", json), "$", faults);
        WantedUser wanted = new WantedUser(
                reader.required("roles", reader.words("roles", Role.class)).orElse(Set.of()),
                reader.word("state", UserState.class).orElse(UserState.ACTIVE));
        reader.done();
        faults.throwIfAny("user");
        return wanted;
    }
}
