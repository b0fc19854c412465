package org.axlewright.api.workspace;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.database.GivenDatabase;
import org.axlewright.api.database.StartRefused;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.boot.web.server.autoconfigure.ServerProperties.ForwardHeadersStrategy;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/**
 * Whether saved setups need a token. They don't for the people of one machine: bound to its loopback address, with a database of its own,
 * behind no proxy. Everywhere else they do, and a setting that says otherwise is refused.
 */
@Component
final class Access {

    private static final String SETTING = "axlewright.tokens-required";

    private final boolean tokensRequired;

    /** @throws StartRefused when the settings contradict each other */
    Access(Environment settings, ServerProperties server) {
        ForwardHeadersStrategy proxy = server.getForwardHeadersStrategy();
        if (proxy == ForwardHeadersStrategy.FRAMEWORK) {
            throw new StartRefused(
                    "server.forward-headers-strategy=framework believes whoever says where a request comes from.",
                    "Use native, and name the proxies in server.tomcat.remoteip.internal-proxies.");
        }
        List<String> reasons = new ArrayList<>();
        if (server.getAddress() == null || !server.getAddress().isLoopbackAddress()) {
            reasons.add("it listens beyond this machine (server.address)");
        }
        if (GivenDatabase.in(settings)) {
            reasons.add("its database is given (spring.datasource.url)");
        }
        if (proxy == ForwardHeadersStrategy.NATIVE) {
            reasons.add("it works behind a proxy (server.forward-headers-strategy)");
        }
        boolean wanted = settings.getProperty(SETTING, Boolean.class, !reasons.isEmpty());
        if (!wanted && !reasons.isEmpty()) {
            throw new StartRefused(
                    "Saved setups would be open to everybody: " + SETTING
                            + " is false, and the service is not for this machine" + " alone, because "
                            + String.join(", and ", reasons) + ".",
                    "Leave " + SETTING
                            + " out, and make a token: java -jar axlewright-service.jar token create --workspace"
                            + " local --scope write. Or bind it to 127.0.0.1 with its own database.");
        }
        this.tokensRequired = wanted;
    }

    boolean tokensRequired() {
        return tokensRequired;
    }
}
