package org.scalepan.production;

import java.util.List;
import java.util.function.Predicate;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;

/** Sums an inventory: greenhouse gases at the farm gate under AR6, without credit, unless stated otherwise. */
public final class Tally {
    private final Library library;
    private final Inventory inventory;
    private String indicator = "ghg";
    private FunctionalUnit per;
    private Boundary boundary = Boundary.FARM_GATE;
    private String gwp = "ar6-100";
    private boolean credit = false;

    private Tally(Library library, Inventory inventory) {
        this.library = library;
        this.inventory = inventory;
        this.per = inventory.output().per();
    }

    public static Tally of(Library library, Inventory inventory) {
        return new Tally(library, inventory);
    }

    public Tally indicator(String id) {
        indicator = id;
        return this;
    }

    public Tally per(FunctionalUnit unit) {
        per = unit;
        return this;
    }

    public Tally at(String boundaryId) {
        boundary = Boundary.of(boundaryId).orElseThrow();
        return this;
    }

    public Tally gwp(String set) {
        gwp = set;
        return this;
    }

    public Tally credited() {
        credit = true;
        return this;
    }

    public SystemFootprint system() {
        Scope scope = new Scope(
                library.indicators().get(indicator),
                per,
                boundary,
                library.warmingSets().get(gwp),
                credit);
        Output output = inventory.output();
        UnitChain chain =
                UnitChain.of(library, output.product(), output.form(), "", ProteinBasis.CRUDE, true, Grade.MEMORY);
        ChainPath path = chain.path(output.per(), per);
        return new SystemFootprint(inventory, scope, ((ChainPath.FoundPath) path).steps());
    }

    /** The figure with every factor at its central value. */
    public double value() {
        return system().central();
    }

    /** The central sum of the lines that a test picks, in the flux's unit and a year. */
    public static double yearly(Inventory inventory, Predicate<Flow> lines) {
        List<Flow> picked = inventory.flows().stream().filter(lines).toList();
        return picked.stream().mapToDouble(flow -> flow.term().central()).sum();
    }

    public static double yearly(Inventory inventory, Flux flux) {
        return yearly(inventory, flow -> flow.flux() == flux);
    }

    public static double yearly(Inventory inventory, String what, Flux flux) {
        return yearly(inventory, flow -> flow.flux() == flux && flow.what().equals(what));
    }

    /** The texts of the remarks of a kind. */
    public static List<String> remarks(Inventory inventory, String code) {
        return inventory.remarks().stream()
                .filter(remark -> remark.code().equals(code))
                .map(Remark::text)
                .toList();
    }

    /** The fields that a default filled or that are not counted. */
    public static List<String> gaps(Inventory inventory) {
        return inventory.gaps().stream().map(Gap::field).toList();
    }
}
