package org.scalepan.web.farm;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.farm.FarmPlan;
import org.scalepan.exchange.text.Json;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.words.Language;

/** Renders what a farm needs for the harvest that is wished for. */
final class FarmPlanJson {
    private FarmPlanJson() {}

    static ObjectNode of(FarmPlan plan, Language language) {
        ObjectNode node = Json.object();
        node.put("system", plan.farm().farm().id());
        node.put("name", plan.farm().farm().name());
        node.put("sentence", plan.farm().farm().sentence());
        node.put("is", ModelledEstimate.MESSAGE.in(language));
        node.put("harvest_kg", SevenDigits.rounded(plan.harvest()));
        ArrayNode amounts = node.putArray("amounts");
        for (FarmPlan.PlannedAmount amount : plan.amounts()) {
            ObjectNode one = amounts.addObject();
            one.put("field", amount.field());
            one.put("what", amount.words());
            one.put("unit", amount.unit());
            one.put("low", SevenDigits.rounded(amount.low()));
            amount.middle().ifPresent(middle -> one.put("middle", SevenDigits.rounded(middle)));
            one.put("high", SevenDigits.rounded(amount.high()));
            one.put("text", text(amount));
            one.set("rows", Json.texts(amount.rows()));
            Json.put(one, "note", amount.note());
        }
        node.set("not_published", Json.texts(plan.open()));
        return node;
    }

    /** The range of an amount with its unit, rounded for print. */
    static String text(FarmPlan.PlannedAmount amount) {
        String range = amount.low() == amount.high()
                ? Print.footprint(amount.high())
                : amount.low() == 0
                        ? "at most " + Print.footprint(amount.high())
                        : Print.footprint(amount.low()) + " to " + Print.footprint(amount.high());
        return range + " " + amount.unit();
    }
}
