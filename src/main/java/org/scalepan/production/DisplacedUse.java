package org.scalepan.production;

import java.util.List;

/**
 * What by-products that are sold and counted burden-free would add if their use elsewhere counted: the burden of what must replace them
 * there, or by default their share of the crop's burden by price. It is no part of the figure and stands beside it.
 *
 * @param ingredients counted burden-free, each once
 * @param flows what they would add
 * @param gaps what of it is not known
 */
public record DisplacedUse(List<String> ingredients, List<Flow> flows, List<Gap> gaps) {
    public DisplacedUse {
        ingredients = ingredients.stream().distinct().toList();
        flows = List.copyOf(flows);
        gaps = List.copyOf(gaps);
    }

    /** True where anything of it is known on a basis. */
    public boolean isKnown(Scope scope) {
        return flows.stream().anyMatch(scope::counts);
    }

    /** What of it is not known on a basis. */
    public List<Gap> unknown(Scope scope) {
        return gaps.stream().filter(gap -> gap.lowers(scope)).toList();
    }
}
