package org.axlewright.api.database;

import org.springframework.core.env.Environment;
import org.springframework.util.StringUtils;

/** Whether a database is given, or the service brings its own. */
public final class GivenDatabase {

    private static final String URL = "spring.datasource.url";

    private GivenDatabase() {}

    public static boolean in(Environment settings) {
        return StringUtils.hasText(settings.getProperty(URL));
    }
}
