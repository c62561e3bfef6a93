package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Json;
import org.scalepan.literature.LandUseChange;

/** A figure and its ratio without and with land-use change, side by side. */
public final class LandUseStatesJson {
    private LandUseStatesJson() {}

    /** One state: whether land-use change counts, and what there is then. */
    public record OneState(LandUseChange luc, Estimate estimate, Optional<Ratio> versus) {}

    /** The states as {@code exclude} and {@code include}, in this order. */
    public static ObjectNode of(List<OneState> states, Sentences sentences) {
        ObjectNode node = Json.object();
        states.stream()
                .sorted(Comparator.comparing(OneState::luc, Comparator.reverseOrder()))
                .forEach(state -> {
                    ObjectNode one = node.putObject(state.luc().id());
                    EstimateJson.state(one, state.estimate(), sentences);
                    one.put("studies", state.estimate().studies());
                    state.versus()
                            .ifPresent(ratio -> one.set(
                                    "times_less",
                                    EstimateJson.bounded(ratio.timesLess(), ratio.bound(), sentences.language())));
                });
        return node;
    }
}
