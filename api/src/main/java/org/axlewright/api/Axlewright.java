package org.axlewright.api;

import org.axlewright.api.workspace.Commands;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** The service. Everything it knows of vehicles is in the domain module; everything it promises is in {@code docs/openapi.yaml}. */
@SpringBootApplication(proxyBeanMethods = false)
public class Axlewright {

    public static void main(String[] arguments) {
        if (Commands.isMeant(arguments)) {
            System.exit(Commands.run(arguments));
        }
        SpringApplication.run(Axlewright.class, arguments);
    }
}
