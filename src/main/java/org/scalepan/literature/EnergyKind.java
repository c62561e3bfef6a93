package org.scalepan.literature;

import java.util.Locale;
import java.util.Optional;
import org.scalepan.factors.PublishedResult;
import org.scalepan.words.Message;

/**
 * What an energy result counts, the widest stated first: one kind is pooled, and never with another.
 *
 * <p>Source: Frischknecht et al. 2015, Cumulative energy demand in LCA: the energy harvested approach, Int J Life Cycle Assess 20:957 (that
 * the kinds are different quantities; from memory). The order is a choice of this service.
 */
public enum EnergyKind {
    /** All primary energy, renewable included: what a farm's own records are computed in. */
    TOTAL,
    NOT_STATED,
    /** Fossil and nuclear. */
    NON_RENEWABLE,
    CUMULATIVE_FOSSIL;

    /** The kind of an energy result; empty for every other indicator. */
    public static Optional<EnergyKind> of(PublishedResult result) {
        return result.energyKind().map(id -> valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_')));
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As it stands in a sentence. */
    public Message message() {
        return Message.of("energy-kind." + id());
    }

    /** As it stands in an English sentence. */
    public String words() {
        return message().english();
    }

    /** True when a figure of all primary energy may be held against it, if need be with a warning. */
    public boolean mayStandBesideTotal() {
        return this == TOTAL || this == NOT_STATED;
    }
}
