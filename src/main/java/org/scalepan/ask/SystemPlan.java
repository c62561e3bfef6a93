package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scalepan.production.FirstOrder;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.Scope;
import org.scalepan.quantity.Amount;
import org.scalepan.quantity.Plan;
import org.scalepan.quantity.Reckoning;

/**
 * How the figures of one farm or herd came about, by first-order propagation. Others whose records have the same words, and amounts in
 * the same places, are reckoned from it without asking the library again: only their amounts differ.
 *
 * @param plan the steps; its results are the figures of each indicator in turn, then the amounts that remarks tell
 * @param usualName what a farm or herd is called whose records do not name it; of those that do, the name of the first
 * @param product id of the product that the question is about
 * @param gaps the fields that a default filled or that are not counted
 */
public record SystemPlan(
        Plan plan,
        String usualName,
        String product,
        String form,
        List<Indicated> indicated,
        List<String> gaps,
        List<Told> remarks) {
    public SystemPlan {
        indicated = List.copyOf(indicated);
        gaps = List.copyOf(gaps);
        remarks = List.copyOf(remarks);
    }

    /**
     * One indicator on its ruler.
     *
     * @param first which result of the plan its value is; the lower and the upper end follow
     * @param missing why there is no figure; then there are no such results
     */
    public record Indicated(Scope scope, int first, Optional<String> missing) {
        public double value(Plan plan, double[] places) {
            return plan.result(places, first);
        }

        public double low(Plan plan, double[] places) {
            return plan.result(places, first + 1);
        }

        public double high(Plan plan, double[] places) {
            return plan.result(places, first + 2);
        }
    }

    /**
     * A remark that is written anew for each farm.
     *
     * @param first which result of the plan is the first amount that it tells
     * @param amounts how many it tells
     */
    public record Told(String code, Function<double[], String> words, int first, int amounts) {
        public String text(Plan plan, double[] places) {
            double[] told = new double[amounts];
            for (int i = 0; i < amounts; i++) {
                told[i] = plan.result(places, first + i);
            }
            return words.apply(told);
        }
    }

    /**
     * Ends the writing of a reckoning and keeps it.
     *
     * @param reckoning what the amounts of the records were entered into
     * @param quotes what the inventory came to on each ruler, without draws
     * @param coverage of the intervals
     */
    public static SystemPlan of(Reckoning reckoning, Inventory inventory, List<SystemQuote> quotes, double coverage) {
        List<Amount> results = new ArrayList<>();
        List<Indicated> indicated = new ArrayList<>();
        for (SystemQuote quote : quotes) {
            indicated.add(new Indicated(quote.scope(), results.size(), quote.missing()));
            quote.firstOrder().ifPresent(first -> results.addAll(figures(first, coverage)));
        }
        List<Told> remarks = new ArrayList<>();
        inventory.remarks().forEach(remark -> {
            List<Amount> told = remark.wording().amounts();
            remarks.add(new Told(remark.code(), remark.wording().words(), results.size(), told.size()));
            results.addAll(told);
        });
        return new SystemPlan(
                reckoning.plan(results),
                inventory.name(),
                inventory.output().product().id(),
                inventory.output().form(),
                indicated,
                inventory.gaps().stream().map(Gap::field).distinct().toList(),
                remarks);
    }

    private static List<Amount> figures(FirstOrder first, double coverage) {
        return List.of(first.middle(), first.lower(coverage), first.upper(coverage));
    }
}
