package org.axlewright.api.calculation;

import java.util.List;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;

/**
 * One question of the registry. The POST, the saved setup, and whatever asks many at once use it through {@link Calculations} alone.
 *
 * @param <I> checked input of the domain
 * @param <O> what the domain function returns, SI
 * @param <R> the result as the contract shows it
 */
public interface Calculation<I, O, R> {

    /** Name in paths, {@code centre-of-gravity}. */
    String name();

    /** The question in the words of the shop, one sentence. */
    String question();

    /** The least that must be there for any answer; published as {@code x-needs} and checked by the same declaration. */
    Needs needs();

    /** Leading results as pointers into the result, in the order a person in the shop asks for them; published as {@code x-leads}. */
    List<String> leads();

    /** Class of the result, for the contract. */
    Class<R> resultType();

    /**
     * Fills defaults and builds the checked input. Called only when form and needs are in order.
     *
     * @param resolution takes assumptions, what can't be answered, and faults that only show here
     */
    I resolve(Setup setup, Resolution resolution);

    /** The domain function: pure. */
    O calculate(I input, Trace trace);

    /** The result in output units. */
    R show(O output, UnitSystem units);
}
