package org.axlewright.domain.trace;

import java.util.List;
import org.axlewright.domain.quantity.Dimension;

/**
 * One line of working, as a constant: the formula in letters. The values are noted against it by {@link Trace#note}.
 *
 * @param symbol letter of the result
 * @param meaning what the result is, in plain words
 * @param formula the formula in the letters of {@code inputs}
 * @param dimension of the result
 * @param source where the formula is printed
 * @param inputs letters on the right-hand side, in the order in which values are noted; empty when they vary in number
 */
public record Step(
        String symbol, String meaning, String formula, Dimension dimension, Source source, List<Symbol> inputs) {

    public static Step of(
            String symbol, String meaning, String formula, Dimension dimension, Source source, Symbol... inputs) {
        return new Step(symbol, meaning, formula, dimension, source, List.of(inputs));
    }
}
