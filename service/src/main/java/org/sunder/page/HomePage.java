package org.sunder.page;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.sunder.airframe.Airframe;

/**
 * Which airframes the first page shows: those whose names hold what is looked for, in the order asked for, a page of them at a
 * time.
 *
 * @param shown the airframes of the page
 * @param found how many there are on all pages
 * @param all how many are in use
 * @param away how many are put away
 * @param find what is looked for, as typed
 * @param byName whether they stand in the order of their names, else what something happened at last comes first
 * @param page which page, from 1
 */
record HomePage(List<Airframe> shown, int found, int all, int away, String find, boolean byName, int page) {

    /** Airframes on a page; search and sorting are offered where there are more. */
    static final int SIZE = 10;

    static HomePage of(
            Collection<Airframe> airframes, Map<UUID, Instant> fired, String find, boolean byName, int page) {
        List<Airframe> inUse = airframes.stream()
                .filter(airframe -> airframe.archivedAt() == null)
                .toList();
        String sought = find.strip().toLowerCase(Locale.ROOT);
        Comparator<Airframe> order = byName
                ? Comparator.comparing(airframe -> airframe.name().toLowerCase(Locale.ROOT))
                : Comparator.comparing((Airframe airframe) -> fired.getOrDefault(airframe.id(), airframe.createdAt()))
                        .reversed();
        List<Airframe> found = inUse.stream()
                .filter(airframe -> airframe.name().toLowerCase(Locale.ROOT).contains(sought))
                .sorted(order.thenComparing(airframe -> airframe.id().toString()))
                .toList();
        int last = Math.max(1, (found.size() + SIZE - 1) / SIZE);
        int there = Math.min(Math.max(1, page), last);
        int from = (there - 1) * SIZE;
        return new HomePage(
                found.subList(from, Math.min(found.size(), from + SIZE)),
                found.size(),
                inUse.size(),
                airframes.size() - inUse.size(),
                find,
                byName,
                there);
    }

    /** Whether there is more than fits a page without search. */
    public boolean many() {
        return all > SIZE;
    }

    /** How many pages there are. */
    public int pages() {
        return Math.max(1, (found + SIZE - 1) / SIZE);
    }
}
