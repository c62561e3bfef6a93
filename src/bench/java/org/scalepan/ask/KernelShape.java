package org.scalepan.ask;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.HarmonisationStep;
import org.scalepan.literature.Study;
import org.scalepan.literature.StudyHierarchy;

/**
 * Writes the model behind the question of all products, so that the reference in NumPy pools and draws the same: for each state of land-use
 * change every pool with what its studies found (natural logarithms), their errors and the conversions that are drawn, each with its id, its
 * standard deviation on the log scale and its weight in the study.
 */
public final class KernelShape {
    private KernelShape() {}

    /** @param args the file to write */
    public static void main(String[] args) throws java.io.IOException {
        ObjectMapper json = new ObjectMapper();
        ObjectNode shape = json.createObjectNode();
        Comparison.ComparisonQuestion question = AllProducts.question(0, 10_000, 1);
        shape.put("draws", 10_000);
        shape.put("scale", AllProducts.LIBRARY.spreadDefaults().betweenStudies());
        ArrayNode states = shape.putArray("states");
        Stream.concat(
                        Stream.of(question.basis()), question.basis().withOtherLandUse().stream())
                .forEach(basis -> {
                    ObjectNode state = states.addObject();
                    state.set("reference", pool(json, question.against(), basis));
                    ArrayNode products = state.putArray("products");
                    question.products().forEach(item -> products.add(pool(json, item, basis)));
                });
        json.writeValue(Path.of(args[0]).toFile(), shape);
    }

    /** A pool without studies is one of a product without evidence in this state. */
    private static ObjectNode pool(ObjectMapper json, ProductForm item, ComparisonBasis basis) {
        PublishedEstimate estimate = Estimating.estimate(
                AllProducts.LIBRARY, item, basis, new Sampling(0.9, 1000, 1), new CommonRandomNumbers(1, 1000));
        ObjectNode pool = json.createObjectNode();
        pool.put("id", item.product().id() + "/" + item.form());
        ArrayNode studies = pool.putArray("studies");
        if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
            StudyHierarchy hierarchy = some.hierarchy()
                    .orElseThrow(() -> new IllegalStateException(item.product().id() + " is not pooled by logarithms"));
            some.studies().forEach(study -> studies.add(study(json, hierarchy, study)));
        }
        return pool;
    }

    private static ObjectNode study(ObjectMapper json, StudyHierarchy hierarchy, Study study) {
        ObjectNode node = json.createObjectNode();
        List<String> findings =
                study.findings().stream().map(one -> one.result().finding()).toList();
        node.put("id", String.join("+", findings));
        node.put("effect", Math.log(hierarchy.found(study)));
        node.put("error", hierarchy.error(study));
        ArrayNode conversions = node.putArray("conversions");
        for (Harmonised finding : study.findings()) {
            for (HarmonisationStep step : finding.steps()) {
                if (step instanceof HarmonisationStep.ToUnit unit
                        && unit.step() instanceof ChainStep.PublishedStep published) {
                    conversions
                            .addArray()
                            .add(published.row().id())
                            .add(published.factor().reading().lnSd())
                            .add(hierarchy.shareWithin(study, finding));
                }
            }
        }
        return node;
    }
}
