package org.axlewright.api.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import org.axlewright.api.section.Setup;

/**
 * What a calculation needs, as a tree of "all of" and "one of" over pointers. The same declaration is checked against a request and
 * published as {@code x-needs}.
 */
public sealed interface Needs {

    /** Pointers that are missing, in order; empty when the need is met. */
    List<String> missing(Setup setup);

    /** How many of the need's pointers stand in the setup: the alternative a sender has begun is the one to complete. */
    int begun(Setup setup);

    /** The same need of another entry of the list it speaks of. */
    Needs at(int index);

    /** Every way to meet the need, each a list of pointers. */
    List<List<String>> alternatives();

    static Needs value(String pointer) {
        return new Value(Pointer.of(pointer));
    }

    static Needs all(Needs... parts) {
        return new All(List.of(parts));
    }

    /** All of these pointers. */
    static Needs all(String... pointers) {
        return new All(Arrays.stream(pointers).map(Needs::value).toList());
    }

    /** For every entry of a list that may be left out: what each entry needs, written for entry 0. */
    static Needs each(String list, Needs entry) {
        return new Entries(Pointer.of(list), entry, false);
    }

    /** A list of at least one entry: what each entry needs, written for entry 0. */
    static Needs some(String list, Needs entry) {
        return new Entries(Pointer.of(list), entry, true);
    }

    /** Nothing as long as the place is empty; once begun, it must be complete. */
    static Needs completed(String pointer, Needs whole) {
        return new Completed(Pointer.of(pointer), whole);
    }

    /** One of these, the usual one first. */
    static Needs one(Needs... ways) {
        return new One(List.of(ways));
    }

    /** A single pointer. */
    record Value(Pointer pointer) implements Needs {
        @Override
        public List<String> missing(Setup setup) {
            return pointer.isIn(setup) ? List.of() : List.of(pointer.toString());
        }

        @Override
        public int begun(Setup setup) {
            return pointer.isIn(setup) ? 1 : 0;
        }

        @Override
        public Needs at(int index) {
            return new Value(pointer.at(index));
        }

        @Override
        public List<List<String>> alternatives() {
            return List.of(List.of(pointer.toString()));
        }
    }

    /** Every part. */
    record All(List<Needs> parts) implements Needs {
        @Override
        public List<String> missing(Setup setup) {
            return List.copyOf(new LinkedHashSet<>(
                    parts.stream().flatMap(part -> part.missing(setup).stream()).toList()));
        }

        @Override
        public int begun(Setup setup) {
            return parts.stream().mapToInt(part -> part.begun(setup)).sum();
        }

        @Override
        public Needs at(int index) {
            return new All(parts.stream().map(part -> part.at(index)).toList());
        }

        @Override
        public List<List<String>> alternatives() {
            List<List<String>> combined = List.of(List.of());
            for (Needs part : parts) {
                List<List<String>> longer = new ArrayList<>();
                for (List<String> head : combined) {
                    for (List<String> tail : part.alternatives()) {
                        LinkedHashSet<String> both = new LinkedHashSet<>(head);
                        both.addAll(tail);
                        longer.add(List.copyOf(both));
                    }
                }
                combined = longer;
            }
            return combined;
        }
    }

    /** Any one of the ways. */
    record One(List<Needs> ways) implements Needs {
        @Override
        public List<String> missing(Setup setup) {
            Needs nearest = ways.get(0);
            int most = -1;
            for (Needs way : ways) {
                if (way.missing(setup).isEmpty()) {
                    return List.of();
                }
                if (way.begun(setup) > most) {
                    nearest = way;
                    most = way.begun(setup);
                }
            }
            return nearest.missing(setup);
        }

        @Override
        public int begun(Setup setup) {
            return ways.stream().mapToInt(way -> way.begun(setup)).max().orElse(0);
        }

        @Override
        public Needs at(int index) {
            return new One(ways.stream().map(way -> way.at(index)).toList());
        }

        @Override
        public List<List<String>> alternatives() {
            return ways.stream().flatMap(way -> way.alternatives().stream()).toList();
        }
    }

    /** What every entry of a list needs. */
    record Entries(Pointer list, Needs entry, boolean required) implements Needs {
        @Override
        public List<String> missing(Setup setup) {
            int entries = list.in(setup) instanceof List<?> sent ? sent.size() : 0;
            if (entries == 0) {
                return required ? entry.missing(setup) : List.of();
            }
            List<String> missing = new ArrayList<>();
            for (int i = 0; i < entries; i++) {
                missing.addAll(i == 0 ? entry.missing(setup) : entry.at(i).missing(setup));
            }
            return missing;
        }

        @Override
        public int begun(Setup setup) {
            return list.in(setup) instanceof List<?> sent ? sent.size() : 0;
        }

        @Override
        public Needs at(int index) {
            return new Entries(list.at(index), entry.at(index), required);
        }

        @Override
        public List<List<String>> alternatives() {
            return required ? entry.alternatives() : List.of(List.of());
        }
    }

    /** What may be left out as a whole, but not in part. */
    record Completed(Pointer place, Needs whole) implements Needs {
        @Override
        public List<String> missing(Setup setup) {
            return place.isIn(setup) ? whole.missing(setup) : List.of();
        }

        @Override
        public int begun(Setup setup) {
            return whole.begun(setup);
        }

        @Override
        public Needs at(int index) {
            return new Completed(place.at(index), whole.at(index));
        }

        @Override
        public List<List<String>> alternatives() {
            return List.of(List.of());
        }
    }
}
