package org.axlewright.api.problem;

import java.util.List;

/** A body that was read and is not valid: carries everything found, for one 422. */
public final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    public Refused(List<Fault> faults) {
        super("Request refused with " + faults.size() + " faults");
        this.faults = List.copyOf(faults);
    }

    public List<Fault> faults() {
        return faults;
    }
}
