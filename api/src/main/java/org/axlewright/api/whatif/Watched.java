package org.axlewright.api.whatif;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.NotAnswered;
import org.axlewright.api.whatif.Probe.Heard;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A result that is looked at.
 *
 * @param pointer as sent
 * @param which number of the calculation in the question
 * @param place in its result
 */
record Watched(String pointer, int which, Place place) {

    /** The value at a point: a quantity, money, a number, a text, a truth or a name; null where there is none. */
    @Nullable
    Object in(List<Heard> heard) {
        Heard one = heard.get(which);
        return one.found() == null ? null : place.in(one.found().result());
    }

    /** Whether a result that was left out is this one, holds it or lies within it. */
    boolean touches(int calculation, NotAnswered leftOut) {
        String other = leftOut.result() + "/";
        String own = place + "/";
        return calculation == which && (own.startsWith(other) || other.startsWith(own));
    }

    /**
     * Reads a pointer into the result.
     *
     * @throws Place.Unknown when the result has no such value
     */
    static Watched of(String pointer, Probe.Question question) throws Place.Unknown {
        int which = 0;
        String rest = pointer;
        if (question.assessment()) {
            which = named(pointer, question);
            rest = pointer.substring(1 + question.asked().get(which).name().length());
        }
        Place place = Place.of(rest, question.asked().get(which).resultType(), "result");
        Watched watched = new Watched(pointer, which, place);
        if (!watched.isSingle()) {
            throw new Place.Unknown(pointer + " is no single value of the result; point at one within it");
        }
        return watched;
    }

    /** Whether it is a quantity, money or a plain number, as far as the records tell. */
    boolean isNumber() {
        Class<?> type = place.rawType();
        return Quantity.class.isAssignableFrom(type)
                || Number.class.isAssignableFrom(type)
                || type == double.class
                || type == int.class
                || type == long.class
                || type == Money.class;
    }

    /** Whether it is one value and no part made of several. */
    private boolean isSingle() {
        Class<?> type = place.rawType();
        boolean part = type.isRecord() && !Quantity.class.isAssignableFrom(type) && type != Money.class;
        return !part && !List.class.isAssignableFrom(type);
    }

    private static int named(String pointer, Probe.Question question) throws Place.Unknown {
        for (int i = 0; i < question.asked().size(); i++) {
            if (pointer.startsWith("/" + question.asked().get(i).name() + "/")) {
                return i;
            }
        }
        throw new Place.Unknown("Of an assessment, " + pointer
                + " must begin with the name of a calculation, such as /centre-of-gravity/frontAxle/share");
    }

    /** The leading results of everything that is asked, as far as they are single values. */
    static List<Watched> leads(Probe.Question question) {
        List<Watched> leads = new ArrayList<>();
        for (Calculation<?, ?, ?> calculation : question.asked()) {
            for (String lead : calculation.leads()) {
                Watched watched = single(question.assessment() ? "/" + calculation.name() + lead : lead, question);
                if (watched != null) {
                    leads.add(watched);
                }
            }
        }
        return leads;
    }

    /** Null for a part made of several values. */
    private static @Nullable Watched single(String pointer, Probe.Question question) {
        try {
            return of(pointer, question);
        } catch (Place.Unknown several) {
            return null;
        }
    }
}
