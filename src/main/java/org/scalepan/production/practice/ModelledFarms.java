package org.scalepan.production.practice;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.production.records.SystemReading;

/** All reference farms of a library, computed once. */
public final class ModelledFarms {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final List<ModelledFarm> farms;
    private final List<String> faults;
    private final FarmClimate climate;

    private ModelledFarms(List<ModelledFarm> farms, List<String> faults, FarmClimate climate) {
        this.farms = List.copyOf(farms);
        this.faults = List.copyOf(faults);
        this.climate = climate;
    }

    public static ModelledFarms of(Library library) {
        return library.view(ModelledFarms.class, ModelledFarms::read);
    }

    private static ModelledFarms read(Library library) {
        List<ModelledFarm> farms = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (ReferenceFarm farm : library.referenceFarms()) {
            Input system = system(farm);
            Optional<EditableRecords> records = new SystemReading(library, keysDrawnTogether(farm)).notebook(system);
            records.ifPresent(found -> farms.add(ModelledFarm.of(farm, found, found.inventory(library))));
            for (FieldError fault : system.faults()) {
                faults.add("reference_farms/" + farm.id() + ".json: /system"
                        + fault.pointer().orElse("") + ": " + fault.message());
            }
        }
        return new ModelledFarms(farms, faults, FarmClimate.of(library));
    }

    private static Input system(ReferenceFarm farm) {
        try {
            return Input.body(JSON.readTree(farm.system()));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(farm.id() + " was read as JSON when the library was loaded", e);
        }
    }

    /** Fields that are one uncertainty are drawn under the name of the first. */
    private static Map<String, String> keysDrawnTogether(ReferenceFarm farm) {
        Map<String, String> first = new HashMap<>();
        farm.drawnTogether().forEach(group -> group.forEach(field -> first.put(field, group.get(0))));
        return first;
    }

    /** What is wrong with farms that cannot be computed, one line each; such a farm models nothing. */
    public List<String> faults() {
        return faults;
    }

    /** Every farm, in the order of the library. */
    public List<ModelledFarm> all() {
        return farms;
    }

    public Optional<ModelledFarm> find(String id) {
        return farms.stream().filter(farm -> farm.farm().id().equals(id)).findFirst();
    }

    /** Every farm of a product, the one that a region stands for first; empty where nobody's practice is held. */
    public List<ModelledFarm> of(Product product, String region) {
        List<ModelledFarm> own = farms.stream()
                .filter(farm -> farm.products().anyMatch(product.id()::equals))
                .toList();
        Optional<ModelledFarm> usual = climate.nearestFirst(region).stream()
                .flatMap(place -> own.stream()
                        .filter(farm ->
                                farm.farm().defaults().contains(new ReferenceFarm.DefaultPlace(product.id(), place))))
                .findFirst();
        List<ModelledFarm> ordered = new ArrayList<>(own);
        usual.ifPresent(first -> {
            ordered.remove(first);
            ordered.add(0, first);
        });
        return ordered;
    }
}
