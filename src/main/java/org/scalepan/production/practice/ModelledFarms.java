package org.scalepan.production.practice;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.input.Input;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.production.records.SystemReading;

/** The reference farms of a library, each computed once, when it is asked for. */
public final class ModelledFarms {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Library library;
    private final FarmClimate climate;
    private final Map<String, FarmRead> read = new ConcurrentHashMap<>();

    private ModelledFarms(Library library) {
        this.library = library;
        this.climate = FarmClimate.of(library);
    }

    /** A farm, or what is wrong with it. */
    private record FarmRead(Optional<ModelledFarm> farm, List<String> faults) {}

    public static ModelledFarms of(Library library) {
        return library.view(ModelledFarms.class, ModelledFarms::new);
    }

    private FarmRead read(ReferenceFarm farm) {
        return read.computeIfAbsent(farm.id(), unused -> {
            Input system = system(farm);
            Optional<EditableRecords> records = new SystemReading(library, keysDrawnTogether(farm)).notebook(system);
            return new FarmRead(
                    records.map(found -> ModelledFarm.of(farm, found, found.inventory(library))),
                    system.faults().stream()
                            .map(fault -> "reference_farms/" + farm.id() + ".json: /system"
                                    + fault.pointer().orElse("") + ": " + fault.message())
                            .toList());
        });
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
        return library.referenceFarms().stream()
                .flatMap(farm -> read(farm).faults().stream())
                .toList();
    }

    /** Every farm, in the order of the library. */
    public List<ModelledFarm> all() {
        return library.referenceFarms().stream()
                .flatMap(farm -> read(farm).farm().stream())
                .toList();
    }

    public Optional<ModelledFarm> find(String id) {
        return library.referenceFarms().stream()
                .filter(farm -> farm.id().equals(id))
                .findFirst()
                .flatMap(farm -> read(farm).farm());
    }

    /** Every farm of a product, the one that a region stands for first; empty where nobody's practice is held. */
    public List<ModelledFarm> of(Product product, String region) {
        List<ModelledFarm> own = library.referenceFarms().stream()
                .filter(farm -> farm.products().contains(product.id()))
                .flatMap(farm -> read(farm).farm().stream())
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
